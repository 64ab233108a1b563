package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// bodies describes each free body: what acts on it, and in which sense each unknown is taken as positive.
func (d *document) bodies() {
	d.section("Free bodies")
	d.drawBodies(false)
	for b := range d.Bodies() {
		if b > 0 {
			d.blank()
		}
		d.body(b)
	}
}

func (d *document) body(b int) {
	body := statics.FreeBody{b}
	sums := "3 sums"
	if d.IsPin(b) {
		sums = "2 sums"
	}
	forces := d.ForcesOn(body)
	d.subhead(wording.Sentence(wording.Body(d.Assembly, body) + ": " + counted(len(forces), "unknown") + ", " + sums))
	for _, group := range d.meetings(b, forces) {
		d.item("  at "+d.Frame.Joints[d.Forces[group[0]].Joint].Name+"   ", d.meetingText(b, group))
	}
	for _, i := range d.ActionsOn(body) {
		d.item("  load   ", d.actionText(i))
	}
	if d.isTwoForce(b) {
		d.item("  ", "It is held by two pins and not loaded between them, a two-force member: the forces at its ends are opposite, along the line between them.")
	}
}

// meetings groups the unknowns on a body by where they act and what exerts them.
func (d *document) meetings(b int, forces []int) [][]int {
	var groups [][]int
	for _, i := range forces {
		last := len(groups) - 1
		if last >= 0 {
			f, g := d.Forces[i], d.Forces[groups[last][0]]
			if f.Joint == g.Joint && d.giver(b, f) == d.giver(b, g) {
				groups[last] = append(groups[last], i)
				continue
			}
		}
		groups = append(groups, []int{i})
	}
	return groups
}

// giver is the body that exerts force f on body b, or None: the ground.
func (d *document) giver(b int, f statics.Force) int {
	if f.On == b {
		return f.By
	}
	return f.On
}

// meetingText lists unknowns that one giver exerts at one joint: "Bx right, By up, from part AB".
func (d *document) meetingText(b int, group []int) string {
	var all []string
	for _, i := range group {
		all = append(all, d.Forces[i].Name+" "+d.senseOn(b, d.Forces[i]))
	}
	text := strings.Join(all, ", ")
	f := d.Forces[group[0]]
	giver := d.giver(b, f)
	switch {
	case giver == statics.None:
		return text + ": from the support"
	case f.On != b:
		return text + ": from " + d.bodyName(giver) + ", reversed"
	}
	return text + ": from " + d.bodyName(giver)
}

func (d *document) bodyName(b int) string { return wording.Body(d.Assembly, statics.FreeBody{b}) }

// senseOn is the sense in which force f, positive, acts on body b; an inclined force with its direction.
func (d *document) senseOn(b int, f statics.Force) string {
	if f.Couple {
		sign := 1
		if f.On != b {
			sign = -1
		}
		return turn(sign)
	}
	if f.On != b {
		return d.directionText(f.Along.Neg())
	}
	return d.directionText(f.Along)
}

// actionText is a load on a body, with the place and size of its resultant if it is spread.
func (d *document) actionText(i int) string {
	x := d.Loads[i]
	l := d.Frame.Loads[x.Load]
	if !x.Shape.Spread() {
		what, where := d.loadText(l)
		return what + " " + d.carrier(l) + where
	}
	text := fmt.Sprintf("%s %s, %s: the resultant of %s", d.st.WithUnit(x.Size.Abs(), notation.Force),
		strings.TrimSuffix(d.loadDirection(l, x.Size.Sign()), ","), d.from(l.Member, centroid(x)), wording.New(d.Assembly, d.st).Action(i))
	if x.Start.IsZero() && x.End.Equal(d.Frame.Length(l.Member)) || strings.Contains(text, " to "+d.st.WithUnit(x.End, notation.Length)) {
		return text
	}
	return text + fmt.Sprintf(", from %s to %s", d.st.Given(x.Start, notation.Length), d.from(l.Member, x.End))
}

// centroid is the distance at which the resultant of a spread action stands on its member.
func centroid(x statics.Action) exact.Num {
	length := x.End.Sub(x.Start)
	shares := map[statics.ActionShape][2]int64{statics.Uniform: {1, 2}, statics.RisingRamp: {2, 3}, statics.FallingRamp: {1, 3}}
	share := shares[x.Shape]
	k, err := exact.Frac(share[0], share[1])
	if err != nil { // only for a shape that is not spread, which has no stretch
		return x.Start
	}
	return x.Start.Add(length.Mul(k))
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
