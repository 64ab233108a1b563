package worksheet

import (
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A document is what there is to say about one problem, as far as it is written. Each of its sections is a type of its
// own that writes into it.
type document struct {
	passages
	p *problems.Problem
	*statics.Solution
	st       notation.Style
	say      wording.Speaker
	stations [][]statics.Station // of each member
	others   []*statics.Assembly // that the solution cuts the frame into besides, with forces of their own names
}

func newDocument(p *problems.Problem, s *statics.Solution, ascii bool) *document {
	st := p.Style(ascii)
	d := &document{p: seen(p), Solution: s, st: st, say: wording.New(s.Assembly, st).Short(), passages: passages{ascii: ascii}}
	for _, g := range s.Diagrams {
		d.stations = append(d.stations, g.Stations())
	}
	return d
}

// seen is the problem with nothing hidden in its texts.
func seen(p *problems.Problem) *problems.Problem {
	visible := *p
	visible.Title, visible.Text = notation.VisibleLines(p.Title), notation.VisibleLines(p.Text)
	visible.Warnings = nil
	for _, w := range p.Warnings {
		visible.Warnings = append(visible.Warnings, notation.VisibleLines(w))
	}
	return &visible
}

// solution sets out the worked solution, or those parts of it that are asked for. Of a frame that has none it tells why,
// unless only what is given is asked for.
func (d *document) solution(o Options) {
	d.opening(o.has("given"))
	drawing{d}.leaveOut()
	determinate := d.Count.Determinacy() == statics.Determinate
	if o.has("given") {
		given{d}.write()
	}
	if !determinate {
		if o.has(Parts[1:]...) {
			d.refused()
		}
		return
	}
	if o.has("given") {
		d.find()
	}
	if o.has("bodies", "sums", "results") {
		d.conventions()
	}
	if o.has("bodies") {
		counting{d}.write()
		bodies{d}.write()
	}
	if o.has("sums") {
		newWorking(d).write()
	}
	if o.has("results") {
		results{d}.write()
	}
	if o.has("diagrams") && (len(o.Only) > 0 || d.wants("diagrams")) {
		diagrams{d, new(likeness)}.write()
	}
}

// refused tells why the frame has no solution.
func (d *document) refused() {
	counting{d}.write()
	refusal{d}.write()
	drawing{d}.motions()
}

// opening is the title, the problem's own text where it is wanted, and the caution.
func (d *document) opening(whole bool) {
	d.title(oneLine(d.p.Title))
	text := d.p.Text
	if !whole {
		text = ""
	}
	for text := range strings.SplitSeq(text, "\n\n") {
		if line := oneLine(text); line != "" {
			d.blank()
			d.tell(line)
		}
	}
	d.blank()
	d.prose(wording.Caution)
}

// wants reports whether the problem asks for something of a kind: reactions, pins or diagrams.
func (d *document) wants(what string) bool {
	for _, f := range d.p.Find {
		if f == what || what == "diagrams" && alongMember(f) {
			return true
		}
	}
	return len(d.p.Find) == 0
}

// alongMember reports whether a word of Find asks for N, V or M by itself or at a place.
func alongMember(word string) bool {
	return word == "N" || word == "V" || word == "M" || strings.Contains(word, "(")
}

// find says what is to be found: groups first, then single answers.
func (d *document) find() {
	asks := func(word string) bool { return len(d.p.Find) == 0 || slices.Contains(d.p.Find, word) }
	var what, curves []string
	for _, group := range []struct{ word, says string }{{"reactions", "the reactions"}, {"pins", wording.PinForces(&d.Frame)}} {
		if asks(group.word) && (group.word != "pins" || len(d.Frame.Connections) > 0) {
			what = append(what, group.says)
		}
	}
	for _, curve := range []string{"N", "V", "M"} {
		if asks(curve) || asks("diagrams") {
			curves = append(curves, curve)
		}
	}
	if len(curves) > 0 {
		what = append(what, notation.List(curves)+" of every member")
	}
	for _, f := range d.p.Find {
		if !slices.Contains([]string{"reactions", "pins", "diagrams", "N", "V", "M"}, f) {
			what = append(what, f)
		}
	}
	d.blank()
	d.item("Find: ", notation.List(what)+".")
	d.symbolic("NVM")
}

// conventions says once what holds on the whole page.
func (d *document) conventions() {
	d.section("Conventions")
	d.prose(d.say.Conventions())
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
		if !d.p.Units.Letters() && !d.say.ShownInFull(n) {
			return true
		}
	}
	return false
}

func (d *document) anyInexact() bool {
	inexact := d.Count.Inexact
	for _, v := range d.Values {
		inexact = inexact || v.Inexact()
	}
	return inexact
}

// names lists the names of forces.
func (d *document) names(forces []int) string {
	var names []string
	for _, i := range forces {
		names = append(names, d.Forces[i].Name)
	}
	if len(names) == 0 {
		return "none"
	}
	return notation.List(names)
}

// unitNames are the units that the document writes.
func (d *document) unitNames() []string {
	var names []string
	for _, dim := range []notation.Dimension{notation.Force, notation.Length, notation.Moment, notation.Intensity} {
		names = append(names, d.st.UnitOf(dim))
	}
	return names
}

// oneLine is a text of the problem's without line breaks.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }
