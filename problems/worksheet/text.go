package worksheet

import (
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
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

// solution sets the worked solution out.
func (d *document) solution() {
	d.opening()
	d.given()
	if d.Count.Verdict() != statics.Determinate {
		d.count()
		d.refusal()
		d.drawMotions()
		return
	}
	d.find()
	d.conventions()
	d.count()
	d.bodies()
	d.steps()
	d.results()
	if d.wants("diagrams") {
		d.diagrams()
	}
}

// A document is what there is to say about one problem.
type document struct {
	passages
	p *problems.Problem
	*statics.Solution
	st       notation.Style
	stations [][]statics.Station // of each member
}

func newDocument(p *problems.Problem, s *statics.Solution, ascii bool) *document {
	d := &document{p: p, Solution: s, st: p.Style(ascii), passages: passages{ascii: ascii}}
	for _, g := range s.Diagrams {
		d.stations = append(d.stations, g.Stations())
	}
	return d
}

func (d *document) opening() {
	d.title(oneLine(d.p.Title))
	for text := range strings.SplitSeq(d.p.Text, "\n\n") {
		if line := oneLine(text); line != "" {
			d.blank()
			d.prose(line)
		}
	}
	d.blank()
	d.prose(wording.Caution)
}

// wants reports whether the problem asks for something.
func (d *document) wants(what string) bool {
	for _, f := range d.p.Find {
		if f == what {
			return true
		}
	}
	return len(d.p.Find) == 0
}

func (d *document) find() {
	words := map[string]string{"reactions": "the reactions", "pins": "the pin forces", "diagrams": "N, V and M of every member"}
	var what []string
	for _, f := range []string{"reactions", "pins", "diagrams"} {
		if d.wants(f) {
			what = append(what, words[f])
		}
	}
	d.blank()
	d.item("Find: ", notation.List(what)+".")
}

// conventions says once what holds on the whole page.
func (d *document) conventions() {
	d.section("Conventions")
	turns := "Moments and couples are positive counter-clockwise."
	if d.st.Moments == notation.ClockwiseMoments {
		turns = "Moments in a sum are positive clockwise, the couple of a support counter-clockwise."
	}
	d.prose("x runs to the right and y up. " + turns + " Each unknown is taken in its positive sense: a minus in the result means " +
		"that it acts the other way. The forces at a pin are named as they act on one part; on the other they are reversed.")
	d.symbolic("xy")
	if d.rounds() {
		d.prose("Results are rounded to " + number(d.st.Figures) + " figures; a short exact value stands beside the rounded one. " +
			"Later sums carry the exact values on, and show them with more figures.")
	}
	if d.anyInexact() {
		d.prose("An angle in this problem has no exact cosine: it is carried to 34 figures, and ~ marks every value that rests on it.")
	}
}

// rounds reports whether any result is rounded.
func (d *document) rounds() bool {
	results := append([]exact.Num{}, d.Values...)
	for _, g := range d.Diagrams {
		for _, s := range d.stations[g.Member] {
			results = append(results, s.N, s.V, s.M)
		}
	}
	for _, n := range results {
		if !d.p.Units.Letters() && !d.shownInFull(n) {
			return true
		}
	}
	return false
}

// shownInFull reports whether rounding to the figures of a result leaves n as it is.
func (d *document) shownInFull(n exact.Num) bool {
	return n.Terminates() && notation.Number(n, max(d.st.Figures, 1)) == n.Decimal(manyFigures)
}

// manyFigures is more than any number of a problem has.
const manyFigures = 1000

func (d *document) anyInexact() bool {
	inexact := d.Count.Inexact
	for _, v := range d.Values {
		inexact = inexact || v.Inexact()
	}
	return inexact
}

// result is a result with its unit, marked if it is inexact.
func (d *document) result(n exact.Num, dim notation.Dimension) string {
	unit := d.st.UnitOf(dim)
	if n.IsZero() || d.p.Units.Letters() || unit == "" {
		return d.st.ResultNumber(n, dim) + mark(n)
	}
	return d.st.ResultNumber(n, dim) + mark(n) + " " + unit
}

func mark(n exact.Num) string {
	if n.Inexact() {
		return "~"
	}
	return ""
}

// The longest texts of an exact value that are worth showing.
const (
	longDecimal = 12
	longExact   = 12
)

// exactly is the exact value where the result is rounded, without its unit: "46/3", "5√2/2"; empty where it says nothing
// new or would be too long.
func (d *document) exactly(n exact.Num, dim notation.Dimension) string {
	if n.Inexact() || d.p.Units.Letters() || d.shownInFull(n) {
		return ""
	}
	text := n.String()
	if decimal := n.Decimal(valueFigures); n.Terminates() && len(decimal) <= longDecimal {
		text = d.st.Decimal.In(decimal)
	}
	if text = d.surd(text); runes(text) <= longExact {
		return text
	}
	return ""
}

// surd is an exact text with roots as they are printed, 5*sqrt(2)/2 as 5√2/2; in ASCII it stays as it is.
func (d *document) surd(text string) string {
	if d.ascii {
		return text
	}
	text = strings.ReplaceAll(text, "*sqrt(", "sqrt(")
	for {
		before, rest, found := strings.Cut(text, "sqrt(")
		if !found {
			return notation.Pretty(text)
		}
		radicand, after, _ := strings.Cut(rest, ")")
		text = before + "√" + radicand + after
	}
}

// oneLine is a text of the problem's without line breaks.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }
