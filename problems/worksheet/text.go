package worksheet

import (
	"unpin/problems"
	"unpin/statics"
)

// Options say how a text is laid out.
type Options struct {
	Width int  // the widest line; 0 is 80, and no less than 60 serve
	ASCII bool // no character beyond ASCII but those of the problem's own title and text
}

// The widths of a line: as a rule, and at least.
const (
	usualWidth = 80
	leastWidth = 60
)

// Text is the worked solution, set out as a handbook does: what is given and to be found, count, free bodies, every sum
// with its reason, the check, all results, and N, V and M of every member at its critical points. Of a frame that is not
// determinate it says what is given, and then what Inspect says.
func Text(p *problems.Problem, s *statics.Solution, o Options) string {
	d := newDocument(p, s, o.ASCII)
	d.solution()
	return d.asText(o)
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
