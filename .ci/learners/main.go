// Command learners lets simulated learners practise for a month, ten minutes a day, on what four ways of choosing offer them: what
// tutor.Today offers, portions of short pieces, the library in its order, and problems at random. It tells how many skills each learner
// truly knows at the end, how many steps that took, and how often a skill that the program takes for mastered is known.
//
// Learners are of several kinds (-kind). One of the own kind knows a skill or does not. At a step each skill of it is used: one that is known goes wrong now and then, one that is not comes
// right now and then, and is learned at some steps, more often when it is the only one that is new. What is known is forgotten with time, the
// more slowly the more often it was recalled after a day or more: by halves, or by a power of time with -kind power. Those of -kind another are
// built from what is published on memory and skill (see mind), and perfect and nothing are the ends of the scale.
//
// A skill is truly known if it would be recalled with a chance of 0.8 or more a day after the last sitting, whatever the kind.
//
//	go run ./.ci/learners -learners 200 -days 30 -seed 1 -kind another
package main

import (
	"flag"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A learner is one of the simulated of the own kind, with what it knows.
type learner struct {
	r        *rand.Rand
	learns   float64 // chance to learn at a step
	slips    float64 // to go wrong though known
	guesses  float64 // to come right though not known
	lasts    float64 // days after which a half of what was learned today is forgotten
	power    bool    // forgets by a power of time and not exponentially
	known    map[string]bool
	last     map[string]int // day of the last use
	recalled map[string]int // times it was recalled after a day or more
}

func newLearner(r *rand.Rand, power bool) *learner {
	return &learner{r: r, learns: 0.12 + 0.25*r.Float64(), slips: 0.03 + 0.07*r.Float64(), guesses: 0.02 + 0.05*r.Float64(), lasts: 3 + 6*r.Float64(),
		power: power, known: map[string]bool{}, last: map[string]int{}, recalled: map[string]int{}}
}

// recalls draws whether what was known is known still, a day or more after it was used.
func (l *learner) recalls(skill string, day int) bool {
	return day <= l.last[skill] || l.r.Float64() < l.recall(skill, day)
}

// recall is the chance of that, and zero for what was not known.
func (l *learner) recall(skill string, day int) float64 {
	gap := math.Max(0, float64(day-l.last[skill]))
	half := l.lasts * math.Pow(2, float64(l.recalled[skill]))
	switch {
	case !l.known[skill]:
		return 0
	case l.power:
		return math.Pow(1+gap/half, -1)
	}
	return math.Pow(0.5, gap/half)
}

// step does one step of a lesson, and tells what went wrong.
func (l *learner) step(skills []string, day int) (missed []string) {
	news := 0
	for _, s := range skills {
		if l.known[s] && !l.recalls(s, day) {
			l.known[s], l.recalled[s] = false, max(0, l.recalled[s]-1)
		} else if l.known[s] && day > l.last[s] {
			l.recalled[s]++
		}
		if !l.known[s] {
			news++
		}
	}
	for _, s := range skills {
		right := l.r.Float64() < l.guesses
		if l.known[s] {
			right = l.r.Float64() >= l.slips
		} else if l.r.Float64() < l.learns/math.Sqrt(float64(news)) {
			l.known[s] = true
		}
		if !right {
			missed = append(missed, s)
		}
		l.last[s] = day
	}
	return missed
}

// A course is a problem as its steps ask for skills.
type course struct {
	problem *problems.Problem
	steps   [][]string
}

func courses() map[string]course {
	all := map[string]course{}
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		s, err := statics.Solve(p.Frame)
		if err != nil {
			panic(err)
		}
		both := problems.Solved{Problem: p, Solution: s}
		c := course{problem: p}
		for _, step := range s.Plan {
			if len(step.Gives) > 0 {
				c.steps = append(c.steps, append(both.StepSkills(step), "solve-with-sense"))
			}
		}
		for _, d := range s.Diagrams {
			if skills := both.MemberSkills(d); skills != nil {
				c.steps = append(c.steps, skills)
			}
		}
		all[name] = c
	}
	return all
}

// stepsADay is about ten minutes.
const stepsADay = 12

// A way chooses the next problem.
type way struct {
	name string
	next func(records []record.Record, now time.Time, done int, r *rand.Rand) string
	// portion, if set, makes up a day's work of pieces in place of whole problems.
	portion func(records []record.Record, now time.Time) []tutor.Offer
}

// piecesOf lists what the steps of a piece ask for: all of a whole problem, the shortest that asks for the skill, the skill of a mistake to
// find; a sketch asks for nothing that is kept.
func piecesOf(o tutor.Offer, c course) [][]string {
	switch o.Form {
	case tutor.WholeProblem:
		return c.steps
	case tutor.FindMistake:
		return [][]string{{o.Skill.Name}}
	case tutor.SketchFirst:
		return nil
	}
	var best []string
	for _, skills := range c.steps {
		if slices.Contains(skills, o.Skill.Name) && (best == nil || len(skills) < len(best)) {
			best = skills
		}
	}
	return [][]string{best}
}

// A tally is what became of learners.
type tally struct {
	known, steps, mastered, trulyMastered, missedMastery, stuck int
	recalled                                                    float64 // sum of the chances of recall
}

func main() {
	n, days, seed := flag.Int("learners", 200, "how many"), flag.Int("days", 30, "how long"), flag.Uint64("seed", 1, "of the learners")
	kind := flag.String("kind", "own", "of learners: own, power, another, perfect or nothing")
	flag.Parse()
	if _, err := newPupil(*kind, rand.New(rand.NewPCG(0, 0))); err != nil {
		fmt.Fprintln(os.Stderr, "learners:", err)
		os.Exit(2)
	}
	all, names := courses(), problems.Names()
	var library []*problems.Problem
	for _, name := range names {
		library = append(library, all[name].problem)
	}
	ways := []way{
		{"today", func(records []record.Record, now time.Time, _ int, _ *rand.Rand) string {
			return tutor.Today(records, now, library)[0].Problem.Name
		}, nil},
		{"portions", nil, func(records []record.Record, now time.Time) []tutor.Offer {
			return tutor.Portion(records, now, library)
		}},
		{"in order", func(_ []record.Record, _ time.Time, done int, _ *rand.Rand) string { return names[done%len(names)] }, nil},
		{"at random", func(_ []record.Record, _ time.Time, _ int, r *rand.Rand) string { return names[r.IntN(len(names))] }, nil},
	}
	fmt.Println("| way | skills truly known at the end | recalled if all were asked | steps | skills taken for mastered | of these known | known and not taken for mastered | stuck |")
	fmt.Println("| --- | --: | --: | --: | --: | --: | --: | --: |")
	for _, w := range ways {
		var t tally
		for i := range *n {
			r := rand.New(rand.NewPCG(*seed*1_000_003+uint64(i), 17))
			p, _ := newPupil(*kind, r) // the kind is one, see above
			t.add(month(p, r, w, all, *days))
		}
		k := float64(*n)
		fmt.Printf("| %s | %.1f | %.1f | %.0f | %.1f | %.1f %% | %.1f | %.2f |\n", w.name, float64(t.known)/k, t.recalled/k, float64(t.steps)/k,
			float64(t.mastered)/k, 100*float64(t.trulyMastered)/math.Max(1, float64(t.mastered)), float64(t.missedMastery)/k, float64(t.stuck)/k)
	}
}

func (t *tally) add(o tally) {
	t.known, t.steps, t.mastered = t.known+o.known, t.steps+o.steps, t.mastered+o.mastered
	t.trulyMastered, t.missedMastery, t.stuck = t.trulyMastered+o.trulyMastered, t.missedMastery+o.missedMastery, t.stuck+o.stuck
	t.recalled += o.recalled
}

// month lets one learner practise, and looks at the end at what is known, a day after the last.
func month(p pupil, r *rand.Rand, w way, all map[string]course, days int) (t tally) {
	var records []record.Record
	start, done := time.Date(2026, 3, 2, 17, 0, 0, 0, time.UTC), 0
	for day := range days {
		now := start.AddDate(0, 0, day)
		work := func(name string, steps [][]string) {
			for _, skills := range steps {
				missed := p.step(skills, day)
				kept := record.Record{At: now, Problem: name, Frame: fmt.Sprint(name, done), Skills: skills, Missed: missed, Outcome: record.StepRight}
				if missed != nil {
					kept.Outcome = record.StepHelped
				}
				records = append(records, kept)
				t.steps++
			}
			done++
		}
		if w.portion != nil {
			for _, o := range w.portion(records, now) {
				work(o.Problem.Name, piecesOf(o, all[o.Problem.Name]))
			}
			continue
		}
		for until := t.steps + stepsADay; t.steps < until; {
			name := w.next(records, now, done, r)
			work(name, all[name].steps)
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
