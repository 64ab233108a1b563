package figuretest

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
)

// Cut is the frame taken apart.
func (d *Drawing) Cut(t testing.TB) *statics.Assembly {
	a, err := statics.Cut(d.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// Solution is that of the frame, which must be determinate.
func (d *Drawing) Solution(t testing.TB) *statics.Solution {
	s, err := statics.Solve(d.Frame)
	if err != nil || s.Values == nil {
		t.Fatal(d.Frame.Joints, "the frame is not determinate:", s.Count, err)
	}
	return s
}

// Values are the forces of a frame, by index.
func (d *Drawing) Values(t testing.TB) map[int]exact.Num {
	known := map[int]exact.Num{}
	for i, v := range d.Solution(t).Values {
		known[i] = v
	}
	return known
}

// Diagram is the scene of an internal force.
func (d *Drawing) Diagram(t testing.TB, letter string, o figure.Options) figure.Scene {
	return figure.OfDiagram(d.Solution(t), ForceOf(letter), nil, o)
}

// ForceOf is the internal force of that letter.
func ForceOf(letter string) figure.InternalForce {
	return figure.InternalForce(strings.Index("NVM", letter))
}

// Before are the forces that are known before a step of the plan.
func (d *Drawing) Before(t testing.TB, step int) map[int]exact.Num {
	s, known := d.Solution(t), map[int]exact.Num{}
	for _, earlier := range s.Plan[:step-1] {
		for _, i := range earlier.Gives {
			known[i] = s.Values[i]
		}
	}
	return known
}

// Sum is the scene of the first sum of a step of the plan, with all values known that come out before it.
func (d *Drawing) Sum(t testing.TB, step int, o figure.Options) figure.Scene {
	s := d.Solution(t)
	known := d.Before(t, step)
	o.LitForces = s.Plan[step-1].Gives
	return figure.OfSum(s.Assembly, s.Plan[step-1].Sums[0], known, o)
}

// axes is the scene of empty axes along a member for the quantities of those letters.
func (d *Drawing) axes(t testing.TB, member, letters string, o figure.Options) figure.Scene {
	s := d.Solution(t)
	var qs []figure.InternalForce
	for _, letter := range letters {
		qs = append(qs, ForceOf(string(letter)))
	}
	m := slices.IndexFunc(s.Frame.Members, func(m statics.Member) bool { return m.Name == member })
	return figure.OfAxes(s, []int{m}, qs, o)
}

// Scene is the scene that words ask for: given, whole, solved whole, body BC, solved BC, apart, N, V, M,
// sum 3, kept BC 2.4 after start, outline BC, axes BC NVM.
func (d *Drawing) Scene(t *testing.T, words []string, ascii bool) figure.Scene {
	o := figure.Options{Style: d.Style}
	o.Style.ASCII = ascii
	switch words[0] {
	case "given":
		return figure.OfFrame(&d.Frame, o)
	case "N", "V", "M":
		return d.Diagram(t, words[0], o)
	case "apart":
		return figure.OfParts(d.Cut(t), nil, o)
	case "motion":
		a := d.Cut(t)
		return figure.OfMotion(a, a.Motions()[Atoi(words[1])-1], o)
	case "sum":
		return d.Sum(t, Atoi(words[1]), o)
	case "kept":
		return figure.OfKept(d.Section(t, words[1:]), nil, o)
	case "outline":
		return figure.OfOutline(d.Cut(t), d.Body(t, words[1])[0], o)
	case "axes":
		return d.axes(t, words[1], words[2], o)
	}
	a := d.Cut(t)
	var known map[int]exact.Num
	if words[0] == "solved" {
		known = d.Values(t)
	}
	name := strings.Join(words[1:], " ")
	if name == "" || name == "whole" {
		return figure.OfBody(a, a.Whole(), known, o)
	}
	return figure.OfBody(a, d.Body(t, name), known, o)
}

// Section is the kept piece that words ask for: the member, the distance and the side of the cut, and what is kept; perhaps
// the quantities that are found: BC 2.4 after start, BC 0 after end V M.
func (d *Drawing) Section(t testing.TB, words []string) figure.Section {
	s := d.Solution(t)
	member := slices.IndexFunc(d.Frame.Members, func(m statics.Member) bool { return m.Name == words[0] })
	k := figure.Section{Kept: statics.Kept{Solution: s, Member: member}}
	k.At.At = exact.MustParse(words[1])
	k.At.Side = map[string]statics.Side{"before": statics.Before, "after": statics.After, "at": statics.Both}[words[2]]
	if words[3] == "end" {
		k.Side = statics.ToEnd
	}
	k.At.InternalForces, _ = s.Diagrams[k.Member].Section(k.At.At, k.At.Side)
	for _, w := range words[4:] {
		k.Found = append(k.Found, statics.Quantity(ForceOf(w)))
	}
	return k
}

// Scenes are all scenes of a drawing: as given, whole, and each body, before and after it is solved.
func (d *Drawing) Scenes(t testing.TB, ascii bool) map[string]figure.Scene {
	o := figure.Options{Style: d.Style}
	o.Style.ASCII = ascii
	a := d.Cut(t)
	known := d.Values(t)
	list := map[string]figure.Scene{
		"given":        figure.OfFrame(&d.Frame, o),
		"apart":        figure.OfParts(a, nil, o),
		"solved apart": figure.OfParts(a, known, o),
		"whole":        figure.OfBody(a, a.Whole(), nil, o),
		"solved whole": figure.OfBody(a, a.Whole(), known, o),
	}
	for i := range d.Solution(t).Plan {
		list["sum "+strconv.Itoa(i+1)] = d.Sum(t, i+1, o)
	}
	for _, q := range []string{"N", "V", "M"} {
		list[q] = d.Diagram(t, q, o)
	}
	for i := range a.Bodies() {
		list["body "+a.BodyName(i)] = figure.OfBody(a, statics.FreeBody{i}, nil, o)
		list["solved "+a.BodyName(i)] = figure.OfBody(a, statics.FreeBody{i}, known, o)
	}
	return list
}

// Texts counts the labels of a scene that are not those of dimensions.
func Texts(s figure.Scene) map[string]int {
	n := map[string]int{}
	for _, part := range s.Parts {
		for text, k := range Texts(part) {
			n[text] += k
		}
	}
	for _, x := range s.Symbols {
		n[x.Text]++
	}
	for _, x := range s.Arrows {
		n[x.Text]++
	}
	for _, x := range s.Spreads {
		n[x.FirstText]++
		n[x.MidText]++
		n[x.LastText]++
	}
	for _, x := range s.Notes {
		n[x.Text]++
	}
	for _, line := range s.Legend {
		n[line]++
	}
	for _, c := range s.Curves {
		for _, x := range c.Values {
			n[x.Text]++
		}
	}
	delete(n, "")
	return n
}

// Body is the body of that name.
func (d *Drawing) Body(t testing.TB, name string) statics.FreeBody {
	a := d.Cut(t)
	for i := range a.Bodies() {
		if a.BodyName(i) == name {
			return statics.FreeBody{i}
		}
	}
	t.Fatalf("no body %q", name)
	return nil
}

// Force is the index of the force of that name.
func (d *Drawing) Force(t testing.TB, name string) int {
	for i, f := range d.Cut(t).Forces {
		if f.Name == name {
			return i
		}
	}
	t.Fatalf("no force %q", name)
	return 0
}
