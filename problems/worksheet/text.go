package worksheet

import "strings"

// The widths of a line: as a rule, and at least.
const (
	usualWidth = 80
	leastWidth = 60
)

// Text is the worked solution, set out as a handbook does: what is given and to be found, count, free bodies, every sum
// with its reason, the check, all results, and N, V and M of every member at its critical points. Of a frame that is not
// determinate it says what is given, and then what Inspect says. Several solutions stand one after the other. It heeds all
// options but Paper.
func Text(all []Solved, o Options) string {
	var texts []string
	for _, d := range written(all, o, false) {
		texts = append(texts, d.asText(o))
	}
	return strings.Join(texts, "\n\n")
}

// asText sets the document as plain text.
func (d *document) asText(o Options) string {
	if o.Width == 0 {
		o.Width = usualWidth
	}
	p := &page{width: max(o.Width, leastWidth), ascii: d.ascii, units: d.unitNames()}
	for _, b := range d.list {
		p.set(b)
	}
	return p.String()
}
