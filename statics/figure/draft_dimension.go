package figure

import (
	"slices"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// mark1D is a place along one axis to which dimensions are given, with a name for it.
type mark1D struct {
	at   exact.Num
	name string
}

// dimension adds the chains of dimensions along both axes, through these joints and all that is measured.
func (d *draft) dimension(joints []int) {
	for _, j := range joints {
		k := d.f.Joints[j]
		d.across = append(d.across, mark1D{k.At.X, k.Name})
		d.up = append(d.up, mark1D{k.At.Y, k.Name})
	}
	d.chain(d.across, false)
	d.chain(d.up, true)
}

// chain adds the dimensions between neighbouring marks.
func (d *draft) chain(marks []mark1D, vertical bool) {
	slices.SortStableFunc(marks, func(a, b mark1D) int { return a.at.Cmp(b.at) })
	for i := 1; i < len(marks); i++ {
		a, b := marks[i-1], marks[i]
		if a.at.Equal(b.at) {
			marks[i].name = better(a.name, b.name)
			continue
		}
		distance := b.at.Sub(a.at)
		text := d.o.given(distance, notation.Length)
		way := " across"
		if vertical {
			way = " up"
		}
		d.Dimensions = append(d.Dimensions, Dimension{
			Vertical: vertical, From: a.at.Float(), To: b.at.Float(),
			Text: text, Short: d.o.Style.Given(distance, notation.Length), Meaning: a.name + " to " + b.name + " " + text + way,
		})
	}
}

// better is the name of a place that has two: that of a joint, which is the shorter one.
func better(a, b string) string {
	if len(a) <= len(b) {
		return a
	}
	return b
}
