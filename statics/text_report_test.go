package statics

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
)

// report is all that is found about a frame, in lines for a person to read.
func report(s *Solution) string {
	var b strings.Builder
	c := s.Count
	fmt.Fprintf(&b, "count: %d unknowns, %d sums, rank %d, %d inner: %s\n", c.Unknowns, c.Sums, c.Rank, c.Inner, c.Determinacy())
	fmt.Fprintf(&b, "bodies: %s\n", bodyNames(s.Assembly, s.Whole()))
	if s.Values == nil {
		return b.String()
	}
	b.WriteString("plan:\n")
	for i, step := range s.Plan {
		b.WriteString(stepLines(s, i+1, step))
	}
	b.WriteString("forces:\n")
	for i, f := range s.Forces {
		fmt.Fprintf(&b, "  %s = %s on %s\n", f.Name, s.Values[i], s.BodyName(f.On))
	}
	b.WriteString("members:\n")
	for _, d := range s.Diagrams {
		b.WriteString(diagramLines(s, d))
	}
	return b.String()
}

func bodyNames(a *Assembly, b FreeBody) string {
	var names []string
	for _, i := range b {
		names = append(names, a.BodyName(i))
	}
	return strings.Join(names, ", ")
}

// choices are the reasons of a plan's steps in a few words.
var choices = map[Choice]string{
	StayOnBody: "same body", FewestUnknowns: "fewest left", WholeFrame: "the whole", SeveralParts: "several parts",
	SolvedTogether: "together", KeptRelation: "relation", RelationUsed: "relation used", ClosingCheck: "check",
	SplitForce: "force split",
}

// knownBefore is which forces the steps give.
func knownBefore(steps []Step, forces int) []bool {
	known := make([]bool, forces)
	for _, step := range steps {
		for _, i := range step.Gives {
			known[i] = true
		}
	}
	return known
}

func stepLines(s *Solution, n int, step Step) string {
	var b strings.Builder
	for i, sum := range step.Sums {
		number := "  "
		if i == 0 {
			number = fmt.Sprintf("%2d", n)
		}
		gives := ""
		if i == len(step.Sums)-1 {
			for _, f := range step.Gives {
				gives += " -> " + s.Forces[f].Name
			}
		}
		fmt.Fprintf(&b, "  %s %s: %s%s   (%s, %d left)\n", number, bodyNames(s.Assembly, sum.Body), sumName(s.Assembly, sum), gives, choices[step.Why], step.Left)
		fmt.Fprintf(&b, "       %s\n", termsText(s.Assembly, sum))
	}
	if w := s.Split(&step, knownBefore(s.Plan[:n-1], len(s.Forces))); w != nil {
		b.WriteString(splitLines(w))
	}
	return b.String()
}

// splitLines are the expert's way round, under its step.
func splitLines(s *Split) string {
	var b strings.Builder
	along := s.Forces[s.Along]
	fmt.Fprintf(&b, "     or with %s along (%s, %s) and %s upward:\n", along.Name, along.Along.X, along.Along.Y, s.Forces[s.Upward].Name)
	for _, step := range s.Steps {
		i := step.Gives[0]
		fmt.Fprintf(&b, "       %s: %s -> %s = %s\n", bodyNames(s.Assembly, step.Sums[0].Body), sumName(s.Assembly, step.Sums[0]), s.Forces[i].Name, s.Values[i])
		fmt.Fprintf(&b, "         %s\n", termsText(s.Assembly, step.Sums[0]))
	}
	return b.String()
}

// sumName is ΣFx, ΣF along (3, 4), ΣM about C, ΣM about (8, 59/3).
func sumName(a *Assembly, s Sum) string {
	switch {
	case s.Moment && s.Centre != None:
		return "ΣM about " + a.Frame.Joints[s.Centre].Name
	case s.Moment:
		return fmt.Sprintf("ΣM about (%s, %s)", s.About.X, s.About.Y)
	case s.Along.Y.IsZero():
		return "ΣFx"
	case s.Along.X.IsZero():
		return "ΣFy"
	}
	return fmt.Sprintf("ΣF along (%s, %s)", s.Along.X, s.Along.Y)
}

// termsText is +Cx·3 −(load)·4 and then what is absent.
func termsText(a *Assembly, s Sum) string {
	var counts, absent []string
	for _, t := range s.Terms() {
		name := ""
		if t.Force != None {
			name = a.Forces[t.Force].Name
		} else {
			name = fmt.Sprintf("load%d", a.Actions[t.Action].Load+1)
		}
		if t.Why != Counts {
			absent = append(absent, name)
			continue
		}
		sign := map[int]string{1: "+", -1: "-"}[t.Sign]
		what := map[Component]string{Horizontal: "h", Vertical: "v"}[t.What]
		switch {
		case t.Force == None:
			name = fmt.Sprintf("%s%s[%s]", name, what, t.Size)
		case !t.Size.Equal(exact.Int(1)):
			name = fmt.Sprintf("%s%s·%s", name, what, t.Size)
		}
		if s.Moment && t.What != TurnOnly {
			name += "·" + t.Arm.String()
		}
		counts = append(counts, sign+name)
	}
	line := strings.Join(counts, " ")
	if len(absent) > 0 {
		line += "   | absent: " + strings.Join(absent, " ")
	}
	return line
}

func diagramLines(s *Solution, d Diagram) string {
	var b strings.Builder
	name := s.Frame.Members[d.Member].Name
	if d.Withheld {
		return fmt.Sprintf("  %s: withheld, on a ring\n", name)
	}
	for _, p := range d.Stretches {
		fmt.Fprintf(&b, "  %s %s..%s: N = %s, V = %s, M = %s\n", name, p.From, p.Until, polyText(p.N), polyText(p.V), polyText(p.M))
	}
	for _, st := range d.Stations() {
		if st.Found || st.Extreme {
			mark := ""
			if st.Extreme {
				mark = ", extreme"
			}
			fmt.Fprintf(&b, "    at %s: V = %s, M = %s%s\n", numText(st.At), numText(st.V), numText(st.M), mark)
		}
	}
	return b.String()
}

func numText(x exact.Num) string {
	if x.Inexact() {
		return "about " + x.Decimal(20)
	}
	return x.String()
}

// polyText is a + b x + c x^2, with each coefficient in brackets if it is a sum.
func polyText(p exact.Poly) string {
	var terms []string
	for i, k := range p {
		if k.IsZero() && len(p) > 1 {
			continue
		}
		c := k.String()
		if i > 0 {
			if strings.Contains(c, " ") {
				c = "(" + c + ")"
			}
			c += " x"
		}
		if i > 1 {
			c += fmt.Sprintf("^%d", i)
		}
		terms = append(terms, c)
	}
	return strings.ReplaceAll(strings.Join(terms, " + "), "+ -", "- ")
}
