package figure

import (
	"maps"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// A draft is a scene in the making.
type draft struct {
	Scene
	f          *statics.Frame
	o          Options
	inside     []bool             // members that are drawn
	ending     map[int][]int      // those members, by the joints at which they end
	taken      map[Position][]ray // what stands around a point
	across, up []mark1D           // what is dimensioned along x and along y
	tallest    float64            // the intensity to whose scale spread loads are drawn at least
	later      []func()           // arrows for which only a place beside their member is left
}

// point and vector are places and directions as floats.
func point(p statics.Point) Position { return Position{p.X.Float(), p.Y.Float()} }

func vector(v statics.Vector) Direction { return NewDirection(v.X.Float(), v.Y.Float()) }

// newDraft begins a scene with the members that are inside.
func newDraft(f *statics.Frame, o Options, inside []bool) *draft {
	d := &draft{f: f, o: o, inside: inside, ending: map[int][]int{}, taken: map[Position][]ray{}}
	d.Letters = lettersOf(f, o)
	for m, in := range inside {
		if !in {
			continue
		}
		k := f.Members[m]
		d.ending[k.From], d.ending[k.To] = append(d.ending[k.From], m), append(d.ending[k.To], m)
		a, b := d.ends(m)
		d.Strokes = append(d.Strokes, Stroke{From: a, To: b, Look: Look{Role: MemberLine}})
		d.taken[a] = append(d.taken[a], ray{a.To(b), true})
		d.taken[b] = append(d.taken[b], ray{b.To(a), true})
	}
	return d
}

// lettersOf are the letters in which a problem has its results, P and L, but for those that a joint is called by.
func lettersOf(f *statics.Frame, o Options) string {
	if !o.Style.Units.Letters() {
		return ""
	}
	letters := o.Style.UnitOf(notation.Force) + o.Style.UnitOf(notation.Length)
	for _, j := range f.Joints {
		letters = strings.ReplaceAll(letters, j.Name, "")
	}
	return letters
}

// slopes notes how the members lie that slope, of those that run on in one line the first.
func (d *draft) slopes() {
	n := 0
	for m, in := range d.inside {
		if !in {
			continue
		}
		if !runsOn(d, m) {
			d.Strokes[n].Slope = slopeOf(d.f.Span(m))
		}
		n++
	}
}

// runsOn reports whether a member goes on in the line of an earlier one.
func runsOn(d *draft, m int) bool {
	k := d.f.Members[m]
	for i, in := range d.inside[:m] {
		o := d.f.Members[i]
		meets := o.From == k.From || o.From == k.To || o.To == k.From || o.To == k.To
		if in && meets && d.f.Span(i).Cross(d.f.Span(m)).IsZero() {
			return true
		}
	}
	return false
}

// joint is the place of a joint.
func (d *draft) joint(j int) Position { return point(d.f.Joints[j].At) }

// ends are the places of a member's ends.
func (d *draft) ends(m int) (from, to Position) {
	return d.joint(d.f.Members[m].From), d.joint(d.f.Members[m].To)
}

// names writes the name of each joint of the members inside.
func (d *draft) names(joints []int) {
	for _, j := range joints {
		d.Notes = append(d.Notes, Note{d.joint(j), d.f.Joints[j].Name, Look{Role: NameMark}})
	}
}

// joints lists the joints of the members inside, in order.
func (d *draft) joints() []int {
	return slices.Sorted(maps.Keys(d.ending))
}

// meeting lists the members inside that end at a joint, in order.
func (d *draft) meeting(j int) []int { return d.ending[j] }
