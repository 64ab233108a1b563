package judging

import (
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// An alteration is a frame as a student has it who takes something of it for something else: all that can be taken so,
// one at a time.
type alteration struct {
	structural bool // the wrong kind of frame, not the wrong numbers
	frames     func(f statics.Frame) []statics.Frame
}

var east, north = statics.Vector{X: exact.Int(1)}, statics.Vector{Y: exact.Int(1)}

// weaker lists what a support may be taken for that exerts one component less.
func weaker(s statics.Support) []statics.Support {
	var all []statics.Support
	as := func(kind statics.SupportKind, along statics.Vector) {
		s.Kind, s.Along = kind, along
		all = append(all, s)
	}
	switch s.Kind {
	case statics.Pinned:
		as(statics.Roller, north)
		as(statics.Roller, east)
	case statics.Fixed:
		as(statics.Pinned, statics.Vector{})
		as(statics.Guide, north)
		as(statics.Guide, east)
	case statics.Guide:
		as(statics.Roller, s.Along)
	}
	return all
}

// withSupport is a frame with another support in the place of one.
func withSupport(f statics.Frame, i int, s statics.Support) statics.Frame {
	f.Supports = slices.Clone(f.Supports)
	f.Supports[i] = s
	return f
}

// A hinge is taken for rigid, and lest the frame be indeterminate a support for a weaker one.
func hingeIgnored(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for c := range f.Connections {
		g := f
		g.Connections = slices.Delete(slices.Clone(f.Connections), c, c+1)
		for i, s := range f.Supports {
			for _, w := range weaker(s) {
				all = append(all, withSupport(g, i, w))
			}
		}
	}
	return all
}

// Two supports change places.
func supportsSwapped(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for i, s := range f.Supports {
		for j := i + 1; j < len(f.Supports); j++ {
			t := f.Supports[j]
			if s.Kind != t.Kind {
				s, t := s, t
				s.Kind, s.Along, t.Kind, t.Along = t.Kind, t.Along, s.Kind, s.Along
				all = append(all, withSupport(withSupport(f, i, s), j, t))
			}
		}
	}
	return all
}

// A roller is taken to push across instead of up, or up instead of across.
func rollerTurned(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for i, s := range f.Supports {
		if s.Kind == statics.Roller {
			s.Along = s.Along.Left()
			all = append(all, withSupport(f, i, s))
		}
	}
	return all
}

// A joint is taken to lie elsewhere, by seven or thirteen tenths.
func lengthMisread(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for i := range f.Joints {
		for _, d := range []string{"0.7", "-0.7", "1.3", "-1.3"} {
			for _, v := range []statics.Vector{east, north} {
				g := f
				g.Joints = slices.Clone(f.Joints)
				at := &g.Joints[i].At
				at.X, at.Y = at.X.Add(v.X.Mul(exact.MustParse(d))), at.Y.Add(v.Y.Mul(exact.MustParse(d)))
				all = append(all, g)
			}
		}
	}
	return all
}

// withLoad is a frame with another load in the place of one.
func withLoad(f statics.Frame, i int, l statics.Load) statics.Frame {
	f.Loads = slices.Clone(f.Loads)
	f.Loads[i] = l
	return f
}

// A load is read a third too large.
func sizeMisread(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for i, l := range f.Loads {
		all = append(all, withLoad(f, i, sizes(l, exact.MustParse("1.3"))))
	}
	return all
}

// A load on a member is taken to act seven tenths further on.
func placeMisread(f statics.Frame) []statics.Frame {
	var all []statics.Frame
	for i, l := range f.Loads {
		l.At = l.At.Add(exact.MustParse("0.7"))
		if l.Joint == statics.None && l.Kind != statics.SpreadLoad {
			all = append(all, withLoad(f, i, l))
		}
	}
	return all
}

var alterations = []alteration{
	{true, hingeIgnored},
	{true, supportsSwapped},
	{true, rollerTurned},
	{false, lengthMisread},
	{false, sizeMisread},
	{false, placeMisread},
}

// solved lists the solutions of those frames that are determinate.
func solved(frames []statics.Frame) []*statics.Solution {
	var all []*statics.Solution
	for _, f := range frames {
		if s, err := statics.Solve(f); err == nil && s.Count.Determinacy() == statics.Determinate {
			all = append(all, s)
		}
	}
	return all
}

// answerIn is what a question's answer is in another frame; false where it has no such answer.
func answerIn(s *statics.Solution, q question) (exact.Num, bool) {
	if q.step != statics.None {
		i := slices.IndexFunc(s.Forces, func(f statics.Force) bool { return f.Name == q.Name })
		if i < 0 {
			return exact.Num{}, false
		}
		return s.Values[i], true
	}
	if q.member >= len(s.Diagrams) {
		return exact.Num{}, false
	}
	in, ok := s.Diagrams[q.member].Section(q.station.At, q.station.Side)
	return [...]exact.Num{in.N, in.V, in.M}[q.quantity], ok
}

// storiesOfMistakenFrames measures how often a slip is spoken of where a student solves another frame, without any slip:
// such a value is right for the frame as it was taken. What is said of one wrong length, size or place is no true story.
// A hinge or a support that is taken for another kind lets a reaction go elsewhere, and as the forces of a frame balance
// each other, its values often differ from the true ones by just one force: there a slip fits, true or not. True is that
// the weaker support lacks a component.
func storiesOfMistakenFrames(t *testing.T) []measure {
	misread := measure{what: "Frame solved anew with one length, size or place misread: a slip named or asked about", most: 1}
	named := measure{what: "Frame solved anew with a hinge ignored or a support of another kind: a slip named that was not made", most: 15}
	asked := measure{what: "— asked about", open: true}
	truly := measure{what: "— named truly: a component of the support is missing", open: true}
	var at *sheet
	var frames [][]*statics.Solution
	eachSlippery(t, 0, func(l *sheet, q question) {
		if at != l {
			at, frames = l, alteredFrames(l.Solution.Frame)
		}
		held := l.caseOf(q)
		for n, solutions := range frames {
			for _, d := range diagnosesIn(t, l, q, solutions, held) {
				m := &misread
				if alterations[n].structural {
					m = &named
					asked.of, truly.of = asked.of+1, truly.of+1
				}
				m.of++
				slip := d.Named()
				switch {
				case len(d.Matches) == 0:
				case m == &misread:
					m.count++
				case slip == nil:
					asked.count++
				case slip.ID == "pin-support-one-way" || slip.ID == "end-couple-left-off":
					truly.count++
				default:
					named.count++
				}
			}
		}
	})
	return []measure{misread, named, asked, truly}
}

// alteredFrames are the solutions of a frame under each alteration.
func alteredFrames(f statics.Frame) [][]*statics.Solution {
	var all [][]*statics.Solution
	for _, a := range alterations {
		all = append(all, solved(a.frames(f)))
	}
	return all
}

// diagnosesIn is what is found in the wrong answers that solutions of other frames give to a question, typed with four
// figures.
func diagnosesIn(t *testing.T, l *sheet, q question, solutions []*statics.Solution, held *Case) []slip.Diagnosis {
	var all []slip.Diagnosis
	for _, s := range solutions {
		x, ok := answerIn(s, q)
		if !ok || x.Abs().Cmp(powerOfTen(-9)) < 0 {
			continue
		}
		v := l.read(t, q, x.Figures(4))
		if !held.Verdict(v).Right() {
			all = append(all, held.Diagnosis(v))
		}
	}
	return all
}
