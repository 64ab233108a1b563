package figuretest

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"unpin/statics/figure"
)

// A Medium is what drawn things are held to, in its steps.
type Medium struct {
	Tall     float64 // how much taller a step is than wide
	Apart    float64 // least distance between two arrows, and between an arrow and what it must not meet
	Reach    float64 // most between an arrow's nearer end and the line through its point
	OffLabel float64 // most by which a label may be nearer to another arrow than to its own
	Wall     float64 // least distance between the ground of a support and a member
	Own      float64 // so near to its point runs a member on which an arrow acts, for both are set to whole steps
	Tangent  float64 // least arm of a rope's pull about the middle of its wheel, as part of the radius
	Joint    float64 // so much of a member lies at its joint, where a support's symbol begins
	Ways     bool    // no arrow of another point stands between an arrow and its point: it would seem to act there
	Ropes    bool    // a rope is drawn as far as its wheel, so that nothing between can be mistaken for its point
}

// Paper and Cells are the two media.
var (
	Paper = Medium{Tall: 1, Apart: 1.5, Reach: 8, OffLabel: 0, Wall: 0.5, Own: 0.5, Tangent: 0.99, Joint: 3, Ways: true, Ropes: true}
	Cells = Medium{Tall: 2, Apart: 1.5, Reach: 2.1, OffLabel: 0, Wall: 0.7, Own: 2.1, Tangent: 0.5, Joint: 1, Ways: true}
)

// Violations are what is false in a figure: bodies drawn apart that meet, an arrow that runs over another or whose line to
// its point crosses another part, another member or the arrow of another point, an arrow off its line, a rope that is not tangent to its wheel or does not pull away from it, a label nearer to another arrow than to its own, a support's
// symbol over a member that is not held there.
func (m Medium) Violations(drawn []figure.Drawn) []string {
	var list []string
	things := make([]figure.Drawn, len(drawn))
	for i, d := range drawn {
		for _, p := range []*figure.Position{&d.From, &d.To, &d.At, &d.Hub} {
			p.Y *= m.Tall
		}
		things[i] = d
	}
	for i, a := range things {
		if fault := m.alone(a); fault != "" {
			list = append(list, fault)
		}
		for k, b := range things {
			if i == k {
				continue
			}
			if fault := m.pair(things, a, b, i < k); fault != "" {
				list = append(list, fault)
			}
		}
	}
	return list
}

// LostHeads are the arrows whose heads do not stand in the cells where they should; at tells what stands in one.
func LostHeads(drawn []figure.Drawn, at func(col, row int) rune) []string {
	var list []string
	for _, d := range drawn {
		if d.Kind == figure.DrawnArrow && !strings.ContainsRune("▼▲►◄∨∧<>↗↖↘↙", at(int(d.To.X+0.5), int(d.To.Y+0.5))) {
			list = append(list, "the head of "+d.Text+" is lost")
		}
	}
	return list
}

// InAnyFrame are the violations but those that a frame drawn by chance may force: a member passes on every side of a support or of a
// load, and on paper, where every arrow is drawn, an arrow of another point on every side of one.
func (m Medium) InAnyFrame(drawn []figure.Drawn) []string {
	return slices.DeleteFunc(m.Violations(drawn), func(fault string) bool {
		return strings.HasPrefix(fault, "the support") || strings.HasSuffix(fault, pastMember) || m.Ropes && strings.Contains(fault, pastArrow)
	})
}

// alone is what is false in a thing by itself: an arrow must point along the line through its point, or stand close beside.
func (m Medium) alone(a figure.Drawn) string {
	if a.Kind != figure.DrawnArrow {
		return ""
	}
	if off := offLine(a.At, a.From, a.To); off > m.Reach {
		return fmt.Sprintf("%s is %.1f off its line", a.Text, off)
	}
	return m.rope(a)
}

// rope is what is false in a pull of a rope: from where it leaves the rim it must lead on perpendicular to the way out from the
// middle, in characters about so, for there circles are set to whole steps too, and with its head last.
func (m Medium) rope(a figure.Drawn) string {
	radius := dist(a.At, a.Hub)
	if a.Kind != figure.DrawnArrow || radius == 0 {
		return ""
	}
	way := a.At.To(a.To)
	switch off := math.Abs((a.At.X-a.Hub.X)*way.Y - (a.At.Y-a.Hub.Y)*way.X); {
	case off < m.Tangent*radius:
		return fmt.Sprintf("the rope of %s is not tangent to its wheel", a.Text)
	case dist(a.From, a.At) > dist(a.To, a.At):
		return fmt.Sprintf("the rope of %s pushes", a.Text)
	}
	return ""
}

// pair is what is false between two things; first tells the pair from itself turned round.
func (m Medium) pair(things []figure.Drawn, a, b figure.Drawn, first bool) string {
	apart := a.Part != b.Part
	switch {
	case a.Kind == figure.DrawnMember && b.Kind == figure.DrawnMember && first && apart && between(a, b) < m.Apart:
		return fmt.Sprintf("members of parts %d and %d meet", a.Part, b.Part)
	case a.Kind == figure.DrawnArrow && b.Kind == figure.DrawnArrow && first && between(a, b) < m.Apart:
		return fmt.Sprintf("the arrows %s and %s meet", a.Text, b.Text)
	case a.Kind == figure.DrawnArrow && b.Kind != figure.DrawnLabel && apart && between(toPoint(a), b) < m.Apart:
		return fmt.Sprintf("the line of %s to its joint crosses another part", a.Text)
	case m.Ways && !(m.Ropes && a.At != a.Hub) && a.Kind == figure.DrawnArrow && b.Kind == figure.DrawnArrow && dist(a.At, b.At) >= m.Own && (between(toPoint(a), b) == 0 || between(levelWith(a), b) == 0):
		return fmt.Sprintf("the line of %s%s%s", a.Text, pastArrow, b.Text)
	case a.Kind == figure.DrawnArrow && b.Kind == figure.DrawnMember && !apart && !m.through(b, a.Hub) && between(toPoint(a), b) == 0:
		return "the line of " + a.Text + pastMember
	case a.Kind == figure.DrawnLabel && b.Kind == figure.DrawnArrow && a.Owner >= 0 && things[a.Owner] != b:
		if own, other := fromBox(a, things[a.Owner]), fromBox(a, b); own > other+m.OffLabel {
			return fmt.Sprintf("the label %s is %.1f from its arrow and %.1f from %s", a.Text, own, other, b.Text)
		}
	case a.Kind == figure.DrawnSupport && b.Kind == figure.DrawnMember && between(a, m.beyond(b, a.At)) < m.Wall:
		return fmt.Sprintf("the support %s lies over a member", a.Text)
	case a.Kind == figure.DrawnSupport && b.Kind == figure.DrawnDistributed && liesOver(a, b):
		return fmt.Sprintf("the support %s lies over a distributed load", a.Text)
	}
	return ""
}

// pastArrow is in what is said of an arrow that seems to act where another does.
const pastArrow = " to its joint crosses the arrow "

// pastMember ends what is said of an arrow that seems to act on another member.
const pastMember = " to its point crosses a member"

// through reports whether a member runs through a point.
func (m Medium) through(k figure.Drawn, at figure.Position) bool {
	return fromPoint(at, k.From, k.To) < m.Own
}

// toPoint is an arrow with the line to its point.
func toPoint(a figure.Drawn) figure.Drawn {
	if dist(a.From, a.At) < dist(a.To, a.At) {
		a.From = a.At
	} else {
		a.To = a.At
	}
	return a
}

// levelWith is an arrow that goes on along its own line until it is level with its point.
func levelWith(a figure.Drawn) figure.Drawn {
	v, long := a.From.To(a.To), dist(a.From, a.To)
	if long == 0 {
		return a
	}
	t := ((a.At.X-a.From.X)*v.X + (a.At.Y-a.From.Y)*v.Y) / (long * long)
	foot := figure.Position{X: a.From.X + v.X*t, Y: a.From.Y + v.Y*t}
	switch {
	case t < 0:
		a.From = foot
	case t > 1:
		a.To = foot
	}
	return a
}

// beyond is a member without what of it lies at a joint.
func (m Medium) beyond(k figure.Drawn, at figure.Position) figure.Drawn {
	switch long := dist(k.From, k.To); {
	case long <= m.Joint || !ends(k, at):
	case dist(k.From, at) < dist(k.To, at):
		t := m.Joint / long
		k.From = figure.Position{X: k.From.X + (k.To.X-k.From.X)*t, Y: k.From.Y + (k.To.Y-k.From.Y)*t}
	default:
		t := m.Joint / long
		k.To = figure.Position{X: k.To.X + (k.From.X-k.To.X)*t, Y: k.To.Y + (k.From.Y-k.To.Y)*t}
	}
	return k
}

func ends(k figure.Drawn, at figure.Position) bool {
	return dist(k.From, at) < 1.5 || dist(k.To, at) < 1.5
}

func dist(a, b figure.Position) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// offLine is how far a point lies off the straight line through two others.
func offLine(p, a, b figure.Position) float64 {
	v := a.To(b)
	return math.Abs((p.X-a.X)*v.Y - (p.Y-a.Y)*v.X)
}

// fromPoint is the distance of a point from a stroke.
func fromPoint(p, a, b figure.Position) float64 {
	long := dist(a, b)
	if long == 0 {
		return dist(p, a)
	}
	t := min(max(((p.X-a.X)*(b.X-a.X)+(p.Y-a.Y)*(b.Y-a.Y))/(long*long), 0), 1)
	return dist(p, figure.Position{X: a.X + (b.X-a.X)*t, Y: a.Y + (b.Y-a.Y)*t})
}

// between is the distance of two strokes, 0 if they cross.
func between(a, b figure.Drawn) float64 {
	if crosses(a.From, a.To, b.From, b.To) {
		return 0
	}
	return min(fromPoint(a.From, b.From, b.To), fromPoint(a.To, b.From, b.To), fromPoint(b.From, a.From, a.To), fromPoint(b.To, a.From, a.To))
}

func crosses(a, b, c, d figure.Position) bool {
	side := func(p, q, r figure.Position) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// fromBox is the distance of a stroke from a rectangle, 0 where they meet.
func fromBox(box, stroke figure.Drawn) float64 {
	least := math.Inf(1)
	const steps = 24
	for i := range steps + 1 {
		t := float64(i) / steps
		x, y := stroke.From.X+(stroke.To.X-stroke.From.X)*t, stroke.From.Y+(stroke.To.Y-stroke.From.Y)*t
		least = min(least, math.Hypot(max(box.From.X-x, x-box.To.X, 0), max(box.From.Y-y, y-box.To.Y, 0)))
	}
	return least
}

// liesOver reports whether some point of a support's ground is within the block of a distributed load: on the same side of all its
// edges.
func liesOver(ground, load figure.Drawn) bool {
	corners := [4]figure.Position{load.At, load.Hub, load.To, load.From}
	const steps = 24
	for i := range steps + 1 {
		t := float64(i) / steps
		p := figure.Position{X: ground.From.X + (ground.To.X-ground.From.X)*t, Y: ground.From.Y + (ground.To.Y-ground.From.Y)*t}
		left, right := 0, 0
		for k, a := range corners {
			b := corners[(k+1)%4]
			switch side := (b.X-a.X)*(p.Y-a.Y) - (b.Y-a.Y)*(p.X-a.X); {
			case side > 0:
				left++
			case side < 0:
				right++
			}
		}
		if left == 4 || right == 4 {
			return true
		}
	}
	return false
}
