package figure

import (
	"unpin/statics"
)

// middlesOf are the middles of the bodies, and the rectangle around the frame.
func middlesOf(a *statics.Assembly) (middles []Position, all bounds) {
	all = noBounds
	for i := range a.Bodies() {
		r := boundsOf(a, i)
		all = all.with(r)
		middles = append(middles, r.middle())
	}
	return middles, all
}

// boundsOf is the rectangle around a body, in the frame.
func boundsOf(a *statics.Assembly, body int) bounds {
	r := noBounds
	for _, j := range jointsOf(a, body) {
		at := point(a.Frame.Joints[j].At)
		r = r.with(bounds{at, at})
	}
	return r
}

// jointsOf are the joints of a body.
func jointsOf(a *statics.Assembly, body int) []int {
	if a.IsPin(body) {
		return []int{a.Pins[body-len(a.Parts)].Joint}
	}
	return a.Parts[body].Joints
}
