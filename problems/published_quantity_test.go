package problems

import (
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// publishedQuantity is the engine's value of a quantity as the published cases name it.
func publishedQuantity(t *testing.T, s *statics.Solution, id, what string) exact.Num {
	t.Helper()
	kind, rest, _ := strings.Cut(strings.TrimPrefix(what, "|"), ".")
	switch kind {
	case "R":
		joint, component, _ := strings.Cut(rest, ".")
		return reactionAt(t, s, joint, component)
	case "P":
		words := strings.Split(rest, ".") // C, on, BD, x
		return pinForce(t, s, words[0], jointsOf(id, words[2]), words[3])
	case "N", "V", "M":
		return sectionForce(t, s, kind, rest)
	case "x0":
		return zeroShear(t, s, rest).At
	case "Mx":
		return zeroShear(t, s, rest).M
	}
	if what == "x.zero moment right of B, m" {
		return zeroMoment(t, s, "B-C")
	}
	t.Fatalf("%s is no known quantity", what)
	return exact.Num{}
}

// component is that part of a force which a letter asks for: x, y, its size along its own line (n), or a couple (m).
func component(t *testing.T, s *statics.Solution, force int, letter string) exact.Num {
	t.Helper()
	f, value := s.Forces[force], s.Values[force]
	switch {
	case f.Couple != (letter == "m"):
		return exact.Num{}
	case f.Couple, letter == "n":
		return value
	}
	share := f.Along.X
	if letter == "y" {
		share = f.Along.Y
	}
	share, err := share.Quo(f.Along.Length())
	if err != nil {
		t.Fatal(err)
	}
	return value.Mul(share)
}

// reactionAt is a component of the reaction at a joint.
func reactionAt(t *testing.T, s *statics.Solution, joint, letter string) exact.Num {
	t.Helper()
	var total exact.Num
	found := false
	for i, f := range s.Forces {
		if f.Kind == statics.Reaction && s.Frame.Joints[f.Joint].Name == joint {
			found = true
			total = total.Add(component(t, s, i, letter))
		}
	}
	if !found {
		t.Fatalf("no reaction at %s", joint)
	}
	return total
}

// pinForce is a component of what the pin at a joint does to a part, which is named by joints of its own in any case.
func pinForce(t *testing.T, s *statics.Solution, joint, part, letter string) exact.Num {
	t.Helper()
	body := partWith(t, s, joint+part)
	var total exact.Num
	found := false
	for i, f := range s.Forces {
		if f.Kind == statics.Reaction || s.Frame.Joints[f.Joint].Name != joint || f.On != body && f.By != body {
			continue
		}
		found = true
		x := component(t, s, i, letter)
		if f.On != body {
			x = x.Neg()
		}
		total = total.Add(x)
	}
	if !found {
		t.Fatalf("no force of pin %s on %s", joint, part)
	}
	return total
}

// jointsOf is what a part is called by its joints: as it stands, but where a source names its parts by letters of their own.
func jointsOf(id, part string) string {
	if id == "TH01" && part == "K" {
		return "ABC" // the mast with its brace
	}
	return part
}

// partWith is the one part that has all the joints, each a letter in any case.
func partWith(t *testing.T, s *statics.Solution, joints string) int {
	t.Helper()
	var fit []int
	for p, part := range s.Parts {
		all := true
		for _, j := range strings.ToUpper(joints) {
			all = all && slices.ContainsFunc(part.Joints, func(i int) bool { return s.Frame.Joints[i].Name == string(j) })
		}
		if all {
			fit = append(fit, p)
		}
	}
	if len(fit) != 1 {
		t.Fatalf("%d parts have the joints %s", len(fit), joints)
	}
	return fit[0]
}

// diagramOf is the diagram of the member that runs from A to B, for A-B.
func diagramOf(t *testing.T, s *statics.Solution, name string) statics.Diagram {
	t.Helper()
	from, to, _ := strings.Cut(name, "-")
	for _, d := range s.Diagrams {
		m := s.Frame.Members[d.Member]
		if s.Frame.Joints[m.From].Name == from && s.Frame.Joints[m.To].Name == to && !d.Withheld {
			return d
		}
	}
	t.Fatalf("no diagram of a member from %s to %s", from, to)
	return statics.Diagram{}
}

// sectionForce is N, V or M at a place: A-B@0, A-B@L, A-B@3.
func sectionForce(t *testing.T, s *statics.Solution, letter, place string) exact.Num {
	t.Helper()
	name, at, _ := strings.Cut(place, "@")
	d := diagramOf(t, s, name)
	x, side := exact.Num{}, statics.After
	switch at {
	case "0":
	case "L":
		x, side = d.Length, statics.Before
	default:
		x, side = exact.MustParse(at), statics.Both
	}
	section, ok := d.Section(x, side)
	if !ok {
		t.Fatalf("no section %s", place)
	}
	return map[string]exact.Num{"N": section.N, "V": section.V, "M": section.M}[letter]
}

// zeroShear is the one place inside a member where the shear is nought.
func zeroShear(t *testing.T, s *statics.Solution, member string) statics.Station {
	t.Helper()
	var found []statics.Station
	for _, at := range diagramOf(t, s, member).Stations() {
		if at.Extreme && at.Found {
			found = append(found, at)
		}
	}
	if len(found) != 1 {
		t.Fatalf("the shear is nought at %d places of %s", len(found), member)
	}
	return found[0]
}

// zeroMoment is the one place inside a member, by its distance from the start, where the moment is nought.
func zeroMoment(t *testing.T, s *statics.Solution, member string) exact.Num {
	t.Helper()
	var found []exact.Num
	for _, p := range diagramOf(t, s, member).Stretches {
		for _, root := range p.M.Roots(p.From, p.Until) {
			found = append(found, root.X)
		}
	}
	if len(found) != 1 {
		t.Fatalf("the moment is nought at %d places of %s", len(found), member)
	}
	return found[0]
}
