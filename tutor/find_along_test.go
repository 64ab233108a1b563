package tutor

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// Every mistake that can be put into N, V and M along the members of the library. What is printed is read back by the reader of typed sums, with
// the forces as they are and N, V or M: with true values all lines before the mistake hold and its own does not; with the values as they stand all
// lines after its own value hold. One rule of those offered is broken, and no mistake against another leads to the value that stands there.
func TestMistakesAlongMembers(t *testing.T) {
	t.Parallel()
	met, places := map[string]bool{}, 0
	for i, name := range librarytest.Names() {
		whole := len(librarytest.Names()) == len(problems.Names()) // by -whole: every place of every problem
		if !whole && i%4 != 0 {
			continue
		}
		p, _ := problems.Library(name)
		m, err := matterOf(p)
		if err != nil {
			t.Fatal(err)
		}
		all := cutMishapsIn(m, "")
		if !whole {
			all = slices.DeleteFunc(all, func(x cutMishap) bool { return met[x.erred.Slip.ID] && x.item%7 != 0 })
		}
		for _, x := range all {
			h := newCutHunt(m, x)
			if _, wrong := h.written(); wrong == 0 {
				continue
			}
			places, met[x.erred.Slip.ID] = places+1, true
			if fault := h.fault(); fault != "" {
				t.Errorf("%s: %s in %s: %s", name, x.erred.Slip.ID, h.rows[x.item].item.Name, fault)
			}
		}
	}
	for _, skill := range []string{"cut-forces", "corner-forces", "jumps", "slopes"} {
		if !slices.ContainsFunc(problems.SlipsOf(skill), func(id string) bool { return met[id] && slip.ByID(id).InWorking() }) {
			t.Errorf("no mistake shows %s to be wanting", skill)
		}
	}
	t.Logf("%d mistakes in %d places", len(met), places)
}

// zeroArm is zero times a length in letters, also as the first term.
var zeroArm = regexp.MustCompile(`(^-?|[+-] )0\*\([^)]*\) `)

// fault is what is wrong with an exercise, or nothing.
func (h *cutHunt) fault() string {
	page, wrong := h.written()
	row := -1
	for _, l := range page[1:] {
		if l.Number == 0 {
			row++
			continue
		}
		r := h.rows[row]
		if l.Number <= wrong && h.holds(l.Text, r.item.Quantity.Letter(), r.item.Value) != (l.Number < wrong) {
			return "with true values " + l.String()
		}
		if row != h.item && !h.holds(l.Text, r.item.Quantity.Letter(), r.stands()) {
			return "with the values carried on " + l.String()
		}
	}
	r := h.rows[h.item]
	if r.stands().Equal(r.item.Value) {
		return "it gives what is true"
	}
	section := h.about.section(sectionQuestion(r.item), h.about.solution.Values)
	for _, kept := range h.kept {
		for _, c := range section.Candidates() {
			if c.Slip == kept && c.Value.Equal(h.erred.Value) {
				return kept.ID + " leads there too"
			}
		}
	}
	return ""
}

// holds reports whether a line holds with the true forces and this value of N, V or M, but for the figures that are printed.
func (h *cutHunt) holds(line, letter string, value exact.Num) bool {
	names := func(name string) bool { return name == letter || h.about.namesForce(name) }
	s, err := notation.ReadSum(zeroArm.ReplaceAllString(strings.TrimSuffix(line, "."), ""), h.about.problem.Units, names)
	if err != nil {
		return false
	}
	var rest, most exact.Num
	for _, term := range s.Terms() {
		v := term.Value
		switch term.Force {
		case "":
		case letter:
			v = v.Mul(value)
		default:
			v = v.Mul(h.about.solution.Values[h.about.forceNamed(term.Force)])
		}
		rest = rest.Add(v)
		if v.Abs().Cmp(most) > 0 {
			most = v.Abs()
		}
	}
	return rest.Abs().Mul(exact.Int(2000)).Cmp(most) <= 0
}
