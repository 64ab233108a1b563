package marking

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/wording"
)

// A ClassList is a line for each paper, then what they came to.
type ClassList struct {
	text    strings.Builder
	papers  int
	got, of exact.Num
}

// Add adds a paper.
func (c *ClassList) Add(r *Result) {
	c.papers++
	c.got, c.of = c.got.Add(r.Got), c.of.Add(r.Of)
	name := strings.TrimSpace(r.Marker.Name + " " + r.Paper.Code)
	if r.Paper.Attempt > 1 {
		name += fmt.Sprintf(", attempt %d", r.Paper.Attempt)
	}
	fmt.Fprintf(&c.text, "%s %s: %s of %s%s\n", r.Paper.Student, name, Points(r.Got), Points(r.Of), r.short())
	for _, text := range unreadText(r.Unread) {
		fmt.Fprintf(&c.text, "  unread, %s\n", text)
	}
}

// AddTotal adds what a student got for several papers.
func (c *ClassList) AddTotal(papers []*Result) {
	if len(papers) < 2 {
		return
	}
	var got, of exact.Num
	for _, r := range papers {
		got, of = got.Add(r.Got), of.Add(r.Of)
	}
	fmt.Fprintf(&c.text, "%s %s: %s of %s\n", papers[0].Paper.Student, inAll, Points(got), Points(of))
}

// Text is the whole list.
func (c *ClassList) Text() string {
	return c.text.String() + fmt.Sprintf("%s: %s of %s marks\n", wording.Counted(c.papers, "paper"), Points(c.got), Points(c.of))
}

// short says in few words why marks are lost.
func (r *Result) short() string {
	var parts []string
	if len(r.Faults) > 0 {
		parts = append(parts, strings.ToLower(r.mistakes()[:1])+r.mistakes()[1:])
	}
	for _, a := range r.Answers {
		if a.Verdict == Sense && a.Asked && !contains(r.Faults, a.Name) || a.Verdict == Unit {
			parts = append(parts, a.Name+": "+words[a.Verdict])
		}
	}
	if n, light := r.missing(); n > 0 && light {
		parts = append(parts, fmt.Sprintf("%d missing, without weight", n))
	} else if n > 0 {
		parts = append(parts, fmt.Sprintf("%d missing", n))
	}
	if len(parts) == 0 {
		return ""
	}
	return ": " + strings.Join(parts, "; ")
}
