package marking

import (
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// A Fit is how much of a paper is right as it stands.
type Fit struct{ Right, Of int }

// Hardly reports whether hardly a value of a paper is right: of several less than a third.
func (f Fit) Hardly() bool { return f.Of >= fewest && 3*f.Right < f.Of }

// Mostly reports whether most of a paper is right.
func (f Fit) Mostly() bool { return f.Of >= fewest && 2*f.Right > f.Of }

// fewest is how many values must be given before they say anything.
const fewest = 3

// Fits counts the values of a paper that are right, in whichever sense: it tells whether the paper is of these numbers at all. What is
// zero says nothing, for it is so whatever the numbers; a place that is not on the frame says that the paper is of others.
func (p *Paper) Fits(m *Marker) Fit {
	r := m.read(p)
	f := Fit{Of: len(r.unread)}
	for i, g := range r.given {
		if g != nil {
			f.take(g.typed, m.Items[i].Value)
		}
	}
	for _, x := range r.extra {
		if !x.shape {
			f.take(x.typed, x.item.Value)
		}
	}
	return f
}

// take counts a value.
func (f *Fit) take(typed judging.Typed, truth exact.Num) {
	if truth.IsZero() {
		return
	}
	f.Of++
	if typed.Means(truth) || negated(typed).Means(truth) {
		f.Right++
	}
}
