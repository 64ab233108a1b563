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
				c.steps = append(c.steps, piece{append(both.StepSkills(step), "solve-with-sense"), sumMinutes + termMinutes*float64(terms(step))})
			}
		}
		for _, d := range s.Diagrams {
			if skills := both.MemberSkills(d); skills != nil {
				c.steps = append(c.steps, piece{skills, termMinutes * 3 * float64(len(d.Stations()))})
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

// piecesOf lists what the steps of an offer ask for: all of a whole problem, the one of a piece, the skill of a mistake to find; a sketch asks for
// nothing that is kept.
func piecesOf(o tutor.Offer, c course) []piece {
	switch o.Form {
	case tutor.WholeProblem:
		return c.steps
	case tutor.FindMistake:
		return []piece{{[]string{o.Skill.Name}, findMinutes}}
	case tutor.SketchFirst:
		return []piece{{nil, sketchMinutes}}
	}
	for _, p := range c.steps {
		if slices.Equal(p.skills, o.Skills) {
			return []piece{p}
		}
	}
	panic("no such piece: " + fmt.Sprint(o.Skills))
}
