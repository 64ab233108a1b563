package tutor

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// Every mistake that can be put into a worked solution of the library. What is printed is read back by the reader of typed sums: with the
// forces as they are, all lines before the mistake hold and its own does not; with the forces as the worked solution has them, all steps
// after it hold. One rule of those offered is broken, and no mistake against another leads to the value that stands there.
func TestMistakesToFind(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			p, _ := problems.Library(name)
			m, err := matterOf(p)
			if err != nil {
				t.Fatal(err)
			}
			all := mishapsIn(m)
			if len(all) == 0 {
				t.Fatal("no mistake can be put in")
			}
			if len(librarytest.Names()) < len(problems.Names()) { // with -whole every place
				all = firstAndLast(all)
			}
			leads := map[int][]slip.Candidate{}
			for _, x := range all {
				if leads[x.step] == nil {
					leads[x.step] = append(questionOf(m, x.step).Candidates(), questionOf(m, x.step).Slight()...)
				}
				h := &hunt{about: m, mishap: x}
				h.carry()
				if fault := h.fault(leads[x.step]); fault != "" {
					t.Errorf("%s in step %d: %s", x.erred.Slip.ID, x.step+1, fault)
				}
			}
		})
	}
}

// firstAndLast keeps of each mistake the first place and the last one where it can be made.
func firstAndLast(all []mishap) []mishap {
	var some []mishap
	for _, id := range mistakesIn(all) {
		of := func(x mishap) bool { return x.erred.Slip.ID == id }
		some = append(some, all[slices.IndexFunc(all, of)])
		for _, x := range slices.Backward(all) {
			if of(x) {
				some = append(some, x)
				break
			}
		}
	}
	return some
}

// fault is what is wrong with an exercise, or nothing.
func (h *hunt) fault(leads []slip.Candidate) string {
	page, wrong := h.written()
	step := -1
	for _, l := range page {
		if l.Number == 0 {
			step = stepAt(h.about, step+1)
			continue
		}
		if l.Number <= wrong && lineHolds(h.about, l.Text, h.about.solution.Values) != (l.Number < wrong) {
			return "with true values " + l.String()
		}
		if step != h.step && !lineHolds(h.about, l.Text, h.values) {
			return "with the values carried on " + l.String()
		}
	}
	for _, kept := range h.kept {
		for _, c := range leads {
			if c.Slip == kept && c.Value.Equal(h.erred.Value) {
				return kept.ID + " leads there too"
			}
		}
		if rule(kept) == rule(h.erred.Slip) {
			return kept.ID + " has the same rule"
		}
	}
	if !h.erred.Solving && slip.SameTerms(h.erred.Sum, h.about.solution.Plan[h.step].Sums[0]) {
		return "its sum is the true one"
	}
	return ""
}

// stepAt is the first step of the plan, from i on, that gives something.
func stepAt(m *matter, i int) int {
	for len(m.solution.Plan[i].Gives) == 0 {
		i++
	}
	return i
}

// zeroTimes is a value of zero with its arm in letters, which has no unit of force to be read by.
var zeroTimes = regexp.MustCompile(`[+-] 0\*\([^)]*\) `)

// lineHolds reads a line as a student's sum is read and reports whether it holds with these values, but for the figures that are printed.
func lineHolds(m *matter, line string, values []exact.Num) bool {
	line, _, _ = strings.Cut(line, ": ")
	line = zeroTimes.ReplaceAllString(line, "")
	s, err := notation.ReadSum(line, m.problem.Units, m.namesForce)
	if err != nil {
		return false
	}
	var rest, most exact.Num
	for _, term := range s.Terms() {
		v := term.Value
		if term.Force != "" {
			v = v.Mul(values[m.forceNamed(term.Force)])
		}
		rest = rest.Add(v)
		if v.Abs().Cmp(most) > 0 {
			most = v.Abs()
		}
	}
	return rest.Abs().Mul(exact.Int(2000)).Cmp(most) <= 0
}

// A wanted skill is served where the problem allows it, and each number of the library gives its own mistake.
func TestMistakeForASkill(t *testing.T) {
	t.Parallel()
	p, _ := problems.Library("quay-gantry")
	for _, skill := range []string{"pin-pair", "axis-force-moment", "solve-with-sense", "jumps", "slopes"} {
		for n := range uint64(6) {
			d, err := FindTheMistake(p, skill, n)
			if err != nil || !slices.Equal(d.skills, []string{skill}) {
				t.Errorf("%s, %d: %v, %v", skill, n, d.skills, err)
			}
		}
	}
	if _, err := FindTheMistake(&problems.Problem{Frame: statics.Frame{}}, "", 0); err == nil {
		t.Error("a mistake is found in nothing")
	}
}

// BenchmarkFindTheMistake is what it takes to make one, on a frame with many steps.
func BenchmarkFindTheMistake(b *testing.B) {
	p, _ := problems.Library("riding-hall")
	for n := uint64(0); b.Loop(); n++ {
		if _, err := FindTheMistake(p, "", n); err != nil {
			b.Fatal(err)
		}
	}
}
