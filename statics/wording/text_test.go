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
