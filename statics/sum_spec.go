package statics

import "slices"

// A spec is a sum without its terms: a direction, or a centre.
type spec struct {
	moment bool
	slope  slope  // of a direction
	to     Vector // the direction, or from the origin to the centre
	at     ranks  // of the centre
	centre int    // the joint at it, or None
}

// about is the centre of a sum of moments.
func (s *spec) about() Point { return Point(s.to) }

// The sums of forces along the axes.
var eastward, northward = forceAlong(east), forceAlong(north)

// forceAlong is the sum of the forces along a direction.
func forceAlong(d Vector) spec { return spec{slope: slopeOf(&d), to: d, centre: None} }

// momentAbout is the sum of moments about joint j.
func (a *Assembly) momentAbout(j int) spec {
	return spec{moment: true, to: Vector(a.Frame.Joints[j].At), at: a.places.at[j], centre: a.places.first[j]}
}

// momentAt is the sum of moments about a point.
func (p *places) momentAt(x Point) spec {
	at := p.ranksOf(&x)
	return spec{moment: true, to: Vector(x), at: at, centre: p.joint(at)}
}

func (a *Assembly) sum(b FreeBody, s *spec) Sum {
	if s.moment {
		return a.momentSum(b, s.about(), s.centre)
	}
	return a.ForceSum(b, s.to)
}

// spec is a sum of the assembly without its terms.
func (s *Sum) spec(a *Assembly) spec {
	switch {
	case !s.Moment:
		return forceAlong(s.Along)
	case s.Centre != None:
		return a.momentAbout(s.Centre)
	}
	return a.places.momentAt(s.About)
}

// plain reports whether a sum is along x or y or about a joint.
func (s *spec) plain() bool {
	if s.moment {
		return s.centre != None
	}
	return s.slope != oblique
}

// same reports whether a sum of the same body is that of the spec.
func (s *spec) same(o *Sum) bool {
	if s.moment != o.Moment {
		return false
	}
	if s.moment {
		return s.about().Equal(o.About)
	}
	return s.to.Cross(o.Along).IsZero()
}

// counts reports whether a force along a direction d at a place, or a couple, has a part in a sum.
func (s *spec) counts(couple bool, d *Vector, at *Point) bool {
	switch {
	case s.moment && couple:
		return true
	case s.moment && d.X.IsZero():
		return !s.to.X.Equal(at.X)
	case s.moment && d.Y.IsZero():
		return !s.to.Y.Equal(at.Y)
	case s.moment:
		return !s.about().To(*at).Cross(*d).IsZero()
	case couple:
		return false
	}
	return !s.to.Dot(*d).IsZero()
}

// countsForce reports whether force i has a part in a sum of a body on which it acts, as its term would say (S6).
func (a *Assembly) countsForce(s *spec, i int) bool {
	l := &a.lines[i]
	if l.slope != oblique { // as most are: without any arithmetic
		return s.countsLine(l)
	}
	f := &a.Forces[i]
	return f.Joint != s.centre && s.counts(false, &f.Along, &a.Frame.Joints[f.Joint].At)
}

// countsLine reports whether a couple, or a force along an axis, has a part in a sum.
func (s *spec) countsLine(l *lineOfAction) bool {
	switch {
	case l.slope == noLine:
		return s.moment
	case !s.moment:
		return s.slope == l.slope || s.slope == oblique
	case l.slope == alongY:
		return s.at.x != l.rank
	}
	return s.at.y != l.rank
}

// loaded reports whether a load has a part in a sum of a body.
func (s *spec) loaded(a *Assembly, b FreeBody) bool {
	return slices.ContainsFunc(b, func(body int) bool {
		return slices.ContainsFunc(a.actionsOn[body], func(i int) bool { return !a.Actions[i].Size.IsZero() && a.countsAction(s, i) })
	})
}

// countsAction reports whether an action has a part in a sum of the body on which it acts.
func (a *Assembly) countsAction(s *spec, i int) bool {
	x := &a.Actions[i]
	return s.counts(x.Shape == Turning, &x.Along, &x.At)
}
