package tutor

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// sketchTask says what is to be done.
const sketchTask = "Before any sum: say what you expect. Each answer is noted; at the end the sums and the diagram show which are right."

// mostReactions is how many reactions a sketch asks for, and mostShapes how many stretches, so that it takes two minutes.
const (
	mostReactions = 4
	mostShapes    = 2
)

// A sketch is what a frame's forces and moments will look like, before any number.
type sketch struct {
	about *matter
	pick  *rand.Rand
	drill *Drill
	tells []func() string // what the sums say to each question
}

// Sketch asks which way the reactions of a problem act, where the bending moment is largest, which side is stretched and where the
// moment is curved, and answers by sums and by the diagram. N chooses what is asked where there is more than can be. It counts for no
// skill: one of three answers is soon guessed.
func Sketch(p *problems.Problem, n uint64) (*Drill, error) {
	m, err := matterOf(p)
	if err != nil {
		return nil, err
	}
	k := &sketch{about: m, pick: rand.New(rand.NewPCG(n, 1))}
	k.drill = &Drill{about: m, form: SketchFirst, task: sketchTask, page: func() []PageLine { return nil }, ending: k.ending, scene: k.scene}
	k.reactions()
	if !slices.ContainsFunc(m.solution.Diagrams, func(d statics.Diagram) bool { return d.Withheld }) {
		k.moments()
		k.shapes()
	}
	return k.drill.begun(), nil
}

// add adds a question; tells is what the sums say to it.
func (k *sketch) add(name string, c choice, tells func() string) {
	q := c.ask(name)
	q.commits = true
	q.told = func() string { return "the end tells." }
	k.drill.asks, k.tells = append(k.drill.asks, q), append(k.tells, tells)
}

// scene is the frame as given, and at the end its bending moments.
func (k *sketch) scene() figure.Scene {
	o := figure.Options{Style: k.about.problem.Style(!k.about.signs)}
	if k.drill.at < len(k.drill.asks) {
		return figure.OfFrame(&k.about.problem.Frame, o)
	}
	return figure.OfDiagram(k.about.solution, figure.BendingMoment, nil, o)
}

// ending tells of each answer whether it is right, and by which sum.
func (k *sketch) ending() []string {
	held := 0
	var all []string
	for i, a := range k.drill.stands {
		says := "not right"
		switch {
		case a.told:
			says = "not answered"
		case a.verdict.Right():
			says = "right"
			held++
		}
		all = append(all, fmt.Sprintf("%s: %s. %s", k.drill.asks[i].name, says, k.tells[i]()))
	}
	return append([]string{fmt.Sprintf("%d of %s right.", held, wording.Counted(len(all), "answer"))}, all...)
}

// reactions asks which way each reaction acts.
func (k *sketch) reactions() {
	asked := 0
	for f, force := range k.about.solution.Forces {
		if force.Kind != statics.Reaction || asked == mostReactions {
			continue
		}
		asked++
		value, one := k.about.solution.Values[f], exact.Int(1)
		c := choice{
			says: fmt.Sprintf("Which way does %s act on %s?", force.Name, k.about.solution.BodyName(force.On)),
			of:   []string{notation.SenseOf(force, one), notation.SenseOf(force, one.Neg()), "it is zero"},
		}
		c.right = []int{map[int]int{1: 0, -1: 1, 0: 2}[value.Sign()]}
		k.add(force.Name, c, func() string { return k.sumOf(f) })
	}
}

// sumOf is the sum that gives a force, with what was known by then, and what comes of it.
func (k *sketch) sumOf(f int) string {
	for i, step := range k.about.solution.Plan {
		if !slices.Contains(step.Gives, f) {
			continue
		}
		found := foundText(k.about, f, k.about.solution.Values[f]) + "."
		if len(step.Sums) > 1 {
			return fmt.Sprintf("%s sums together give %s", wording.Capital(wording.Count(len(step.Sums))), found)
		}
		w := k.about.words()
		sum, numbers := step.Sums[0], w.Numbers(step.Sums[0], k.about.solution.KnownBefore(i))
		if numbers+"." == found { // Ax = 0, and nothing else
			return fmt.Sprintf("%s: %s", wording.Capital(w.BodyAndSum(sum)), found)
		}
		return fmt.Sprintf("%s: %s, so %s", wording.Capital(w.BodyAndSum(sum)), numbers, found)
	}
	return ""
}
