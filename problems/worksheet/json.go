package worksheet

import (
	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// JSON is the solution for programs: an object with the fields title, units, count, parts and, where the frame is
// determinate, forces, plan and members. Numbers are text, so that none is rounded on the way.
//
//   - value is a decimal: in full where it ends (within 40 figures), else to 20 significant figures; exact is the number
//     itself, as 20/3 or 5*sqrt(2)/2.
//   - A force's value is along the unit vector of `along`, which itself is unscaled, as it acts on the part or pin `on`; a couple has no along and counts
//     counter-clockwise. A pair of pin forces is given once.
//   - about and along of a sum are decimals where these end, fractions where they do not, else decimals of 34 figures.
//   - A step of the plan has a sum and gives forces; sums solved together stand in its sums; a sum kept for later has
//     relation. A closing check has check, and in catches the numbers of the steps, from 1, in which a mistake shows in it.
//   - The pieces of a member have N, V and M as the coefficients of polynomials in the distance x from its start, lowest
//     power first. A member on a rigid ring of its part has instead of pieces the field withheld, with the reason.
//   - inexact stands beside what rests on an angle outside the exact set, which is carried to 34 figures.
func JSON(p *problems.Problem, s *statics.Solution) []byte {
	fields := headFields(p, s)
	if s.Count.Determinacy() == statics.Determinate {
		fields = append(fields,
			field{"forces", list(1, jsonForces(s))},
			field{"plan", list(1, jsonPlan(s))},
			field{"members", list(1, jsonMembers(s))},
		)
	}
	return []byte(object(0, fields) + "\n")
}

// headFields are what every document for programs begins with.
func headFields(p *problems.Problem, s *statics.Solution) []field {
	return []field{
		{"title", quote(p.Title)},
		{"units", object(1, []field{
			{"force", quote(p.Units.Of(notation.Force))},
			{"length", quote(p.Units.Of(notation.Length))},
		})},
		{"count", object(1, countFields(s.Count))},
		{"parts", list(1, jsonParts(s))},
	}
}

func countFields(c statics.Count) []field {
	fields := []field{
		{"unknowns", number(c.Unknowns)},
		{"sums", number(c.Sums)},
		{"rank", number(c.Rank)},
		{"verdict", quote(c.Determinacy().String())},
		{"degree", number(c.Degree())},
		{"motions", number(c.Motions())},
		{"inner", number(c.Inner)},
	}
	return append(fields, inexact(c.Inexact)...)
}

// inexact is the mark of a value that rests on an angle outside the exact set, or nothing.
func inexact(is bool) []field {
	if is {
		return []field{{"inexact", "true"}}
	}
	return nil
}

func jsonParts(s *statics.Solution) []string {
	var parts []string
	for _, p := range s.Parts {
		var members []string
		for _, m := range p.Members {
			members = append(members, s.Frame.Members[m].Name)
		}
		parts = append(parts, inline(field{"name", quote(p.Name)}, field{"members", texts(members)}))
	}
	return parts
}

func jsonForces(s *statics.Solution) []string {
	forces := make([]string, 0, len(s.Forces))
	for i, f := range s.Forces {
		v := s.Values[i]
		fields := append(make([]field, 0, 8),
			field{"name", quote(f.Name)},
			field{"joint", quote(s.Frame.Joints[f.Joint].Name)},
			field{"on", quote(s.BodyName(f.On))},
		)
		if f.Couple {
			fields = append(fields, field{"couple", "true"})
		} else {
			fields = append(fields, field{"along", place(f.Along.X, f.Along.Y)}, field{"couple", "false"})
		}
		fields = append(fields, field{"value", quote(decimal(v))}, field{"exact", quote(v.String())})
		forces = append(forces, inline(append(fields, inexact(v.Inexact())...)...))
	}
	return forces
}

func jsonPlan(s *statics.Solution) []string {
	steps := make([]string, 0, len(s.Plan))
	for _, step := range s.Plan {
		gives := make([]string, 0, len(step.Gives))
		for _, i := range step.Gives {
			gives = append(gives, s.Forces[i].Name)
		}
		fields := sumFields(s, step.Sums[0])
		if len(step.Sums) > 1 {
			var sums []string
			for _, sum := range step.Sums {
				sums = append(sums, inline(sumFields(s, sum)...))
			}
			fields = []field{{"sums", row(sums)}}
		}
		fields = append(fields, field{"gives", texts(gives)})
		if step.Relation {
			fields = append(fields, field{"relation", "true"})
		}
		if step.Check {
			fields = append(fields, field{"check", "true"}, field{"catches", numbers(step.Catches)})
		}
		steps = append(steps, inline(fields...))
	}
	return steps
}

// numbers are those of steps, from 1.
func numbers(steps []int) string {
	all := make([]string, len(steps))
	for i, n := range steps {
		all[i] = number(n + 1)
	}
	return row(all)
}

// sumFields are the free body of a sum, its kind, and its centre or direction.
func sumFields(s *statics.Solution, sum statics.Sum) []field {
	bodies := make([]string, 0, len(sum.Body))
	for _, b := range sum.Body {
		bodies = append(bodies, s.BodyName(b))
	}
	x, y := sum.Along.X, sum.Along.Y
	kind, where := "force", "along"
	if sum.Moment {
		x, y = sum.About.X, sum.About.Y
		kind, where = "moment", "about"
	}
	fields := append(make([]field, 0, 8), field{"parts", texts(bodies)}, field{"sum", quote(kind)}, field{where, place(x, y)})
	return append(fields, inexact(x.Inexact() || y.Inexact())...)
}

func jsonMembers(s *statics.Solution) []string {
	members := make([]string, 0, len(s.Diagrams))
	for _, d := range s.Diagrams {
		m := s.Frame.Members[d.Member]
		fields := []field{
			{"name", quote(m.Name)},
			{"from", quote(s.Frame.Joints[m.From].Name)},
			{"to", quote(s.Frame.Joints[m.To].Name)},
			{"length", quote(decimal(d.Length))},
		}
		if d.Withheld {
			fields = append(fields, field{"withheld", quote(withheld(s, d.Member))})
		} else {
			fields = append(fields, field{"pieces", list(3, jsonPieces(d))})
		}
		members = append(members, object(2, fields))
	}
	return members
}

// withheld is why N, V and M of a member on a ring are not given.
func withheld(s *statics.Solution, member int) string {
	for _, p := range s.Parts {
		for _, m := range p.Ring {
			if m == member {
				return "it lies on a rigid ring of part " + p.Name + ", in which equilibrium alone does not give N, V and M"
			}
		}
	}
	return "it lies on a rigid ring, in which equilibrium alone does not give N, V and M"
}

func jsonPieces(d statics.Diagram) []string {
	pieces := make([]string, 0, len(d.Stretches))
	for _, p := range d.Stretches {
		fields := append(make([]field, 0, 8), field{"from", quote(decimal(p.From))}, field{"until", quote(decimal(p.Until))})
		rough := p.From.Inexact() || p.Until.Inexact()
		for _, c := range []struct {
			name string
			of   exact.Poly
		}{{"N", p.N}, {"V", p.V}, {"M", p.M}} {
			fields = append(fields, field{c.name, coefficients(c.of)})
			for _, k := range c.of {
				rough = rough || k.Inexact()
			}
		}
		pieces = append(pieces, inline(append(fields, inexact(rough)...)...))
	}
	return pieces
}

// coefficients are those of a polynomial, at least one.
func coefficients(p exact.Poly) string {
	p = p.Trim()
	if len(p) == 0 {
		p = exact.Poly{{}}
	}
	all := make([]string, 0, len(p))
	for _, k := range p {
		all = append(all, decimal(k))
	}
	return texts(all)
}

// Figures of a decimal that does not end: of a value, and of a coordinate.
const (
	valueFigures = 20
	placeFigures = 34
)

func decimal(n exact.Num) string { return n.Decimal(valueFigures) }

// place is a point or direction: decimals where these end, fractions where they do not and are exact.
func place(x, y exact.Num) string { return texts([]string{coordinate(x), coordinate(y)}) }

func coordinate(n exact.Num) string {
	if n.IsRational() && !n.Terminates() && !n.Inexact() {
		return n.String()
	}
	return n.Decimal(placeFigures)
}
