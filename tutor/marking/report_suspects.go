package marking

import (
	"cmp"
	"fmt"
	"slices"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Suspect is a value that most good papers have alike, and that is not the true one.
type Suspect struct {
	Problem, Quantity, Expected, Given string
	Times, Of                          int
	Follow                             []string // other such values, which follow from it or from others in these papers
}

// fromPapers is how many papers it takes to doubt a true value.
const fromPapers = 50

// A doubted value is one that is not the true one, as far as papers have it alike: by its size, however it is written.
type doubted struct{ problem, copyOf, quantity, size string }

// doubts are how often good papers have a doubted value, how often it is carried, and how it is written.
type doubts struct {
	times, carried  int
	given, expected string
}

// suspects finds values that most good papers, the third with the most marks, have alike and that are not the true one. Copies
// have other numbers, so that each is held against its own papers alone.
func (c *counting) suspects(rows []markRow) {
	good, size := c.goodPapers(rows)
	alike := map[doubted]*doubts{}
	for _, r := range rows {
		_, _, part := partOf(r.quantity)
		if part || !good[r.paper] || r.given == "" || r.verdict == Right || r.verdict == Rounded || r.verdict == "unread" {
			continue
		}
		key := doubted{r.problem, r.copyOf, r.quantity, sizeOf(r.given)}
		d := alike[key]
		if d == nil {
			d = &doubts{given: r.given, expected: r.expected}
			alike[key] = d
		}
		if d.times++; r.verdict == Carried {
			d.carried++
		}
		d.given = min(d.given, r.given)
	}
	follow := map[string][]string{}
	for key, d := range alike {
		switch of := size[[2]string{key.problem, key.copyOf}]; {
		case 2*d.times <= of:
		case 2*d.carried > d.times:
			follow[key.problem] = append(follow[key.problem], key.quantity)
		default:
			c.Suspects = append(c.Suspects, Suspect{Problem: key.problem, Quantity: key.quantity, Expected: d.expected, Given: d.given, Times: d.times, Of: of})
		}
	}
	for i, s := range c.Suspects {
		slices.Sort(follow[s.Problem])
		c.Suspects[i].Follow = slices.Compact(follow[s.Problem])
	}
	slices.SortFunc(c.Suspects, func(a, b Suspect) int {
		return cmp.Or(cmp.Compare(a.Problem, b.Problem), cmp.Compare(a.Quantity, b.Quantity), cmp.Compare(a.Given, b.Given))
	})
}

// goodPapers are the third with the most marks of the papers on each copy that enough papers are on, and how many those are.
func (c *counting) goodPapers(rows []markRow) (good map[string]bool, size map[[2]string]int) {
	byCopy := map[[2]string][]string{} // papers
	seen := map[string]bool{}
	for _, r := range rows {
		if !seen[r.paper] {
			seen[r.paper] = true
			byCopy[[2]string{r.problem, r.copyOf}] = append(byCopy[[2]string{r.problem, r.copyOf}], r.paper)
		}
	}
	good, size = map[string]bool{}, map[[2]string]int{}
	for key, papers := range byCopy {
		if len(papers) < fromPapers {
			continue
		}
		slices.SortFunc(papers, func(a, b string) int {
			return cmp.Or(c.papers[b].got.Cmp(c.papers[a].got), cmp.Compare(a, b))
		})
		size[key] = len(papers) / 3
		for _, p := range papers[:size[key]] {
			good[p] = true
		}
	}
	return good, size
}

// says is what is told of a suspect: what to look at, and what to do where the class is right.
func (s Suspect) says() string {
	text := fmt.Sprintf("Look at the true value of %s in %s: it is %s, and %d of the %d best papers have %s.", s.Quantity, s.Problem, s.Expected, s.Times, s.Of, s.Given)
	switch n := len(s.Follow); {
	case n == 1:
		text += " " + s.Follow[0] + ", alike in them as well, follows from what they have."
	case n > 1 && n <= 4:
		text += " " + notation.List(s.Follow) + ", alike in them as well, follow from what they have."
	case n > 4:
		text += fmt.Sprintf(" %s more, alike in them as well, follow from what they have.", wording.Counted(n, "value"))
	}
	return text + " If they are right, mend the problem, or let the scheme accept the value, and mark again."
}
