package wording

import (
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/frametest"
	"unpin/statics/notation"
)

func TestTexts(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ got, want string }{
		{Sentence("one"), "One."},
		{Sentence("ΣM is"), "ΣM is."},
		{Capital("émail"), "Émail"},
		{Capital(""), ""},
		{Count(0), "no"},
		{Count(10), "ten"},
		{Count(11), "11"},
		{Count(-1), "-1"},
		{Counted(1, "part"), "1 part"},
		{Counted(0, "part"), "0 parts"},
		{Turn(1), "counter-clockwise"},
		{Turn(-1), "clockwise"},
		{Mark(exact.Int(2)), ""},
		{Mark(exact.Sin(exact.Int(37))), "~"},
	} {
		if c.got != c.want {
			t.Errorf("%q, not %q", c.got, c.want)
		}
	}
}

// assembly is that of a sample.
func assembly(t *testing.T, sample string) *statics.Assembly {
	t.Helper()
	x, err := frametest.Read(sample)
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(x.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return s.Assembly
}

// What no plan of a frame chooses is said as well: a sum of moments about another point for a couple, and a sum along an
// inclined line to which a load alone is perpendicular.
func TestUnusualSums(t *testing.T) {
	t.Parallel()
	a := assembly(t, "joint A 0 0\njoint B 0 5\nmember A B\nsupport A fixed\nload point 10 4 -3 joint B\nload point 5 1 0 on AB at 2")
	units, err := notation.ParseUnits("kN m")
	if err != nil {
		t.Fatal(err)
	}
	w := New(a, notation.Style{Units: units})
	whole := statics.FreeBody{0}
	about := a.MomentSum(whole, a.Frame.Joints[1].At)
	couple := 2
	if !a.Forces[couple].Couple {
		t.Fatal("force 2 is no couple")
	}
	step := statics.Step{Sums: []statics.Sum{about}, Gives: []int{couple}}
	if got := w.Because(step, func(i int) bool { return i != couple }); !strings.Contains(got, "moments about B give it") {
		t.Error(got)
	}
	along := a.ForceSum(whole, statics.Vector{X: exact.Int(3), Y: exact.Int(4)})
	if got := w.SumName(along); got != "ΣF along (3, 4)" {
		t.Error(got)
	}
	if got := w.Absent(along); !strings.Contains(got, "The 10 kN load at B acts") {
		t.Error(got)
	}
}

// The reasons of terms that do not count come in one order, whatever the order of the terms.
func TestOrderOfReasons(t *testing.T) {
	t.Parallel()
	a := assembly(t, "joint A 0 0\njoint B 4 0\njoint C 8 0\nmember A B\nmember B C\npin B AB | BC\nsupport A fixed\nsupport C roller 0 1")
	got := New(a, notation.Style{}).Absent(a.ForceSum(statics.FreeBody{0, 1}, statics.Vector{X: exact.Int(1)}))
	want := "Ay and RC are vertical. MA only turns the body. The forces that pass at B are inside the cut."
	if got != want {
		t.Errorf("%s\nnot\n%s", got, want)
	}
}

// A load that runs on in one line over members is told as one, whichever way the members are named; where its slope or the
// line changes, or where another load goes on, it is told by members.
func TestLoadsThatRunOn(t *testing.T) {
	t.Parallel()
	const frame = "units kN m\njoint A 0 0\njoint B 3 0\njoint C 7 0\njoint D 7 4\nmember A B\nmember C B\nmember C D\nsupport A fixed\n"
	for _, c := range []struct {
		loads, signs, spoken string
		apart                bool
	}{
		{loads: "load spread 2 3.5 0 -1 on AB\nload spread 5.5 3.5 0 -1 on CB",
			signs:  "linearly varying load 2 to 5.5 kN/m down on AB and CB in one line, beginning at A and ending at C",
			spoken: "a linearly varying load of 2 kN/m to 5.5 kN/m acts down on AB and CB in one line, beginning at A and ending at C"},
		{loads: "load spread 2 2 0 -1 on AB from 1 to 3\nload spread 2 2 0 -1 on CB from 2 to 4",
			signs:  "uniform load 2 kN/m down on AB and CB in one line, beginning 1 m from A and ending 2 m from C",
			spoken: "a uniform load of 2 kN/m acts down on AB and CB in one line, beginning 1 m from A and ending 2 m from C"},
		{loads: "load spread 2 2 0 -1 on AB\nload spread 2 2 0 -1 on CB", signs: "uniform load 2 kN/m down on AB and CB",
			spoken: "a uniform load of 2 kN/m acts down on AB and CB in one line, beginning at A and ending at C"},
		{loads: "load spread 2 3 0 -1 on AB\nload spread 7 3 0 -1 on CB", signs: "linearly varying load 2 to 3 kN/m down on AB, over its whole length from A|" +
			"linearly varying load 7 to 3 kN/m down on CB, over its whole length from C", // steeper
			spoken: "a linearly varying load of 2 kN/m to 3 kN/m acts down on AB, from A to B|a linearly varying load of 7 kN/m to 3 kN/m acts down on CB, from C to B"},
		{loads: "load spread 2 2 1 0 on CD\nload spread 2 2 1 0 on CB", signs: "uniform load 2 kN/m right on CD and CB", // round a corner
			spoken: "a uniform load of 2 kN/m acts right on CD|a uniform load of 2 kN/m acts right on CB"},
		{loads: "load spread 2 2 0 -1 on AB\nload spread 2 2 0 -1 on CB", apart: true, signs: "uniform load 2 kN/m down on AB and CB",
			spoken: "a uniform load of 2 kN/m acts down on AB|a uniform load of 2 kN/m acts down on CB"},
	} {
		a := assembly(t, frame+c.loads)
		for i := range a.Frame.Loads {
			if a.Frame.Loads[i].Entry = 0; c.apart {
				a.Frame.Loads[i].Entry = i
			}
		}
		units, err := notation.ParseUnits("kN m")
		if err != nil {
			t.Fatal(err)
		}
		w := New(a, notation.Style{Units: units})
		if got := strings.Join(w.Loads(), "|"); got != c.signs {
			t.Errorf("%s\nnot\n%s", got, c.signs)
		}
		if got := strings.Join(w.Spoken().Loads(), "|"); got != c.spoken {
			t.Errorf("%s\nnot\n%s", got, c.spoken)
		}
	}
}
