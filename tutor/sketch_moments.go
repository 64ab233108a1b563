package tutor

import (
	"fmt"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A momentPlace is a place where a bending moment may be largest: a joint, for all members that end there, or a place along a member.
type momentPlace struct {
	text   string
	size   exact.Num // of the moment there, the largest if it jumps or members differ
	moment exact.Num
	member int
}

// spots lists the places where the moment is to be told, the largest first.
func (k *sketch) spots() []momentPlace {
	var all []momentPlace
	for _, d := range k.about.solution.Diagrams {
		for _, st := range d.Stations() {
			along := k.about.words().Along(d.Member, st.At)
			if !st.At.IsZero() && !st.At.Equal(d.Length) {
				along = "on " + k.about.solution.Frame.Members[d.Member].Name + ", " + along
			}
			s := momentPlace{along, st.M.Abs(), st.M, d.Member}
			at := slices.IndexFunc(all, func(o momentPlace) bool { return o.text == s.text })
			switch {
			case at < 0:
				all = append(all, s)
			case s.size.Cmp(all[at].size) > 0:
				all[at] = s
			}
		}
	}
	slices.SortStableFunc(all, func(a, b momentPlace) int { return b.size.Cmp(a.size) })
	return all
}

// mostSpots is how many places there are to choose from.
const mostSpots = 4

// moments asks where the moment is largest, and at another place which side is stretched.
func (k *sketch) moments() {
	all := k.spots()
	if len(all) < 2 || all[0].size.IsZero() || all[0].size.Equal(all[len(all)-1].size) {
		return
	}
	largest := func(s momentPlace) bool { return s.size.Equal(all[0].size) }
	of := slices.Clone(all[:min(len(all), mostSpots)])
	if !slices.ContainsFunc(of, func(s momentPlace) bool { return !largest(s) }) { // all of these are: one that is not
		of[len(of)-1] = all[len(all)-1]
	}
	k.pick.Shuffle(len(of), func(i, j int) { of[i], of[j] = of[j], of[i] })
	c := choice{says: "Where is the bending moment largest, whatever its sign?"}
	for i, s := range of {
		c.of = append(c.of, s.text)
		if largest(s) {
			c.right = append(c.right, i)
		}
	}
	k.add("largest M", c, func() string {
		return "It is " + k.about.style().WithUnit(all[0].size, notation.Moment) + " " + all[0].text + "."
	})
	for _, s := range all {
		if !largest(s) && !s.size.IsZero() {
			k.side(s)
			return
		}
	}
}

// side asks which side of a member is stretched at a place.
func (k *sketch) side(s momentPlace) {
	w, name := k.about.words(), k.about.solution.Frame.Members[s.member].Name
	where := s.text
	if where[:2] == "at" {
		where += " on " + name
	}
	c := choice{says: fmt.Sprintf("Which side is stretched %s?", where)}
	one := exact.Int(1)
	c.of = []string{w.TensionSide(s.member, one), w.TensionSide(s.member, one.Neg())}
	c.right = []int{map[bool]int{true: 0, false: 1}[s.moment.Sign() > 0]}
	k.add("stretched side", c, func() string {
		return fmt.Sprintf("M is %s %s: it stretches the %s.", k.about.style().WithUnit(s.size, notation.Moment), where, w.Stretched(s.member, s.moment))
	})
}

// shapeNames are the shapes of a moment along a stretch, by the degree of its polynomial; zero comes first.
var shapeNames = []string{"zero", "constant", "straight, and inclined", "curved"}

// shapeOf is the place of a stretch's shape among these.
func shapeOf(p statics.Stretch) int {
	if p.M.Degree() == 0 && p.M.At(p.From).IsZero() {
		return 0
	}
	return min(p.M.Degree(), 2) + 1
}

// shapes asks for the shape of the moment along some stretches, of different shapes where there are.
func (k *sketch) shapes() {
	type stretch struct {
		member int
		statics.Stretch
	}
	var all []stretch
	for _, d := range k.about.solution.Diagrams {
		for _, p := range d.Stretches {
			all = append(all, stretch{d.Member, p})
		}
	}
	k.pick.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	var met []int
	for _, p := range all {
		shape := shapeOf(p.Stretch)
		if slices.Contains(met, shape) || len(met) == mostShapes {
			continue
		}
		met = append(met, shape)
		name := problems.StretchName(k.about.solution, p.member, p.Stretch)
		c := choice{says: fmt.Sprintf("What is M along %s?", name), of: shapeNames, right: []int{shape}}
		k.add("M along "+name, c, func() string {
			return wordsOfShape[shape]
		})
	}
}

// wordsOfShape say why a moment has its shape.
var wordsOfShape = []string{
	"M is zero all along: the shear is zero along this stretch, and the moment at its end is zero.",
	"M is constant: there is no shear along this stretch.",
	"M is straight: no load is distributed across this stretch, so the shear is constant.",
	"M is curved: a load is distributed across this stretch, so the shear changes along it.",
}
