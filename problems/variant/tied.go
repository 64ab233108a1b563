package variant

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// ties are what belongs together in a problem by more than the shape of its frame.
type ties struct {
	mirrored bool // the text calls the frame symmetrical, and so it is
	equal    bool // the text speaks of equal lengths, or of a middle
}

var (
	symmetryWords = notation.Pattern(`(?i)\bsymmetr`)
	equalWords    = notation.Pattern(`(?i)\b(equal(ly)?|same) (long|lengths?|spans?|legs?|bays?|halves|arms?|heights?)\b|\bhalf ?way\b|\bmidway\b|\bin the middle\b`)
)

// tiesOf are those of a problem.
func tiesOf(p *problems.Problem) ties {
	text := p.Title + "\n" + p.Text
	return ties{symmetryWords().MatchString(text) && mirrored(&p.Frame), equalWords().MatchString(text)}
}

// keep reports whether what is tied in a frame is so in another that differs in numbers only. A rope runs to the force at its other end,
// which is as large as its tension.
func (t ties) keep(f, g *statics.Frame) bool {
	for i := range f.Loads {
		for k := range f.Loads {
			if f.Loads[i].Kind == statics.RopeLoad && k != i && !sameTie(f, g, i, k) {
				return false
			}
		}
	}
	return (!t.mirrored || mirrored(g)) && (!t.equal || sameEquals(f, g))
}

// sameTie reports whether a load that is as large as the tension of a rope, and lies where the rope runs to, is so and does so in both
// frames.
func sameTie(f, g *statics.Frame, rope, end int) bool {
	pulls := func(f *statics.Frame) bool {
		kind := f.Loads[end].Kind
		return (kind == statics.PointLoad || kind == statics.RopeLoad) && f.Loads[rope].Size.Equal(f.Loads[end].Size.Abs())
	}
	if !pulls(f) {
		return true
	}
	if !pulls(g) {
		return false
	}
	for leg := range 2 {
		if runsTo(f, rope, leg, end) && !runsTo(g, rope, leg, end) {
			return false
		}
	}
	return true
}

// runsTo reports whether one pull of a rope runs to where another load acts.
func runsTo(f *statics.Frame, rope, leg, end int) bool {
	pull := f.Loads[rope].Pulls()[leg]
	for _, from := range []statics.Point{placeOf(f, rope), placeOf(f, rope).Plus(pull.Off)} {
		for _, to := range endsOf(f, end) {
			way := from.To(to)
			if pull.Along.Cross(way).IsZero() && pull.Along.Dot(way).Sign() > 0 {
				return true
			}
		}
	}
	return false
}

// placeOf is where a load at one place acts; of a rope the middle of its wheel.
func placeOf(f *statics.Frame, load int) statics.Point {
	l := f.Loads[load]
	if l.Joint != statics.None {
		return f.Joints[l.Joint].At
	}
	return f.Along(l.Member, l.At)
}

// endsOf are the places where a rope may end at a load: where it acts, and of a wheel the two at its rim.
func endsOf(f *statics.Frame, load int) []statics.Point {
	all := []statics.Point{placeOf(f, load)}
	if f.Loads[load].Kind == statics.RopeLoad {
		for _, p := range f.Loads[load].Pulls() {
			all = append(all, all[0].Plus(p.Off))
		}
	}
	return all
}

// mirrored reports whether the joints of a frame lie alike on both sides of an upright line.
func mirrored(f *statics.Frame) bool {
	low, high := f.Joints[0].At.X, f.Joints[0].At.X
	for _, j := range f.Joints {
		low, high = exact.Min(low, j.At.X), exact.Max(high, j.At.X)
	}
	both := low.Add(high)
	for _, j := range f.Joints {
		image := statics.Point{X: both.Sub(j.At.X), Y: j.At.Y}
		there := false
		for _, k := range f.Joints {
			there = there || k.At.Equal(image)
		}
		if !there {
			return false
		}
	}
	return true
}

// sameEquals reports whether members of equal length are so in both frames, and what stands at the middle of one does.
func sameEquals(f, g *statics.Frame) bool {
	for m := range f.Members {
		for n := range m {
			if f.Length(m).Equal(f.Length(n)) && !g.Length(m).Equal(g.Length(n)) {
				return false
			}
		}
	}
	middle := func(f *statics.Frame, l *statics.Load) bool {
		return l.Kind == statics.PointLoad && l.Joint == statics.None && l.At.Add(l.At).Equal(f.Length(l.Member))
	}
	for i := range f.Loads {
		if middle(f, &f.Loads[i]) && !middle(g, &g.Loads[i]) {
			return false
		}
	}
	return true
}

// sameForm reports whether a problem with other numbers looks like another, and keeps together what belongs together.
func sameForm(own, p *problems.Problem) bool {
	return sameShape(&own.Frame, &p.Frame) && tiesOf(own).keep(&own.Frame, &p.Frame)
}
