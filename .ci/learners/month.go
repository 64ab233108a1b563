package main

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"time"

	"unpin/problems"
	"unpin/tutor"
	"unpin/tutor/record"
)

// minutesADay is how long each practises, on average: who takes longer on one day begins nothing on the next.
const minutesADay = 10

// vague is how often a step that goes wrong tells nothing of what was wanting: it was told, or no mistake was found to fit.
const vague = 0.3

// step does one step of a lesson, and tells how it came out.
func step(p pupil, draw *rand.Rand, skills []string, day int, r record.Record) record.Record {
	missed := p.step(skills, day)
	r.Skills, r.Missed, r.Outcome = skills, missed, record.StepRight
	if missed != nil {
		r.Outcome = record.StepHelped
		switch {
		case draw.Float64() < vague:
			r.Missed = nil
		case len(missed) == 1 && draw.Float64() >= vague: // one mistake, mended at once
			r.Right = slices.DeleteFunc(slices.Clone(skills), func(skill string) bool { return skill == missed[0] })
		}
	}
	return r
}

// member does what is asked along a member, place by place, and tells how it came out.
func member(p pupil, places []string, day int, r record.Record) record.Record {
	r.Kind, r.Outcome = record.Diagrams, record.StepRight
	for _, skill := range places {
		at := record.Place{Skill: skill, Outcome: record.StepRight}
		if p.step([]string{skill}, day) != nil {
			at.Outcome, r.Outcome = record.StepHelped, record.StepHelped
		}
		r.Along = append(r.Along, at)
		if !slices.Contains(r.Skills, skill) {
			r.Skills = append(r.Skills, skill)
		}
	}
	return r
}

// toTrust is after how many members that came right the shapes of the last one of a whole problem are asked as well, at the level gradual.
const toTrust = 3

// A tally is what became of learners.
type tally struct {
	known, steps, mastered, trulyMastered, missedMastery, stuck int

	minutes  float64
	recalled float64 // sum of the chances of recall
	away     int     // days on which a skill was stuck and no worked step for one was offered
	longest  int     // days in a row that one skill was stuck
	which    map[string][]ending
	claims   []claim
}

// watch counts how long skills are stuck, and where no worked step is offered for one.
func (t *tally) watch(stuck map[string]int, standings map[string]record.Standing, offers []tutor.Offer) {
	found := false
	for _, skill := range problems.Skills() {
		if standings[skill.Name].Stuck() {
			found = true
			stuck[skill.Name]++ // days on which something was begun
			t.longest = max(t.longest, stuck[skill.Name])
		} else {
			stuck[skill.Name] = 0
		}
	}
	if found && !slices.ContainsFunc(offers, func(o tutor.Offer) bool { return o.Worked }) {
		t.away++
	}
}

func (t *tally) add(o tally) {
	t.known, t.steps, t.mastered = t.known+o.known, t.steps+o.steps, t.mastered+o.mastered
	t.trulyMastered, t.missedMastery, t.stuck = t.trulyMastered+o.trulyMastered, t.missedMastery+o.missedMastery, t.stuck+o.stuck
	for skill, all := range o.which {
		t.which[skill] = append(t.which[skill], all...)
	}
	t.claims = append(t.claims, o.claims...)
	t.recalled, t.minutes, t.away, t.longest = t.recalled+o.recalled, t.minutes+o.minutes, t.away+o.away, max(t.longest, o.longest)
}

// month lets one learner practise, and looks at the end at what is known, a day after the last.
func month(p pupil, r *rand.Rand, w way, all map[string]course, days int) (t tally) {
	t.which = map[string][]ending{}
	var records []record.Record
	start, done, stuck := time.Date(2026, 3, 2, 17, 0, 0, 0, time.UTC), 0, map[string]int{}
	for day := range days {
		now := start.AddDate(0, 0, day)
		work := func(o tutor.Offer) {
			t.minutes += frameMinutes
			if o.Worked {
				t.minutes += workedMinutes
				p.step([]string{o.Skill.Name}, day) // leaves what a step leaves, and tells nothing
			}
			pieces := piecesOf(o, all[o.Problem.Name])
			for i, x := range pieces {
				base := record.Record{At: now, Problem: o.Problem.Name, Frame: fmt.Sprint(o.Problem.Name, done)}
				if x.along[0] != nil {
					shapes := o.Form != tutor.WholeProblem && o.Level >= tutor.Terms ||
						o.Form == tutor.WholeProblem && record.Earned(records, nil)[record.Diagrams] >= toTrust+min(len(pieces)-1-i, toTrust)
					places, minutes := x.places(shapes)
					t.minutes += minutes
					t.steps += len(places)
					records = append(records, member(p, places, day, base))
					continue
				}
				if t.minutes += x.minutes; x.skills == nil {
					continue
				}
				records = append(records, step(p, r, x.skills, day, base))
				t.steps++
			}
			done++
		}
		for first := true; t.minutes < float64(minutesADay*(day+1)); first = false {
			offers := w.next(records, now, done, r)
			if first {
				t.watch(stuck, record.Standings(records), offers)
			}
			for _, o := range offers {
				work(o)
			}
		}
	}
	standings := record.Standings(records)
	for _, skill := range problems.Skills() {
		known := trulyKnows(p, skill.Name, days)
		t.recalled += p.recall(skill.Name, days)
		s := standings[skill.Name]
		switch {
		case s.Stands() && known:
			t.trulyMastered++
		case known:
			t.missedMastery++
		}
		if known {
			t.known++
		}
		if s.Stands() {
			t.mastered++
			t.claims = append(t.claims, claim{skill.Name, s.DaysHeld(), s.Right, p.recall(skill.Name, days)})
		}
		if s.Stuck() {
			t.stuck++
			t.which[skill.Name] = append(t.which[skill.Name], ending{s.Right, s.Of, p.recall(skill.Name, days), stuck[skill.Name]})
		}
	}
	return t
}

// An ending is how a skill that is stuck at the end came to be so.
type ending struct {
	right, of int
	recall    float64
	days      int
}
