package statics

import "unpin/statics/exact"

// Axes are where a member starts, its length and the unit vector along it.
type axes struct {
	origin Point
	length exact.Num
	e      Vector

	// Where the length has a root: the whole of the member, and 1 ÷ its length. Products with these have the root once.
	span Vector
	per  exact.Num
}

// memberAxes lists the axes of every member.
func (f *Frame) memberAxes() []axes {
	all := make([]axes, len(f.Members))
	for m := range f.Members {
		x := &all[m]
		x.origin, x.span = f.Joints[f.Members[m].From].At, f.Span(m)
		if x.length = x.span.Length(); x.length.IsRational() {
			x.e = x.span.unitOf(x.length)
			continue
		}
		x.per = over(x.length, x.span.Dot(x.span)) // 1/√n = √n/n, which takes no division by a root
		x.e = x.span.Times(x.per)
	}
	return all
}

// along is the component of a vector along the member.
func (x *axes) along(v Vector) exact.Num {
	if x.per.IsZero() {
		return x.e.Dot(v)
	}
	return x.span.Dot(v).Mul(x.per)
}

// across is its component perpendicular to the member, counter-clockwise.
func (x *axes) across(v Vector) exact.Num {
	if x.per.IsZero() {
		return x.e.Cross(v)
	}
	return x.span.Cross(v).Mul(x.per)
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
	return x.along(u), x.across(u)
}

// Span is the vector from the start of member m to its end.
func (f *Frame) Span(m int) Vector {
	return f.Joints[f.Members[m].From].At.To(f.Joints[f.Members[m].To].At)
}

// Length is the length of member m.
func (f *Frame) Length(m int) exact.Num { return f.Span(m).Length() }

// Along is the point at distance x from the start of member m.
func (f *Frame) Along(m int, x exact.Num) Point {
	e, _ := f.Span(m).unit()
	a := axes{origin: f.Joints[f.Members[m].From].At, e: e}
	return a.at(x)
}
