package worksheet

import (
	"unpin/statics"
	"unpin/statics/wording"
)

// bodies is the section on the free bodies: what acts on each, and in which sense each unknown is taken as positive.
type bodies struct{ *document }

func (d bodies) write() {
	d.section("Free bodies")
	drawing(d).bodies(false)
	for b := range d.Bodies() {
		if b > 0 {
			d.blank()
		}
		d.body(b)
	}
}

func (d bodies) body(b int) {
	body := statics.FreeBody{b}
	sums := "3 sums"
	if d.IsPin(b) {
		sums = "2 sums"
	}
	d.subhead(wording.Sentence(d.say.BodyName(b) + ": " + wording.Counted(len(d.ForcesOn(body)), "unknown") + ", " + sums))
	for _, at := range d.say.Meetings(b) {
		d.item("  at "+at[0]+"   ", at[1])
	}
	for _, i := range d.ActionsOn(body) {
		d.item("  load   ", d.say.Resultant(i))
	}
	if text := d.say.KeptPulleys(body); text != "" {
		d.item("  ", text)
	}
	if d.isTwoForce(b) {
		d.item("  ", "It is held by two pins and not loaded between them, a two-force member: the forces at its ends are opposite, along the line between them.")
	}
}

// isTwoForce reports whether a part is held by two pins, or slots, alone, carries no load and so takes a force along the
// line between them only.
func (d *document) isTwoForce(b int) bool {
	if d.IsPin(b) || len(d.ActionsOn(statics.FreeBody{b})) > 0 {
		return false
	}
	at := map[int]int{}
	for _, i := range d.ForcesOn(statics.FreeBody{b}) {
		if d.Forces[i].Couple {
			return false
		}
		at[d.Forces[i].Joint]++
	}
	for _, n := range at {
		if n != 2 {
			return false
		}
	}
	return len(at) == 2
}
