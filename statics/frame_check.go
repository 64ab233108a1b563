package statics

import (
	"errors"
	"fmt"
)

// check reports what makes f unfit to be cut; else it lists the members at each joint, in file order.
func (f *Frame) check() (meeting [][]int, err error) {
	if len(f.Members) == 0 {
		return nil, fmt.Errorf("a frame needs at least one member")
	}
	for _, m := range f.Members {
		if !in(m.From, len(f.Joints)) || !in(m.To, len(f.Joints)) {
			return nil, fmt.Errorf("member %q ends at a joint that does not exist", m.Name)
		}
		if f.Joints[m.From].At.Equal(f.Joints[m.To].At) {
			return nil, fmt.Errorf("member %q has no length", m.Name)
		}
	}
	meeting = f.meeting()
	if err := f.checkConnections(meeting); err != nil {
		return nil, err
	}
	if err := f.checkSupports(meeting); err != nil {
		return nil, err
	}
	return meeting, f.checkLoads(meeting)
}

func in(i, n int) bool { return i >= 0 && i < n }

func (f *Frame) checkConnections(meeting [][]int) error {
	taken := make([]bool, len(f.Joints))
	for _, c := range f.Connections {
		if !in(c.Joint, len(f.Joints)) {
			return fmt.Errorf("a connection is at a joint that does not exist")
		}
		if taken[c.Joint] {
			return fmt.Errorf("joint %s has two connections; it can have one", f.Joints[c.Joint].Name)
		}
		taken[c.Joint] = true
		if err := f.checkPieces(c, meeting[c.Joint]); err != nil {
			return err
		}
	}
	return nil
}

// checkPieces reports whether the pieces of a connection share out the members at its joint.
func (f *Frame) checkPieces(c Connection, meeting []int) error {
	name := f.Joints[c.Joint].Name
	seen := make([]int, 0, len(meeting))
	for _, piece := range c.Pieces {
		if len(piece) == 0 {
			return fmt.Errorf("a piece at joint %s has no member", name)
		}
		for _, m := range piece {
			if !contains(meeting, m) || contains(seen, m) {
				return fmt.Errorf("the pieces at joint %s do not share out its members", name)
			}
			seen = append(seen, m)
		}
	}
	if len(seen) != len(meeting) || len(c.Pieces) < 2 {
		return fmt.Errorf("the pieces at joint %s do not share out its members", name)
	}
	if c.Main != None && !in(c.Main, len(c.Pieces)) {
		return fmt.Errorf("the main piece at joint %s does not exist", name)
	}
	if c.Kind != Pin && (len(c.Pieces) != 2 || c.Main == None || c.Along.IsZero()) {
		return fmt.Errorf("the slot or sleeve at joint %s needs a line, and two pieces of which one is free", name)
	}
	return nil
}

func (f *Frame) checkSupports(meeting [][]int) error {
	taken := make([]bool, len(f.Joints))
	for _, s := range f.Supports {
		if !in(s.Joint, len(f.Joints)) || len(meeting[s.Joint]) == 0 {
			return fmt.Errorf("a support is at a joint where no member ends")
		}
		name := f.Joints[s.Joint].Name
		switch {
		case taken[s.Joint]:
			return fmt.Errorf("joint %s has two supports; it can have one", name)
		case s.On != None && !contains(meeting[s.Joint], s.On):
			return fmt.Errorf("the support at %s holds a member that does not end there", name)
		case s.On == None && (s.Kind == Fixed || s.Kind == Guide) && f.allHinged(s.Joint):
			return fmt.Errorf("the support at %s holds against turning, but every member there is hinged; it needs a member to hold", name)
		case (s.Kind == Roller || s.Kind == Guide) && s.Along.IsZero():
			return fmt.Errorf("the support at %s needs a direction", name)
		}
		taken[s.Joint] = true
	}
	return nil
}

func (f *Frame) checkLoads(meeting [][]int) error {
	for i := range f.Loads {
		if err := f.checkLoad(&f.Loads[i], meeting); err != nil {
			return fmt.Errorf("load %d %w", i+1, err)
		}
	}
	return nil
}

func (f *Frame) checkLoad(l *Load, meeting [][]int) error {
	switch {
	case l.Joint == None && !in(l.Member, len(f.Members)):
		return errors.New("is on a member that does not exist")
	case l.Joint != None && (!in(l.Joint, len(f.Joints)) || len(meeting[l.Joint]) == 0):
		return errors.New("is at a joint where no member ends")
	case l.Joint != None && l.Member != None && !contains(meeting[l.Joint], l.Member):
		return errors.New("is on a member that does not end at its joint")
	case l.Kind == CoupleLoad && l.Joint != None && l.Member == None && f.isPin(l.Joint):
		return errors.New("is a couple on a pin, which carries none; it needs a member")
	case l.Kind != CoupleLoad && l.Along.IsZero():
		return errors.New("needs a direction")
	case l.Kind == SpreadLoad && (l.Joint != None || l.Start.Cmp(l.End) >= 0):
		return errors.New("needs a stretch of a member")
	case l.Kind == RopeLoad:
		return l.checkRope()
	case l.Joint == None && !f.reaches(l):
		return errors.New("lies beyond its member")
	}
	return nil
}

// reaches reports whether a load lies on its member. What is not exact may be off in its last place, so it is not held
// to the end of the member.
func (f *Frame) reaches(l *Load) bool {
	first, last := l.At, l.At
	if l.Kind == SpreadLoad {
		first, last = l.Start, l.End
	}
	span := f.Span(l.Member)
	over := last.Square().Sub(span.Dot(span))
	return first.Sign() >= 0 && (over.Sign() <= 0 || over.Inexact())
}
