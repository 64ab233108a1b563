package main

import (
	"fmt"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/tutor"
)

// A piece is a step, or the diagrams of one member: the skills that it asks for, and how many minutes it takes.
type piece struct {
	skills  []string
	minutes float64
	along   [2][]string // of a member: the skill of each place, without the shapes of its stretches and with them
}

// places are those of a member at which something is asked, in how many minutes; with the shapes of stretches too.
func (x piece) places(shapes bool) (skills []string, minutes float64) {
	if !shapes {
		return x.along[0], x.minutes
	}
	return x.along[1], x.minutes + 2*termMinutes*float64(len(x.along[1])-len(x.along[0]))
}

// A course is a problem as its steps ask for skills.
type course struct {
	problem *problems.Problem
	steps   []piece
}

// How long things take, in minutes: to read a frame, to write a term or a value along a member, to choose and to solve a sum, to read a worked step,
// to find a mistake, to make a sketch. Judgement, no source.
const (
	frameMinutes, termMinutes, sumMinutes, workedMinutes, findMinutes, sketchMinutes = 0.5, 0.5, 1, 1, 4, 2
)

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
				c.steps = append(c.steps, piece{skills: append(both.StepSkills(step), "solve-with-sense"), minutes: sumMinutes + termMinutes*float64(terms(step))})
			}
		}
		for _, d := range s.Diagrams {
			if !d.Withheld {
				c.steps = append(c.steps, piece{both.MemberSkills(d), termMinutes * 3 * float64(len(d.Stations())),
					[2][]string{tutor.SkillsAlong(both, d, tutor.Values), tutor.SkillsAlong(both, d, tutor.Terms)}})
			}
		}
		all[name] = c
	}
	return all
}

// terms counts the terms of a step's sums.
func terms(step statics.Step) (n int) {
	for _, sum := range step.Sums {
		for _, t := range sum.Terms() {
			if t.Why == statics.Counts {
				n++
			}
		}
	}
	return n
}

// same reports whether two lists name the same skills.
func same(a, b []string) bool {
	for _, s := range a {
		if !slices.Contains(b, s) {
			return false
		}
	}
	for _, s := range b {
		if !slices.Contains(a, s) {
			return false
		}
	}
	return len(a) > 0
}

// piecesOf lists what the steps of an offer ask for: all of a whole problem, the one of a piece, the skill of a mistake to find; a sketch asks for
// nothing that is kept.
func piecesOf(o tutor.Offer, c course) []piece {
	switch o.Form {
	case tutor.WholeProblem:
		return c.steps
	case tutor.FindMistake:
		return []piece{{skills: []string{o.Skill.Name}, minutes: findMinutes}}
	case tutor.SketchFirst:
		return []piece{{minutes: sketchMinutes}}
	}
	for _, p := range c.steps {
		if slices.Equal(p.skills, o.Skills) || same(p.along[0], o.Skills) || same(p.along[1], o.Skills) {
			return []piece{p}
		}
	}
	panic("no such piece: " + fmt.Sprint(o.Skills))
}
