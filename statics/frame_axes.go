package statics

import "unpin/statics/exact"

// Axes are a member's length and the unit vectors along it and perpendicular to it, counter-clockwise.
type axes struct {
	origin Point
	length exact.Num
	e, n   Vector
}

// memberAxes lists the axes of every member.
func (f *Frame) memberAxes() []axes {
	all := make([]axes, len(f.Members))
	for m := range f.Members {
		e, length := f.Span(m).unit()
		all[m] = axes{f.Joints[f.Members[m].From].At, length, e, e.Left()}
	}
	return all
}

// at is the point at distance x from the member's start.
func (x *axes) at(d exact.Num) Point {
	if d.IsZero() {
		return x.origin
	}
	return x.origin.Plus(x.e.Times(d))
}

// onLength is the factor that turns an intensity of that basis into force per length of the member.
func (x *axes) onLength(per Per) exact.Num {
	switch per {
	case PerRun:
		return x.e.X.Abs()
	case PerRise:
		return x.e.Y.Abs()
	}
	return one
}

// shares are the cosines of a direction along the member and perpendicular to it.
func (x *axes) shares(along Vector) (e, n exact.Num) {
	u, _ := along.unit()
	return u.Dot(x.e), u.Dot(x.n)
}

// Span is the vector from the start of member m to its end.
func (f *Frame) Span(m int) Vector {
	return f.Joints[f.Members[m].From].At.To(f.Joints[f.Members[m].To].At)
}

// Length is the length of member m.
func (f *Frame) Length(m int) exact.Num { return f.Span(m).Length() }

// Along is the point at distance x from the start of member m.
func (f *Frame) Along(m int, x exact.Num) Point {
	e, length := f.Span(m).unit()
	a := axes{f.Joints[f.Members[m].From].At, length, e, e.Left()}
	return a.at(x)
}
