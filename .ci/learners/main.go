// Command learners lets simulated learners practise for a month, ten minutes a day, on what four ways of choosing offer them: portions of short
// pieces, the first whole problem that is offered, the library in its order, and problems at random. It tells how many skills each learner
// truly knows at the end, how many steps that took, and how often a skill that the program takes for mastered is known.
//
// Learners are of several kinds (-kind). One of the own kind knows a skill or does not. At a step each skill of it is used: one that is known goes
// wrong now and then, one that is not comes right now and then, and is learned at some steps, more often when it is the only one that is new. What is known is forgotten with time, the
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
	"time"

	"unpin/problems"
	"unpin/tutor"
	"unpin/tutor/record"
)

// A way chooses what comes next.
type way struct {
	name string
	next func(records []record.Record, now time.Time, done int, r *rand.Rand) []tutor.Offer
}

func main() {
	n, days, seed := flag.Int("learners", 200, "how many"), flag.Int("days", 30, "how long"), flag.Uint64("seed", 1, "of the learners")
	kind := flag.String("kind", "own", "of learners: own, power, another, perfect or nothing")
	only := flag.String("only", "", "one way alone, by its name")
	tell := flag.Bool("stuck", false, "tell which skills are stuck at the end, how their steps came out, how likely they are recalled, and for how many days they were so")
	tellClaims := flag.Bool("claimed", false, "tell of what is taken for mastered how much is known: by days, by steps, by skill")
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
		{"portions", func(records []record.Record, now time.Time, _ int, _ *rand.Rand) []tutor.Offer {
			return tutor.Portion(records, now, library)
		}},
		{"whole problems", func(records []record.Record, now time.Time, _ int, _ *rand.Rand) []tutor.Offer {
			return tutor.Today(records, now, library)[:1]
		}},
		{"in order", func(_ []record.Record, _ time.Time, done int, _ *rand.Rand) []tutor.Offer {
			return []tutor.Offer{{Problem: library[done%len(library)]}}
		}},
		{"at random", func(_ []record.Record, _ time.Time, _ int, r *rand.Rand) []tutor.Offer {
			return []tutor.Offer{{Problem: library[r.IntN(len(library))]}}
		}},
	}
	fmt.Println("| way | truly known at the end | recalled if all were asked | steps | minutes | taken for mastered | in 100 minutes | of these known | known, not taken for mastered | stuck at the end | longest stuck, days | days without help |")
	fmt.Println("| --- | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |")
	for _, w := range ways {
		if *only != "" && *only != w.name {
			continue
		}
		t := tally{which: map[string][]ending{}}
		for i := range *n {
			r := rand.New(rand.NewPCG(*seed*1_000_003+uint64(i), 17))
			p, _ := newPupil(*kind, r) // the kind is one, see above
			t.add(month(p, r, w, all, *days))
		}
		k := float64(*n)
		fmt.Printf("| %s | %.1f | %.1f | %.0f | %.0f | %.1f | %.2f | %.1f %% | %.1f | %.2f | %d | %d |\n", w.name, float64(t.known)/k, t.recalled/k, float64(t.steps)/k, t.minutes/k,
			float64(t.mastered)/k, 100*float64(t.mastered)/t.minutes, 100*float64(t.trulyMastered)/math.Max(1, float64(t.mastered)), float64(t.missedMastery)/k,
			float64(t.stuck)/k, t.longest, t.away)
		if *tell {
			t.tellStuck()
		}
		if *tellClaims {
			t.tellClaims()
		}
	}
}
