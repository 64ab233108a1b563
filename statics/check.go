package statics

import "fmt"

// check reports what makes f unfit to be cut.
func (f *Frame) check() error {
	if len(f.Members) == 0 {
		return fmt.Errorf("a frame needs at least one member")
	}
	for _, m := range f.Members {
		if !in(m.From, len(f.Joints)) || !in(m.To, len(f.Joints)) {
			return fmt.Errorf("member %q ends at a joint that does not exist", m.Name)
		}
		if f.Joints[m.From].At.Equal(f.Joints[m.To].At) {
			return fmt.Errorf("member %q has no length", m.Name)
		}
	}
	meeting := f.meeting()
	for _, c := range f.Connections {
		if !in(c.Joint, len(f.Joints)) {
			return fmt.Errorf("a connection is at a joint that does not exist")
		}
		if err := f.checkPieces(c, meeting[c.Joint]); err != nil {
			return err
		}
	}
	if err := f.checkSupports(meeting); err != nil {
		return err
	}
	return f.checkLoads(meeting)
}

func in(i, n int) bool { return i >= 0 && i < n }

// checkPieces reports whether the pieces of a connection share out the members at its joint.
func (f *Frame) checkPieces(c Connection, meeting []int) error {
	name, seen := f.Joints[c.Joint].Name, map[int]bool{}
	for _, piece := range c.Pieces {
		if len(piece) == 0 {
			return fmt.Errorf("a piece at joint %s has no member", name)
		}
		for _, m := range piece {
			if !contains(meeting, m) || seen[m] {
				return fmt.Errorf("the pieces at joint %s do not share out its members", name)
			}
			seen[m] = true
		}
	}
	if len(seen) != len(meeting) || len(c.Pieces) < 2 {
		return fmt.Errorf("the pieces at joint %s do not share out its members", name)
	}
	sliding := c.Kind != Pin
	if sliding && (len(c.Pieces) != 2 || !in(c.Main, 2) || c.Along.IsZero()) {
		return fmt.Errorf("the slot or sleeve at joint %s needs a line and two pieces", name)
	}
	return nil
}

func (f *Frame) checkSupports(meeting [][]int) error {
	for _, s := range f.Supports {
		if !in(s.Joint, len(f.Joints)) || len(meeting[s.Joint]) == 0 {
			return fmt.Errorf("a support is at a joint where no member ends")
		}
		name := f.Joints[s.Joint].Name
		if s.On != None && !contains(meeting[s.Joint], s.On) {
			return fmt.Errorf("the support at %s holds a member that does not end there", name)
		}
		if (s.Kind == Roller || s.Kind == Guide) && s.Along.IsZero() {
			return fmt.Errorf("the support at %s needs a direction", name)
		}
	}
	return nil
}

func (f *Frame) checkLoads(meeting [][]int) error {
	for i, l := range f.Loads {
		switch {
		case l.Joint == None && !in(l.Member, len(f.Members)):
			return fmt.Errorf("load %d is on a member that does not exist", i+1)
		case l.Joint != None && (!in(l.Joint, len(f.Joints)) || len(meeting[l.Joint]) == 0):
			return fmt.Errorf("load %d is at a joint where no member ends", i+1)
		case l.Joint != None && l.Member != None && !contains(meeting[l.Joint], l.Member):
			return fmt.Errorf("load %d is on a member that does not end at its joint", i+1)
		case l.Kind != CoupleLoad && l.Along.IsZero():
			return fmt.Errorf("load %d needs a direction", i+1)
		case l.Kind == SpreadLoad && (l.Joint != None || l.Start.Cmp(l.End) >= 0):
			return fmt.Errorf("load %d needs a stretch of a member", i+1)
		}
	}
	return nil
}
