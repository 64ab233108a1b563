package figure

import (
	"unpin/statics"
)

// OfFrame is the scene of a frame as a problem gives it: members, connections, supports, loads, names and dimensions.
func OfFrame(f *statics.Frame, o Options) Scene {
	inside := make([]bool, len(f.Members))
	for i := range inside {
		inside[i] = true
	}
	d := newDraft(f, o, inside)
	d.Title = "The frame as given"
	d.slopes()
	for _, c := range f.Connections {
		d.connection(c)
	}
	for _, s := range f.Supports {
		d.support(s)
	}
	loads := make([]int, len(f.Loads))
	for i := range loads {
		loads[i] = i
	}
	d.loads(loads)
	d.finish()
	d.names(d.joints())
	d.dimension(d.joints())
	return d.Scene
}
