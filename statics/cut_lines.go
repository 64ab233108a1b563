package statics

// A slope says how the line of a force lies.
type slope uint8

const (
	oblique slope = iota
	alongX
	alongY
	noLine // a couple has no line
)

// slopeOf is the slope of a line along a vector.
func slopeOf(v *Vector) slope {
	switch {
	case v.X.IsZero():
		return alongY
	case v.Y.IsZero():
		return alongX
	}
	return oblique
}

// A line of action says along which line a force acts: of two along the same axis
// equal ranks tell that they are one.
type lineOfAction struct {
	slope slope
	rank  int32 // of its x where it is along y, of its y where it is along x
}

// linesOf are the lines along which forces act.
func (p *places) linesOf(forces []Force) []lineOfAction {
	lines := make([]lineOfAction, len(forces))
	for i := range forces {
		f, l := &forces[i], &lines[i]
		at := p.at[f.Joint]
		if *l = (lineOfAction{slopeOf(&f.Along), None}); f.Couple {
			l.slope = noLine
		}
		switch l.slope {
		case alongY:
			l.rank = at.x
		case alongX:
			l.rank = at.y
		}
	}
	return lines
}

// lineOfLoad is the line along which an action acts. It has no rank where no joint has that coordinate.
func (p *places) lineOfLoad(x *Action) lineOfAction {
	if x.Shape == Turning {
		return lineOfAction{noLine, None}
	}
	switch s := slopeOf(&x.Along); s {
	case alongY:
		return lineOfAction{s, rankIn(p.xs, x.At.X)}
	case alongX:
		return lineOfAction{s, rankIn(p.ys, x.At.Y)}
	}
	return lineOfAction{oblique, None}
}
