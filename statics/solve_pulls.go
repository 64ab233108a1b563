package statics

import (
	"slices"

	"unpin/statics/exact"
)

// A Bar is a two-force member: a part without loads that is held at two pins only. The forces at its ends are opposite
// and act along the line from pin to pin, also where the part is bent.
type Bar struct {
	Part     int
	From, To int // the joints of its pins, in the part's walking order
}

// Bars lists the two-force members: parts with four unknowns, of which the first two and the last two are the components
// of one force each (S3).
func (a *Assembly) Bars() []Bar {
	var bars []Bar
	for p := range a.Parts {
		on := a.forcesOn[p]
		if len(a.actionsOn[p]) > 0 || len(on) != 4 || !a.ofOneForce(on[:2]) || !a.ofOneForce(on[2:]) {
			continue
		}
		b := Bar{p, a.Forces[on[0]].Joint, a.Forces[on[2]].Joint}
		if slices.Index(a.Parts[p].Joints, b.From) > slices.Index(a.Parts[p].Joints, b.To) {
			b.From, b.To = b.To, b.From
		}
		grounded := a.Forces[on[0]].By == None && a.Forces[on[2]].By == None
		if !grounded && !a.Frame.Joints[b.From].At.Equal(a.Frame.Joints[b.To].At) {
			bars = append(bars, b)
		}
	}
	return bars
}

// WithPulls is the solution in which two-force members are used at once: they are no free bodies, and each passes one
// force, named F_BD, tension positive, on to what it joins. Of two that meet with nothing else between them only the
// first is used so, and none whose length is not exact. It is nil if there is none, or if s is not determinate. Diagrams
// are those of s.
func (s *Solution) WithPulls() *Solution {
	if s.Values == nil {
		return nil
	}
	r := reduction{s: s, barOf: make([]*Bar, s.Bodies()), bodyOf: make([]int, s.Bodies()), parts: make([]pulled, len(s.Forces))}
	if !r.choose(s.Bars()) {
		return nil
	}
	r.bodies()
	for i := range s.Forces {
		r.force(i)
	}
	r.a.index()
	short := &Solution{Assembly: r.a, Values: r.values, Diagrams: s.Diagrams, reduced: &reduced{s, r.parts}}
	gone := 3 * (len(s.Parts) - len(r.a.Parts))
	short.Count = s.Count
	short.Count.Unknowns, short.Count.Sums, short.Count.Rank = s.Count.Unknowns-gone, s.Count.Sums-gone, s.Count.Rank-gone
	short.Plan = r.a.plan(short.Values)
	return short
}

// A reduced solution knows the one from which two-force members were taken out, and what each force there is part of.
type reduced struct {
	full  *Solution
	parts []pulled // of each of its forces
}

// A pulled force is a multiple of one of those that stay: of itself, or as a component of a pull.
type pulled struct {
	force  int
	factor exact.Num
}

// Full is the solution in which two-force members are parts like all others: s itself, or what WithPulls made it from.
func (s *Solution) Full() *Solution {
	if s.reduced == nil {
		return s
	}
	return s.reduced.full
}

// FullValues are the values of the forces of Full that belong to values of those of s, in the senses that WithPulls gave
// them.
func (s *Solution) FullValues(values []exact.Num) []exact.Num {
	if s.reduced == nil {
		return values
	}
	full := make([]exact.Num, len(s.reduced.parts))
	for i, p := range s.reduced.parts {
		full[i] = values[p.force].Mul(p.factor)
	}
	return full
}

// FullForce is the force of s that force i of Full is, or is a component of.
func (s *Solution) FullForce(i int) int {
	if s.reduced == nil {
		return i
	}
	return s.reduced.parts[i].force
}

// A reduction takes two-force members out of an assembly.
type reduction struct {
	s      *Solution
	barOf  []*Bar // of each body, or nil
	bodyOf []int  // of each body its number afterwards, or None
	a      *Assembly
	values []exact.Num // of the forces of a
	parts  []pulled    // of the forces of s
}

// choose takes out the bars, but for one that is held by another taken out before, and reports whether there is any.
func (r *reduction) choose(bars []Bar) bool {
	any := false
	for n := range bars {
		b := &bars[n]
		free := func(i int) bool {
			other := r.s.across(i, b.Part)
			return other == None || r.barOf[other] == nil
		}
		on := r.s.forcesOn[b.Part]
		line := r.s.Frame.Joints[b.From].At.To(r.s.Frame.Joints[b.To].At)
		if free(on[0]) && free(on[2]) && !line.Length().Inexact() {
			r.barOf[b.Part], any = b, true
		}
	}
	return any
}

// bodies makes the assembly without the parts that are bars.
func (r *reduction) bodies() {
	s := r.s
	r.a = &Assembly{Frame: s.Frame, Pins: s.Pins, axes: s.axes, outer: s.outer}
	for b := range r.bodyOf {
		switch {
		case r.barOf[b] != nil:
			r.bodyOf[b] = None
		case s.IsPin(b):
			r.bodyOf[b] = len(r.a.Parts) + b - len(s.Parts)
		default:
			r.bodyOf[b] = len(r.a.Parts)
			r.a.Parts, r.a.trees = append(r.a.Parts, s.Parts[b]), append(r.a.trees, s.trees[b])
		}
	}
	r.a.Actions, r.a.pieces = r.rebodied(s.Actions), r.rebodied(s.pieces)
}

// rebodied are actions with their bodies numbered as they are afterwards.
func (r *reduction) rebodied(actions []Action) []Action {
	actions = slices.Clone(actions)
	for i := range actions {
		actions[i].Body = r.bodyOf[actions[i].Body]
	}
	return actions
}

// force takes over force i, or, if it is the first on a bar, puts the bar's pull in its place.
func (r *reduction) force(i int) {
	f := r.s.Forces[i]
	bar := r.barOf[f.On]
	if bar == nil && f.By != None {
		bar = r.barOf[f.By]
	}
	if bar != nil {
		if on := r.s.forcesOn[bar.Part]; on[0] == i {
			r.pull(bar, on)
		}
		return
	}
	f.On = r.bodyOf[f.On]
	if f.By != None {
		f.By = r.bodyOf[f.By]
	}
	r.parts[i] = pulled{len(r.a.Forces), one}
	r.a.Forces, r.values = append(r.a.Forces, f), append(r.values, r.s.Values[i])
}

// pull adds the force in a bar. It is named as it acts on the body at one end, which it draws toward the other.
func (r *reduction) pull(b *Bar, on []int) {
	joints := r.s.Frame.Joints
	near, far := on[:2], on[2:]
	if r.s.across(near[0], b.Part) == None {
		near, far = far, near
	}
	f := Force{Name: "F_" + joints[b.From].Name + joints[b.To].Name, Kind: MemberPull, By: None}
	f.Joint, f.Far = r.s.Forces[near[0]].Joint, r.s.Forces[far[0]].Joint
	f.Along = joints[f.Joint].At.To(joints[f.Far].At)
	f.On = r.bodyOf[r.s.across(near[0], b.Part)]
	if by := r.s.across(far[0], b.Part); by != None {
		f.By = r.bodyOf[by]
	}
	along, _ := f.Along.unit()
	var whole Vector // on the body at the near end
	for _, i := range near {
		whole = whole.Plus(r.offBar(b, i).Times(r.s.Values[i]))
		r.parts[i] = pulled{len(r.a.Forces), along.Dot(r.offBar(b, i))}
	}
	for _, i := range far {
		r.parts[i] = pulled{len(r.a.Forces), along.Neg().Dot(r.offBar(b, i))}
	}
	r.a.Forces, r.values = append(r.a.Forces, f), append(r.values, whole.Dot(along))
}

// offBar is the direction in which force i acts on the body that the bar draws, not on the bar. Those at one end are
// perpendicular to each other.
func (r *reduction) offBar(b *Bar, i int) Vector {
	u, _ := r.s.Forces[i].Along.unit()
	if r.s.Forces[i].On == b.Part {
		return u.Neg()
	}
	return u
}
