package marking

import (
	"fmt"
	"slices"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// exchanged is why an answer is unread whose quantity stands where the value should.
const exchanged = "quantity and value stand in each other's place: write first what it is of"

// isExchanged reports whether an answer would be one if its two sides changed places.
func (r *reading) isExchanged(e Entry) bool {
	if _, err := r.find(e.Value); err != nil {
		return false
	}
	return r.Check(e.Value, e.Quantity) == nil
}

// unreadText says of each unread answer where it stands and what is wrong, in one sentence of all that are wrong in the same way.
func unreadText(all []Unread) []string {
	var texts []string
	for i, u := range all {
		same := func(o Unread) bool { return o.Why == u.Why }
		if slices.IndexFunc(all, same) < i {
			continue
		}
		var lines []int
		others := -1
		for _, o := range all {
			if same(o) {
				lines = append(lines, o.Lines...)
				others++
			}
		}
		text := u.Text
		if others > 0 {
			text += fmt.Sprintf(" and %s like it", wording.Counted(others, "answer"))
		}
		texts = append(texts, fmt.Sprintf("%s: %s: %s", Lines(lines), text, u.Why))
	}
	return texts
}

// Lines are lines of a file: line 3, lines 3 and 7, lines 3 to 6.
func Lines(lines []int) string {
	var all []string
	for i := 0; i < len(lines); {
		last := i
		for last+1 < len(lines) && lines[last+1] == lines[last]+1 {
			last++
		}
		if last < i+2 {
			last = i
			all = append(all, fmt.Sprint(lines[i]))
		} else {
			all = append(all, fmt.Sprintf("%d to %d", lines[i], lines[last]))
		}
		i = last + 1
	}
	return wording.Plural(len(lines), "line") + " " + notation.List(all)
}
