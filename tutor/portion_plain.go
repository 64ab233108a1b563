package tutor

import (
	"errors"
	"fmt"
	"io"
)

// PortionLines tell what a portion is made of, a line each with its reason.
func PortionLines(offers []Offer) []string {
	var all []string
	for i, o := range offers {
		all = append(all, fmt.Sprintf("%d. %s, %s: %s.", i+1, o.Form, o.Problem.Title, o.Why))
	}
	return all
}

// Minutes is about how long a portion takes.
func Minutes(offers []Offer) int {
	halves := 0
	for _, o := range offers {
		halves += max(o.Halves, 0)
		if o.Form == WholeProblem {
			halves += portionHalves
		}
	}
	return (halves + 1) / 2
}

// PlainPortion runs a portion by line, one piece after the other, as Plain and PlainDrill do. Begin makes each.
func PlainPortion(offers []Offer, begin func(Offer) (Piece, error), in io.Reader, out io.Writer) error {
	p := plainOn(in, out)
	p.say("About %d minutes:", Minutes(offers))
	p.lines(PortionLines(offers))
	for i, o := range offers {
		on, err := p.piece(i+1, o, begin)
		if err != nil || !on {
			return errors.Join(err, p.out.Flush())
		}
	}
	p.say("That is all for today.")
	return p.out.Flush()
}

// piece runs one piece, and reports whether the student is still there.
func (p *plain) piece(n int, o Offer, begin func(Offer) (Piece, error)) (on bool, err error) {
	at, err := begin(o)
	if err != nil {
		return false, err
	}
	p.say("Piece %d: %s.", n, o.Form)
	if at.Drill != nil {
		return p.drill(at.Drill)
	}
	p.lines(WorkedOf(at.Lesson))
	on, err = p.work(at.Lesson, p.opening, func() { p.say("Done.%s", p.score()) })
	for p.renewed != nil {
		l := p.renewed
		p.renewed = nil
		on, err = p.work(l, p.opening, func() { p.say("Done.%s", p.score()) })
	}
	for _, again := range at.Lesson.Again() {
		if !on || err != nil {
			break
		}
		on, err = p.work(again, p.reopening, func() { p.say("Done again.") })
	}
	return on, err
}
