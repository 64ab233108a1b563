package figure

import (
	"math"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// OfSum is the scene of one sum on its free body: what has no part in it is faded, and for a sum of moments the centre is
// marked, distributed load have their resultants, and the arms are dimensions. Known is as in FreeBody.
func OfSum(a *statics.Assembly, s statics.Sum, known map[int]exact.Num, o Options) Scene {
	o.FadedForces, o.FadedLoads = idleIn(a, s)
	o.FadedPulls = IdlePulls(a, s)
	c := newCutBody(a, s.Body, known, o)
	c.Title = wording.Sentence(wording.Body(a, s.Body) + ", " + wording.New(a, o.Style).SumName(s))
	c.acting()
	if s.Moment {
		c.arms(s)
	}
	c.finish()
	c.names(c.joints())
	c.Names = symbols(a, s.Body)
	c.Legend = []string{wording.New(a, o.Style).SumTitle(s)}
	return c.Scene
}

// idleIn lists the forces and the loads of the frame that act on the body of a sum but add nothing to it.
func idleIn(a *statics.Assembly, s statics.Sum) (forces, loads []int) {
	counts := map[[2]int]bool{}
	keys := func(t statics.Term) (all [][2]int) {
		if t.Force != statics.None {
			return [][2]int{{t.Force, statics.None}}
		}
		for _, l := range a.Actions[t.Action].AllLoads() {
			all = append(all, [2]int{statics.None, l})
		}
		return all
	}
	for _, t := range s.Terms() {
		for _, k := range keys(t) {
			counts[k] = counts[k] || t.Why == statics.Counts
		}
	}
	for _, t := range s.Terms() {
		for _, k := range keys(t) {
			switch {
			case counts[k]:
			case t.Force != statics.None:
				forces = append(forces, t.Force)
			default:
				loads = append(loads, k[1])
			}
		}
	}
	return forces, loads
}

// IdlePulls lists the pulls of ropes that act on the body of a sum but add nothing to it.
func IdlePulls(a *statics.Assembly, s statics.Sum) []Pull {
	var idle []Pull
	for _, t := range s.Terms() {
		if t.Action != statics.None && t.Why != statics.Counts {
			idle = Pulls(idle, a, t.Action)
		}
	}
	for _, t := range s.Terms() { // one component may count
		if t.Action != statics.None && t.Why == statics.Counts {
			counts := Pulls(nil, a, t.Action)
			idle = slices.DeleteFunc(idle, func(p Pull) bool { return slices.Contains(counts, p) })
		}
	}
	return idle
}

// An arm is how far the line of a force passes from the centre, along one axis.
type arm struct {
	vertical bool
	from, to exact.Num // the centre, and the line
}

func (k arm) length() exact.Num { return k.to.Sub(k.from).Abs() }

// arms marks the centre of a sum of moments and dimensions the arms of its terms.
func (c cutBody) arms(s statics.Sum) {
	centre := Symbol{Kind: CentreSymbol, At: point(s.About), Look: Look{Role: CentreMark}}
	if s.Centre == statics.None {
		centre.Text = "centre"
	}
	c.Symbols = append(c.Symbols, centre)
	var list []arm
	for _, t := range s.Terms() {
		if t.Why != statics.Counts || t.What == statics.TurnOnly {
			continue
		}
		if t.Action != statics.None {
			c.resultant(t)
		}
		switch {
		case t.Toward.X.IsZero():
			list = append(list, arm{false, s.About.X, t.At.X})
		case t.Toward.Y.IsZero():
			list = append(list, arm{true, s.About.Y, t.At.Y})
		default:
			c.slantedArm(s, t)
		}
	}
	c.levels(list)
}

// resultant adds the resultant of a distributed load, where it acts.
func (c cutBody) resultant(t statics.Term) {
	x := c.a.Actions[t.Action]
	if x.Shape == statics.AtPoint {
		return
	}
	size, along := x.Size, x.Along
	if size.Sign() < 0 {
		along = along.Neg()
	}
	if n := len(c.Arrows); n > 0 && c.Arrows[n-1].Role == ResultantMark && c.Arrows[n-1].At == point(x.At) {
		return // another component of the same
	}
	at := point(x.At)
	member, _ := c.a.Frame.CentroidOf(x)
	c.onMember(at, member)
	c.arrow(Arrow{At: at, Toward: vector(along), Text: c.o.given(size.Abs(), notation.Force), Look: Look{Role: ResultantMark}}, vector(along), false)
}

// levels dimensions arms that all begin at the centre: the shortest nearest to the figure, each once, and those on either
// side of the centre in one line.
func (c cutBody) levels(list []arm) {
	slices.SortStableFunc(list, func(a, b arm) int { return a.length().Cmp(b.length()) })
	list = slices.CompactFunc(list, func(a, b arm) bool { return a.vertical == b.vertical && a.to.Equal(b.to) })
	used := map[[2]bool]int{}
	for _, k := range list {
		forward := k.to.Cmp(k.from) > 0
		side := [2]bool{k.vertical, forward}
		from, to := k.from, k.to
		if !forward {
			from, to = to, from
		}
		text := c.o.given(k.length(), notation.Length)
		c.Dimensions = append(c.Dimensions, Dimension{
			Vertical: k.vertical, From: from.Float(), To: to.Float(), Level: used[side],
			Text: text, Short: c.o.Style.Given(k.length(), notation.Length), Meaning: "an arm of " + text,
		})
		used[side]++
	}
}

// slantedArm draws the arm of a force that lies along no axis: from the centre perpendicular to its line, and the line from there
// to the force.
func (c cutBody) slantedArm(s statics.Sum, t statics.Term) {
	centre, at, along := point(s.About), point(t.At), vector(t.Toward)
	out := Direction{at.X - centre.X, at.Y - centre.Y}
	reach := out.X*along.X + out.Y*along.Y
	foot := Position{at.X - along.X*reach, at.Y - along.Y*reach}
	look := Look{Role: DimensionMark}
	c.Guides = append(c.Guides, Stroke{From: centre, To: foot, Look: look})
	if math.Abs(reach) > 1e-9 {
		c.Guides = append(c.Guides, Stroke{From: foot, To: at, Look: Look{Role: DimensionMark, Emphasis: Faded}})
	}
	c.Notes = append(c.Notes, Note{Position{(centre.X + foot.X) / 2, (centre.Y + foot.Y) / 2}, c.o.given(t.Arm, notation.Length), look})
}
