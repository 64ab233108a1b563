package statics

import "unpin/statics/exact"

// A Side says on which side of a place along a member a value holds.
type Side int

// The sides of a place.
const (
	Both   Side = iota // the values are the same just before and just after
	Before             // just before it
	After              // just after it
)

// A Station is a critical point of a member: an end, a place where a load begins, ends or stands, or a place where the
// shear is zero between them.
type Station struct {
	At   exact.Num // from the member's start
	Side Side
	InternalForces
	Extreme bool // the shear changes sign here, or is zero between two such places, so the moment has a peak
	Found   bool // it is no end and no load stands here: the place itself had to be found
	Exact   bool // At is exact; otherwise it is a rational to 34 figures
}

// Section is N, V and M at distance x from the member's start, just before or just after it; Both is as After. It is
// false where the diagram is withheld, where x lies off the member, and before its start or after its end.
func (d Diagram) Section(x exact.Num, side Side) (InternalForces, bool) {
	for i, p := range d.Stretches {
		from, until := x.Cmp(p.From), x.Cmp(p.Until)
		last := i == len(d.Stretches)-1
		switch {
		case side == Before && from > 0 && until <= 0,
			side == After && from >= 0 && until < 0,
			side == Both && from >= 0 && (until < 0 || last && until == 0):
			return p.At(x), true
		}
	}
	return InternalForces{}, false
}

// StretchFrom is the stretch in which a station lies, or that begins there; at the member's end, the last.
func (d Diagram) StretchFrom(st Station) Stretch {
	for _, p := range d.Stretches {
		if st.At.Cmp(p.Until) < 0 {
			return p
		}
	}
	return d.Stretches[len(d.Stretches)-1]
}

// Stations lists the critical points of the member in order (S14). Where the values step there are two, before and after.
func (d Diagram) Stations() []Station {
	var all []Station
	for i, p := range d.Stretches {
		all = append(all, d.start(i)...)
		all = append(all, p.peaks()...)
	}
	if n := len(d.Stretches); n > 0 {
		end := d.Stretches[n-1]
		all = append(all, Station{At: end.Until, Side: Before, InternalForces: end.At(end.Until), Exact: true})
	}
	return all
}

// start lists the stations at which stretch i begins.
func (d Diagram) start(i int) []Station {
	p := d.Stretches[i]
	after := Station{At: p.From, Side: After, InternalForces: p.At(p.From), Exact: true}
	if i == 0 {
		return []Station{after}
	}
	before := Station{At: p.From, Side: Before, InternalForces: d.Stretches[i-1].At(p.From), Exact: true}
	extreme := d.turns(i)
	before.Extreme, after.Extreme = extreme, extreme
	if before.Equal(after.InternalForces) {
		after.Side = Both
		return []Station{after}
	}
	return []Station{before, after}
}

// turns reports whether the shear changes sign where stretch i begins. Where it is zero over whole stretches, it counts
// what it was before them and will be after them: the moment is the same all along, and a peak.
func (d Diagram) turns(i int) bool {
	before, after := 0, 0
	for k := i - 1; k >= 0 && before == 0; k-- {
		before = d.Stretches[k].signBefore(d.Stretches[k].Until)
	}
	for k := i; k < len(d.Stretches) && after == 0; k++ {
		after = d.Stretches[k].signAfter(d.Stretches[k].From)
	}
	return before*after < 0
}

// signBefore is the sign of the stretch's shear just before x: if it is zero there, the sign it comes from.
func (p Stretch) signBefore(x exact.Num) int {
	v := p.V
	for sign := 1; ; sign, v = -sign, v.Derivative() {
		if s := v.At(x).Sign(); s != 0 {
			return s * sign
		}
		if v.Degree() == 0 {
			return 0
		}
	}
}

// signAfter is the sign of the stretch's shear just after x.
func (p Stretch) signAfter(x exact.Num) int {
	for v := p.V; ; v = v.Derivative() {
		if s := v.At(x).Sign(); s != 0 {
			return s
		}
		if v.Degree() == 0 {
			return 0
		}
	}
}

// peaks lists the places inside the stretch where the shear is zero.
func (p Stretch) peaks() []Station {
	var all []Station
	for _, r := range p.V.Roots(p.From, p.Until) {
		if r.X.Cmp(p.From) <= 0 || r.X.Cmp(p.Until) >= 0 {
			continue
		}
		at := p.At(r.X)
		at.V = exact.Num{} // it is zero there, even if the place is held to 34 figures only
		all = append(all, Station{
			At:             r.X,
			InternalForces: at,
			Extreme:        !r.Exact || p.signBefore(r.X)*p.signAfter(r.X) < 0, // a place isolated by halving has a change of sign about it
			Found:          true,
			Exact:          r.Exact,
		})
	}
	return all
}
