package worksheet

import (
	"strings"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
	"unpin/statics/wording"
)

// InspectJSON is what Inspect says, for programs: an object with the fields title, units, count and parts as in JSON,
// warnings, and either answers, plan, grade, untidy, tidier and hidden of a determinate frame, or refusal of another.
//
//   - answers counts the values of the forces: whole, decimals, fractions, roots, inexact.
//   - plan has the number of steps, as together how many sums are solved together at each step that does so, and as list the
//     steps, each with its text, the forces it gives and the skills it asks for.
//   - grade has what is told (1 to 6), what the file says (0 if nothing) and the reasons.
//   - untidy lists where the numbers break a rule, tidier the numbers that would mend it all if made others, if there are
//     such; hidden has all, the number of mistakes gone through, mistakes, those that
//     the numbers hide, by step, force and slip, and the smallest change that shows most of them, if there is one.
//   - few says why a class would hardly find copies enough, where that is so.
//   - refusal has undetermined, the forces that equilibrium cannot give; motions; and ways, lists of changes each of
//     which would make the frame determinate.
//   - A motion has bodies: groups of parts that turn counter-clockwise at a rate, about a point, or slide along a
//     direction; the rates and slides of one motion belong together. Its cause is too few, parallel, concurrent, hinges
//     in line or badly placed; forces are those that hold what moves.
//   - text is a sentence for people.
func InspectJSON(p *problems.Problem, s *statics.Solution) []byte {
	d := inspection{newDocument(p, s, false)}
	fields := append(headFields(p, s), field{"warnings", texts(p.Warnings)})
	if s.Count.Determinacy() == statics.Determinate {
		fields = append(fields, field{"answers", d.jsonAnswers()}, field{"plan", d.jsonPlanning()}, field{"grade", d.jsonGrade()},
			field{"untidy", d.jsonUntidy()}, field{"tidier", d.jsonTidier()}, field{"hidden", d.jsonHidden()})
		if few := d.fewText(); few != "" {
			fields = append(fields, field{"few", quote(few)})
		}
	} else {
		fields = append(fields, field{"refusal", d.jsonRefusal()})
	}
	return []byte(object(0, fields) + "\n")
}

func (d inspection) jsonAnswers() string {
	t := d.tally()
	fields := []field{{"forces", number(len(d.Values))}}
	for i, kind := range valueKinds {
		fields = append(fields, field{kind.name, number(t.of[i])})
	}
	return object(1, append(fields, field{"denominator", quote(t.denominator.String())}))
}

func (d inspection) jsonPlanning() string {
	var together []string
	for n, step := range d.Plan {
		if len(step.Sums) > 1 {
			together = append(together, inline(field{"step", number(n + 1)}, field{"sums", number(len(step.Sums))}))
		}
	}
	var steps []string
	for _, step := range d.Plan {
		var gives []string
		for _, f := range step.Gives {
			gives = append(gives, d.Forces[f].Name)
		}
		steps = append(steps, inline(field{"text", quote(d.stepText(step))}, field{"gives", texts(gives)}, field{"skills", texts(d.solved().StepSkills(step))}))
	}
	return object(1, []field{{"steps", number(len(d.Plan))}, {"together", row(together)}, {"list", list(2, steps)}})
}

func (d inspection) jsonGrade() string {
	hard := d.solved().Difficulty()
	return inline(field{"told", number(hard.Grade)}, field{"file", number(d.p.Grade)}, field{"reasons", texts(hard.Reasons)})
}

func (d inspection) jsonUntidy() string {
	var all []string
	for _, x := range d.solved().Shortcomings() {
		all = append(all, inline(field{"rule", quote(x.Rule.Name)}, field{"text", quote(x.Detail)}))
	}
	return list(1, all)
}

func (d inspection) jsonTidier() string {
	var all []string
	for _, s := range variant.Tidy(d.solved()) {
		all = append(all, inline(field{"number", quote(s.Name)}, field{"to", quote(s.To)}))
	}
	return row(all)
}

func (d inspection) jsonHidden() string {
	hidden, all := d.hidden()
	var mistakes []string
	for _, h := range hidden {
		for _, s := range h.Slips {
			mistakes = append(mistakes, inline(field{"step", number(h.Step + 1)}, field{"force", quote(d.Forces[h.Force].Name)}, field{"slip", quote(s.ID)}))
		}
	}
	fields := []field{{"all", number(all)}, {"mistakes", list(2, mistakes)}}
	if better, ok := variant.Show(d.solved()); ok {
		fields = append(fields, field{"change", inline(field{"number", quote(better.Name)}, field{"to", quote(better.To)}, field{"shown", number(better.Shown)})})
	}
	return object(1, fields)
}

func (d inspection) jsonRefusal() string {
	r := refusal(d)
	var motions, ways []string
	for _, m := range d.Motions() {
		motions = append(motions, d.jsonMotion(m))
	}
	for _, way := range d.Remedies() {
		var changes []string
		for _, c := range way {
			changes = append(changes, r.jsonChange(c))
		}
		ways = append(ways, row(changes))
	}
	return object(1, []field{
		{"undetermined", d.jsonForceNames(d.Undetermined())},
		{"motions", list(2, motions)},
		{"ways", list(2, ways)},
	})
}

func (d inspection) jsonForceNames(forces []int) string {
	var names []string
	for _, i := range forces {
		names = append(names, d.Forces[i].Name)
	}
	return texts(names)
}

func (d inspection) jsonMotion(m statics.Motion) string {
	r, why := d.Reason(m), refusal(d)
	var bodies []string
	for _, b := range m {
		if d.IsPin(b.Body) {
			continue
		}
		fields := []field{{"part", quote(d.BodyName(b.Body))}}
		if b.Turn.IsZero() {
			fields = append(fields, field{"slide", place(b.Slide.X, b.Slide.Y)})
		} else {
			fields = append(fields, field{"turn", quote(coordinate(b.Turn))}, field{"about", place(b.Centre.X, b.Centre.Y)})
			if j := d.JointAt(b.Centre); j != statics.None {
				fields = append(fields, field{"joint", quote(d.Frame.Joints[j].Name)})
			}
		}
		bodies = append(bodies, inline(fields...))
	}
	return object(3, []field{
		{"bodies", list(4, bodies)},
		{"cause", quote(r.Cause.String())},
		{"critical", map[bool]string{true: "true", false: "false"}[r.Cause != statics.TooFewForces]},
		{"forces", d.jsonForceNames(r.Forces)},
		{"text", quote(wording.Sentence(strings.Join(why.motionTexts(m), "; ")) + " " + why.reasonText(m))},
	})
}
