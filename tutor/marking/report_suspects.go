package marking

import (
	"cmp"
	"fmt"
	"slices"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A Suspect is a value that most good papers have alike, and that is not the true one; or, with nothing given, one that most good
// papers on copies with other numbers miss.
type Suspect struct {
	Problem, Quantity, Expected, Given string
	Times, Of                          int
	Follow                             []string // other such values, which follow from it or from others in these papers; of one suspect a problem
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
// have other numbers, so that each is held against its own papers alone; beside that, what most good papers on any copies miss is told.
func (c *counting) suspects(rows []markRow) {
	good, size := c.goodPapers(rows, func(r markRow) [2]string { return [2]string{r.problem, r.copyOf} })
	alike, follow := c.doubt(rows, good), map[string][]string{}
	for key, d := range alike {
		switch of := size[[2]string{key.problem, key.copyOf}]; {
		case 2*d.times <= of:
		case 2*d.carried > d.times:
			follow[key.problem] = append(follow[key.problem], key.quantity)
		default:
			c.Suspects = append(c.Suspects, Suspect{Problem: key.problem, Quantity: key.quantity, Expected: d.expected, Given: d.given, Times: d.times, Of: of})
		}
	}
	c.missed(rows)
	slices.SortFunc(c.Suspects, func(a, b Suspect) int {
		return cmp.Or(cmp.Compare(a.Problem, b.Problem), cmp.Compare(a.Quantity, b.Quantity), cmp.Compare(a.Given, b.Given))
	})
	for i, s := range c.Suspects {
		if i+1 == len(c.Suspects) || c.Suspects[i+1].Problem != s.Problem { // once a problem
			slices.Sort(follow[s.Problem])
			c.Suspects[i].Follow = slices.Compact(follow[s.Problem])
		}
	}
}

// doubt counts, in good papers, values alike that are not the true one.
func (c *counting) doubt(rows []markRow, good map[string]bool) map[doubted]*doubts {
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
		if c := cmp.Or(len(r.given)-len(d.given), cmp.Compare(r.given, d.given)); c < 0 {
			d.given = r.given
		}
	}
	return alike
}

// missed finds values of problems with copies in which the trouble begins in most good papers.
func (c *counting) missed(rows []markRow) {
	copies := map[string]map[string]bool{}
	for _, r := range rows {
		if copies[r.problem] == nil {
			copies[r.problem] = map[string]bool{}
		}
		copies[r.problem][r.copyOf] = true
	}
	good, size := c.goodPapers(rows, func(r markRow) [2]string { return [2]string{r.problem} })
	times := map[[2]string]int{}
	for _, r := range rows {
		if _, _, part := partOf(r.quantity); !part && good[r.paper] && slices.Contains([]string{Slip, Wrong, Sense, Close, Unit}, r.verdict) {
			times[[2]string{r.problem, r.quantity}]++
		}
	}
	for key, n := range times {
		if of := size[[2]string{key[0]}]; len(copies[key[0]]) > 1 && 2*n > of {
			c.Suspects = append(c.Suspects, Suspect{Problem: key[0], Quantity: key[1], Times: n, Of: of})
		}
	}
}

// goodPapers are the third with the most marks of the papers that belong together, where these are enough, and how many those are.
func (c *counting) goodPapers(rows []markRow, together func(markRow) [2]string) (good map[string]bool, size map[[2]string]int) {
	groups := map[[2]string][]string{}
	seen := map[string]bool{}
	for _, r := range rows {
		if !seen[r.paper] {
			seen[r.paper] = true
			groups[together(r)] = append(groups[together(r)], r.paper)
		}
	}
	good, size = map[string]bool{}, map[[2]string]int{}
	for key, papers := range groups {
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
	if s.Given == "" {
		return fmt.Sprintf("Look at the true values of %s in %s: on copies of their own %d of the %d best papers go wrong there. Does the text say what the frame in the file is?", s.Quantity, s.Problem, s.Times, s.Of)
	}
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
