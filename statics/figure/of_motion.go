package figure

import (
	"math"

	"unpin/statics"
)

// OfMotion is the scene of one way in which an unstable frame can move: the frame faded, and dashed where it goes, far more
// than it would at first, with the points about which parts turn.
func OfMotion(a *statics.Assembly, m statics.Motion, o Options) Scene {
	inside := make([]bool, len(a.Frame.Members))
	for i := range inside {
		inside[i] = true
	}
	d := newDraft(&a.Frame, o, inside)
	d.Title = "A motion that nothing prevents"
	for i := range d.Strokes {
		d.Strokes[i].Emphasis = Faded
	}
	for _, c := range a.Frame.Connections {
		d.connection(c)
	}
	for _, s := range a.Frame.Supports {
		d.support(s)
	}
	scale := d.stretchOf(a, m)
	for _, b := range m {
		d.moving(a, b, scale)
	}
	d.names(d.joints())
	d.Legend = []string{"dashed: moved a little; it can also go the other way"}
	return d.Scene
}

// moved is how fast a point goes with a body.
func moved(b statics.BodyMotion, at Position) offset {
	turn, centre := b.Turn.Float(), point(b.Centre)
	if b.Turn.IsZero() {
		return offset{b.Slide.X.Float(), b.Slide.Y.Float()}
	}
	return offset{-turn * (at.Y - centre.Y), turn * (at.X - centre.X)}
}

// motionShare is how far the fastest joint is drawn to go, as a share of the frame's longer side.
const motionShare = 0.16

// stretchOf is the factor by which velocities are drawn.
func (d *draft) stretchOf(a *statics.Assembly, m statics.Motion) float64 {
	_, all := middlesOf(a)
	fastest := 0.0
	for _, b := range m {
		for _, j := range jointsOf(a, b.Body) {
			v := moved(b, d.joint(j))
			fastest = max(fastest, math.Hypot(v.X, v.Y))
		}
	}
	if fastest == 0 {
		return 0
	}
	return motionShare * all.longer() / fastest
}

// moving draws where a body goes, and what it turns about.
func (d *draft) moving(a *statics.Assembly, b statics.BodyMotion, scale float64) {
	if a.IsPin(b.Body) {
		return
	}
	shift := func(at Position) Position {
		v := moved(b, at)
		return Position{at.X + v.X*scale, at.Y + v.Y*scale}
	}
	for _, m := range a.Parts[b.Body].Members {
		from, to := d.ends(m)
		d.Guides = append(d.Guides, Stroke{From: shift(from), To: shift(to), Look: Look{Role: MotionMark}})
	}
	if b.Turn.IsZero() {
		return
	}
	kind := TurnLeft
	if b.Turn.Sign() < 0 {
		kind = TurnRight
	}
	at := point(b.Centre)
	_, all := middlesOf(a)
	if !all.grown(all.longer() / 3).holds(at) {
		return
	}
	d.Symbols = append(d.Symbols,
		Symbol{Kind: CentreSymbol, At: at, Look: Look{Role: CentreMark}},
		Symbol{Kind: kind, At: at, Toward: d.freeSide(at), Text: a.BodyName(b.Body) + " turns", Look: Look{Role: MotionMark}})
}
