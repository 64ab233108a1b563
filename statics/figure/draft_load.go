package figure

import (
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// loads adds the loads of these indices: spread loads first, so that others stand upon them.
func (d *draft) loads(list []int) {
	var spreads []spreadLoad
	for _, i := range list {
		if l := d.f.Loads[i]; l.Kind == statics.SpreadLoad {
			spreads = d.spread(spreads, i, l)
		}
	}
	for i := range spreads {
		if s := &spreads[i].Spread; !s.Pull && d.alongRope(*s, list) {
			s.Pull = true
		}
	}
	d.addSpreads(spreads)
	for _, i := range list {
		switch l := d.f.Loads[i]; {
		case l.Kind == statics.SpreadLoad || l.Size.IsZero():
		case l.Kind == statics.CoupleLoad:
			d.coupleLoad(i, l)
		case l.Kind == statics.RopeLoad:
			d.rope(i, l)
		default:
			d.pointLoad(i, l)
		}
	}
}

// place is where a point load or couple acts; its distance along the member is measured if it is no joint's.
func (d *draft) place(l statics.Load, what string) Position {
	if l.Joint != statics.None {
		return d.joint(l.Joint)
	}
	at := d.f.Along(l.Member, l.At)
	d.measure(l.Member, l.At, what)
	p := point(at)
	d.onMember(p, l.Member)
	return p
}

// along reports whether a distance along a member is better written beside the load than measured along the axes: on a
// sloping member, if it is a plain number.
func (d *draft) along(m int, x exact.Num) bool {
	span := d.f.Span(m)
	inner := x.Sign() > 0 && x.Cmp(d.f.Length(m)) < 0
	return inner && !span.X.IsZero() && !span.Y.IsZero() && x.Terminates()
}

// measure dimensions a place on a member that is no joint's.
func (d *draft) measure(m int, x exact.Num, what string) {
	if d.along(m, x) {
		return
	}
	span, at := d.f.Span(m), d.f.Along(m, x)
	if !span.X.IsZero() {
		d.across = append(d.across, mark1D{at.X, what})
	} else {
		d.up = append(d.up, mark1D{at.Y, what})
	}
}

// where says how far along a sloping member something stands, or nothing.
func (d *draft) where(l statics.Load) string {
	if l.Joint != statics.None || !d.along(l.Member, l.At) {
		return ""
	}
	return ", " + d.o.given(l.At, notation.Length) + " from " + d.f.Joints[d.f.Members[l.Member].From].Name
}

// bearer says which part carries a load at a joint where several meet, or nothing.
func (d *draft) bearer(l statics.Load) string {
	if l.Joint == statics.None || l.Member == statics.None {
		return ""
	}
	for _, c := range d.f.Connections {
		if c.Joint == l.Joint {
			return " on " + d.f.Members[l.Member].Name
		}
	}
	return ""
}

// pointLoad adds a force.
func (d *draft) pointLoad(i int, l statics.Load) {
	size := d.o.given(l.Size.Abs(), notation.Force)
	along := l.Along
	if l.Size.Sign() < 0 {
		along = along.Neg()
	}
	sense := vector(along)
	if sense.IsZero() {
		return
	}
	text := size
	if !sense.Level() && !sense.Upright() {
		text += " " + d.slant(inclination(along))
	}
	d.arrow(Arrow{
		At: d.place(l, "the "+size+" load"), Toward: sense,
		Text: text + d.bearer(l) + d.where(l), Look: Look{LoadMark, d.o.load(i)}, Slope: slopeOf(along),
	}, sense, false)
}

// slant is an inclination as it stands beside a value.
func (d *draft) slant(steepness string) string {
	if strings.HasSuffix(steepness, "°") {
		steepness = "at " + steepness
	}
	if d.o.Style.ASCII {
		return notation.ASCII(steepness)
	}
	return steepness
}

// coupleLoad adds a couple.
func (d *draft) coupleLoad(i int, l statics.Load) {
	size := d.o.given(l.Size.Abs(), notation.Moment)
	at := d.place(l, "the "+size+" couple")
	kind, turn := TurnLeft, " ccw"
	if l.Size.Sign() < 0 {
		kind, turn = TurnRight, " cw"
	}
	d.Symbols = append(d.Symbols, Symbol{
		Kind: kind, At: at, Toward: d.freeSide(at),
		Text: size + turn + d.bearer(l) + d.where(l), Look: Look{LoadMark, d.o.load(i)},
	})
}
