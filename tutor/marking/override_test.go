package marking

import (
	"strings"
	"testing"

	"unpin/statics/exact"
)

// Decisions that cannot be taken, each told with its line.
func TestBrokenOverrides(t *testing.T) {
	t.Parallel()
	head := "student,problem,quantity,got,reason\n"
	for text, want := range map[string]string{
		"":                            "d.csv is empty",
		"student,got\n":               "d.csv:1: the first line names the columns student,problem,quantity,got,reason",
		head + "s1,p,,1,x\n":          "d.csv:2: no quantity is named",
		head + "s1,p,Cy,one,x\n":      `d.csv:2: got is a number of points, not "one"`,
		head + "s1,p,Cy,-1,x\n":       `d.csv:2: got is a number of points, not "-1"`,
		head + "s1,p,Cy,1,x\ns1,p,Cy": "d.csv:3: no reason is given",
		head + "\"s1\"2,p,Cy,1,x\n":   "d.csv:2: the line cannot be read as cells",
	} {
		_, err := ReadOverrides("d.csv", strings.NewReader(text))
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, not %s", text, err, want)
		}
	}
}

// What is decided counts instead of the verdict, and no more than the answer is worth; of two decisions the later one.
func TestOverride(t *testing.T) {
	t.Parallel()
	m := markerOf(t, "jetty-deck")
	r := m.Mark(&Paper{Student: "s1", Problem: "jetty-deck", Attempt: 1, Entries: []Entry{{Line: 1, Quantity: "RB", Value: "14.25"}}}, DefaultScheme(), ten)
	before := r.Got
	all, err := ReadOverrides("d.csv", strings.NewReader("student;problem;quantity;got;reason\ns1;jetty-deck;RB;0,5;half of it\ns1;;RB;1,667;all of it\n"))
	if err != nil || len(all) != 2 || !all[0].IsOf(r.Paper, "jetty-deck") || !all[1].IsOf(r.Paper, "jetty-deck") || all[0].IsOf(&Paper{Student: "s2"}, "jetty-deck") {
		t.Fatalf("%v, %v", all, err)
	}
	for i, want := range []string{"0.5", "1.5"} { // 5/3 is rounded to halves in the total
		if err := r.Override(all[i], DefaultScheme()); err != nil || !r.Got.Sub(before).Equal(exact.MustParse(want)) {
			t.Errorf("%v: %s before, %s then, not %s more", err, before, r.Got, want)
		}
	}
	if err := r.Override(Override{Quantity: "RB", Got: exact.Int(2)}, DefaultScheme()); err == nil {
		t.Error("RB gets more than it is worth")
	}
}

// FuzzOverrides reads any text as decisions: it is refused, or each has a quantity, a reason and points.
func FuzzOverrides(f *testing.F) {
	f.Add("student,problem,quantity,got,reason\ns1,jetty-deck,RB,1,typed in haste\n")
	f.Add("\ufeffreason;got;quantity;problem;student\nx;0,5;Cy;;s\n")
	f.Fuzz(func(t *testing.T, text string) {
		all, err := ReadOverrides("d.csv", strings.NewReader(text))
		for _, o := range all {
			if err == nil && (o.Quantity == "" || o.Reason == "" || o.Got.Sign() < 0 || o.Line < 2) {
				t.Fatalf("%+v", o)
			}
		}
	})
}
