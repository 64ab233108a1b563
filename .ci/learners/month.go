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
		if draw.Float64() < vague {
			r.Missed = nil
		}
	}
	return r
}

// A tally is what became of learners.
type tally struct {
	known, steps, mastered, trulyMastered, missedMastery, stuck int

	minutes  float64
	recalled float64 // sum of the chances of recall
	away     int     // days on which a skill was stuck and no worked step for one was offered
	longest  int     // days in a row that one skill was stuck
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
	t.recalled, t.minutes, t.away, t.longest = t.recalled+o.recalled, t.minutes+o.minutes, t.away+o.away, max(t.longest, o.longest)
}

// month lets one learner practise, and looks at the end at what is known, a day after the last.
func month(p pupil, r *rand.Rand, w way, all map[string]course, days int) (t tally) {
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
			for _, x := range piecesOf(o, all[o.Problem.Name]) {
				if t.minutes += x.minutes; x.skills == nil {
					continue
				}
				records = append(records, step(p, r, x.skills, day, record.Record{At: now, Problem: o.Problem.Name, Frame: fmt.Sprint(o.Problem.Name, done)}))
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
		}
		if s.Stuck() {
			t.stuck++
		}
	}
	return t
}
