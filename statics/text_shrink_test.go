package statics

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

// shrunk takes away from a frame all that can go with the fault still there.
func shrunk(f Frame, fails func(Frame) bool) Frame {
	for again := true; again; {
		again = false
		for _, g := range smaller(f) {
			if _, err := Cut(g); err == nil && fails(g) {
				f, again = g, true
				break
			}
		}
	}
	return f
}

// smaller lists smaller frames, much smaller ones first: one part alone, fixed at a joint; then all but one member, load,
// connection or support.
func smaller(f Frame) []Frame {
	var all []Frame
	if a, err := Cut(f); err == nil && len(a.Parts) > 1 {
		for _, p := range a.Parts {
			for _, j := range p.Joints {
				g := only(f, func(m int) bool { return slices.Contains(p.Members, m) })
				g.Connections, g.Supports = nil, []Support{{Joint: jointNamed(g, f.Joints[j].Name), Kind: Fixed, On: None}}
				all = append(all, g)
			}
		}
	}
	for m := range f.Members {
		all = append(all, only(f, func(n int) bool { return n != m }))
	}
	for i := range f.Loads {
		g := f
		g.Loads = slices.Delete(slices.Clone(f.Loads), i, i+1)
		all = append(all, g)
	}
	for i := range f.Connections {
		g := f
		g.Connections = slices.Delete(slices.Clone(f.Connections), i, i+1)
		all = append(all, g)
	}
	for i := range f.Supports {
		g := f
		g.Supports = slices.Delete(slices.Clone(f.Supports), i, i+1)
		all = append(all, g)
	}
	return all
}

func jointNamed(f Frame, name string) int {
	return slices.IndexFunc(f.Joints, func(j Joint) bool { return j.Name == name })
}

// only is the frame of some members, with what stands on them, and with the joints at their ends.
func only(f Frame, kept func(m int) bool) Frame {
	members, joints := noneFor(len(f.Members)), noneFor(len(f.Joints))
	var g Frame
	for j := range f.Joints {
		ends := func(m int) bool { return kept(m) && (f.Members[m].From == j || f.Members[m].To == j) }
		if slices.ContainsFunc(upTo(len(f.Members)), ends) {
			joints[j] = len(g.Joints)
			g.Joints = append(g.Joints, f.Joints[j])
		}
	}
	for m, x := range f.Members {
		if kept(m) {
			members[m] = len(g.Members)
			g.Members = append(g.Members, Member{x.Name, joints[x.From], joints[x.To]})
		}
	}
	// renumbered changes the numbers of a joint and a member; false if one is gone.
	renumbered := func(joint, member *int) bool {
		for _, x := range []struct {
			number *int
			of     []int
		}{{joint, joints}, {member, members}} {
			if *x.number != None {
				if *x.number = x.of[*x.number]; *x.number == None {
					return false
				}
			}
		}
		return true
	}
	for _, l := range f.Loads {
		if renumbered(&l.Joint, &l.Member) {
			g.Loads = append(g.Loads, l)
		}
	}
	for _, s := range f.Supports {
		if renumbered(&s.Joint, &s.On) {
			g.Supports = append(g.Supports, s)
		}
	}
	for _, c := range f.Connections {
		none := None
		if c = fewer(c, members); renumbered(&c.Joint, &none) && len(c.Pieces) > 1 {
			g.Connections = append(g.Connections, c)
		}
	}
	return g
}

// fewer is a connection with its members renumbered, and without those that are gone.
func fewer(c Connection, members []int) Connection {
	pieces := c.Pieces
	c.Pieces = nil
	main := c.Main
	c.Main = None
	for p, piece := range pieces {
		var left []int
		for _, m := range piece {
			if members[m] != None {
				left = append(left, members[m])
			}
		}
		if len(left) == 0 {
			continue
		}
		if p == main {
			c.Main = len(c.Pieces)
		}
		c.Pieces = append(c.Pieces, left)
	}
	return c
}

// TestShrunk cuts random frames down with the fault that they have a load that grows from nought on a part of two members
// at least: what is left is one part of two members with that load and a support.
func TestShrunk(t *testing.T) {
	fault := func(f Frame) error {
		a, err := Cut(f)
		if err != nil {
			return nil
		}
		for _, x := range a.Actions {
			if x.Shape == RisingRamp && !a.IsPin(x.Body) && len(a.Parts[x.Body].Members) > 1 {
				return errors.New("a triangle")
			}
		}
		return nil
	}
	tried := 0
	for seed := range uint64(100) {
		f := generated(seed)
		if fault(f) == nil {
			continue
		}
		tried++
		small := shrunk(f, func(f Frame) bool { return fault(f) != nil })
		text := write(small)
		if len(small.Members) != 2 || len(small.Joints) != 3 || len(small.Loads) != 1 || len(small.Connections)+len(small.Supports) > 1 {
			t.Fatalf("seed %d: cut down to\n%s", seed, text)
		}
		if again, err := read(text); err != nil || strings.TrimSpace(write(again)) != strings.TrimSpace(text) {
			t.Fatalf("seed %d: the small frame cannot be read: %v\n%s", seed, err, text)
		}
	}
	if tried < 20 {
		t.Errorf("only %d frames tried", tried)
	}
}
