package judging

import (
	"slices"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// TestLikelyWrongByHand: a beam of 5 m on a pin A and a roller B, with 12 kN at 2 m from A and 9 kN at 4 m. Moments about A:
// 5·RB − 12·2 − 9·4 = 0, RB = 12. Worked by hand: with the first load left off RB = 36/5; halved, 21/2; with the first load
// turning the other way (36 − 24)/5.
func TestLikelyWrongByHand(t *testing.T) {
	t.Parallel()
	p, err := problems.Read("beam.yaml", []byte("title: Beam\nunits: kN m\njoints: {A: [0, 0], B: [5, 0]}\nmembers: [AB]\n"+
		"supports: {A: pin, B: {roller: up}}\nloads: [{point: 12, to: down, on: AB, at: 2}, {point: 9, to: down, on: AB, at: 4}]\n"))
	if err != nil {
		t.Fatal(err)
	}
	l := newSheet(t, p)
	var got []string
	for _, w := range l.caseOf(l.asked(t, "RB")).LikelyWrong(3) {
		got = append(got, w.Value.Figures(3)+" "+w.Slips[0])
	}
	if want := []string{"7.20 load-left-off", "10.5 shared-by-halves", "2.40 turn-of-term"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// TestLikelyWrong: three figures tell each likely wrong value from the right one, in both senses, and from each other; the
// slip named leads to it, and something is said.
func TestLikelyWrong(t *testing.T) {
	t.Parallel()
	asked, values := 0, 0
	someQuestions(t, func(l *sheet, q question) {
		c := l.caseOf(q)
		low, high := c.Range()
		told := map[string]bool{c.Truth.Figures(3): true, c.Truth.Neg().Figures(3): true}
		asked++
		for _, w := range c.LikelyWrong(3) {
			values++
			text := w.Value.Figures(3)
			v := exact.MustParse(text)
			switch {
			case told[text]:
				t.Errorf("%s, %s: %s twice, or right", l.name, q.Name, text)
			case v.Cmp(low) >= 0 && v.Cmp(high) <= 0:
				t.Errorf("%s, %s: %s is told as wrong, and %s to %s is right", l.name, q.Name, text, low.Figures(5), high.Figures(5))
			case w.Says == "" || len(w.Slips) == 0:
				t.Errorf("%s, %s: nothing is said of %s", l.name, q.Name, text)
			}
			told[text] = true
			leads := func(x []exact.Num) bool { return slices.ContainsFunc(x, w.Value.Equal) }
			if !leads(valuesOf(c, w.Slips[0])) && !leads(valuesOf(c, w.Slips[len(w.Slips)-1])) && len(w.Slips) < 3 {
				t.Errorf("%s, %s: %q do not lead to %s", l.name, q.Name, w.Slips, text)
			}
		}
	})
	t.Logf("%d questions, %d wrong values", asked, values)
	if values < 2*asked {
		t.Errorf("only %d wrong values of %d questions", values, asked)
	}
}

// valuesOf lists the values to which a slip leads.
func valuesOf(c *Case, id string) []exact.Num {
	var all []exact.Num
	for _, list := range c.lists() {
		for _, x := range list {
			if x.Slip.ID == id {
				all = append(all, x.Value)
			}
		}
	}
	return all
}

// TestLikelyWrongOfPlain: what no slip leads to has no likely wrong value.
func TestLikelyWrongOfPlain(t *testing.T) {
	t.Parallel()
	if all := (Judge{Solution: &statics.Solution{}}).Plain(exact.Int(3)).LikelyWrong(3); all != nil {
		t.Errorf("got %v", all)
	}
}
