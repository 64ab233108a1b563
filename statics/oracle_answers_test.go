package statics

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/exact"
)

// answers are the physical results of a frame, free of names and order: what acts on each part at each joint, and N, V
// and M along each member. Pins that are bodies of their own are left out, since a load on a pin makes it one.
type answers struct {
	acts     map[string]contact
	internal map[string][]InternalForces // of each member at quarters of its length, before and after; nil if withheld
}

// A contact is a force and a couple on a part.
type contact struct {
	force  Vector
	couple exact.Num
}

// answersOf collects the answers of a solved frame.
func answersOf(s *Solution) answers {
	a := answers{acts: map[string]contact{}, internal: map[string][]InternalForces{}}
	for i, f := range s.Forces {
		a.add(s, f, f.On, s.Values[i])
		if f.By != None {
			a.add(s, f, f.By, s.Values[i].Neg())
		}
	}
	for _, d := range s.Diagrams {
		name := s.Frame.Members[d.Member].Name
		a.internal[name] = nil
		for k := 0; k <= 4 && !d.Withheld; k++ {
			x := d.Length.Mul(frac(int64(k), 4))
			for _, side := range []Side{Before, After} {
				if at, ok := d.Section(x, side); ok {
					a.internal[name] = append(a.internal[name], at)
				}
			}
		}
	}
	return a
}

// add notes what a force does to a part.
func (a answers) add(s *Solution, f Force, body int, value exact.Num) {
	if s.IsPin(body) {
		return
	}
	var members []string
	for _, m := range s.Parts[body].Members {
		members = append(members, s.Frame.Members[m].Name)
	}
	slices.Sort(members)
	key := fmt.Sprintf("%s on %s, of the ground %v", s.Frame.Joints[f.Joint].Name, strings.Join(members, "+"), f.By == None)
	c := a.acts[key]
	if f.Couple {
		c.couple = c.couple.Add(value)
	} else {
		c.force = c.force.Plus(f.Along.Times(over(value, f.Along.Length())))
	}
	a.acts[key] = c
}

// same compares with other answers, each of which is changed first.
func (a answers) same(b answers, acts func(contact) contact, inside func([]InternalForces) []InternalForces) error {
	if len(a.acts) != len(b.acts) || len(a.internal) != len(b.internal) {
		return fmt.Errorf("%d contacts and %d members, want %d and %d", len(a.acts), len(a.internal), len(b.acts), len(b.internal))
	}
	for key, c := range b.acts {
		want, got := acts(c), a.acts[key]
		if !got.force.X.Equal(want.force.X) || !got.force.Y.Equal(want.force.Y) || !got.couple.Equal(want.couple) {
			return fmt.Errorf("%s: (%s, %s) and %s, want (%s, %s) and %s", key, got.force.X, got.force.Y, got.couple,
				want.force.X, want.force.Y, want.couple)
		}
	}
	for member, list := range b.internal {
		want, got := inside(slices.Clone(list)), a.internal[member]
		if !slices.EqualFunc(got, want, InternalForces.Equal) {
			return fmt.Errorf("%s: %v, want %v", member, got, want)
		}
	}
	return nil
}

// unchanged, keep and such are what same needs.
func unchanged(c contact) contact { return c }

func keep(list []InternalForces) []InternalForces { return list }

// each changes every internal force in the same way.
func each(change func(InternalForces) InternalForces) func([]InternalForces) []InternalForces {
	return func(list []InternalForces) []InternalForces {
		for i := range list {
			list[i] = change(list[i])
		}
		return list
	}
}
