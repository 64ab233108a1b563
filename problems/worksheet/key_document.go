package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
)

// newFullKey is the whole solution of a task.
func newFullKey(t Task, m medium) *document {
	d := newDocument(t.Problem, t.Solution, false)
	d.pictures = m.pictures
	d.solution(Options{})
	return d
}

// newKey is the key to a task: its answers, the checks of the sums, and small diagrams.
func newKey(t Task, m medium) *document {
	d := newDocument(t.Problem, t.Solution, false)
	d.pictures = m.pictures
	d.title(oneLine(d.p.Title))
	if d.Values == nil {
		d.prose("The frame is not determinate.")
		counting{d}.write()
		return d
	}
	k := key{d, answering{d, t.Items}}
	drawing{d}.leaveOut()
	k.forces()
	k.checks()
	k.diagrams()
	k.along()
	return d
}

// A key is the document of the answers to one task.
type key struct {
	*document
	ask answering
}

// forces are the forces that are asked for, as they act.
func (k key) forces() {
	forces := k.ask.forces()
	if len(forces) == 0 {
		return
	}
	k.section("Forces")
	t := table{align: "lrll", head: []string{"force", "value", "exactly", "acts"}}
	for _, a := range forces {
		acts := k.say.Acts(a.item.Force, a.item.Value)
		if a.item.Value.IsZero() {
			acts = "zero"
		}
		t.add(a.name, k.say.Value(a.item.Value, a.item.Dim), k.say.Exactly(a.item.Value, a.item.Dim), acts)
	}
	k.tabulate(0, t)
}

// checks are the sums that check the work.
func (k key) checks() {
	w := newWorking(k.document)
	for _, step := range w.of.Plan {
		if !step.Check {
			continue
		}
		k.because("", "Check: "+w.say.BodyAndSum(step.Sums[0]))
		within := ""
		if k.anyInexact() {
			within = " within the figures carried"
		}
		k.equate("", w.say.Added(step.Sums[0], w.of.Values)+within)
	}
}

// diagrams are N, V and M of the frame, those that are asked for anywhere.
func (k key) diagrams() {
	if len(k.ask.members()) == 0 {
		return
	}
	k.section("N, V and M")
	if k.pictures {
		drawing{k.document}.given()
		k.list[len(k.list)-1].beside = !k.list[len(k.list)-1].picture.IsLevel()
	}
	for q := range statics.BendingMoment + 1 {
		if strings.Contains(k.ask.quantities(), q.Letter()) && !(drawing{k.document}).isZero(figure.InternalForce(q)) {
			drawing{k.document}.quantity(figure.InternalForce(q))
		}
	}
}

// along are the values along the members that are asked for.
func (k key) along() {
	members := k.ask.members()
	if len(members) == 0 {
		return
	}
	k.lead(k.units())
	k.symbolic(mathLetters)
	t := table{align: "llrrrl", head: []string{"member", "x", "N", "V", "M", "tension"}}
	for _, m := range members {
		name := k.Frame.Members[m].Name
		for _, s := range k.ask.sections(m) {
			t.add(append([]string{name}, k.values(m, s)...)...)
			name = ""
		}
	}
	k.tabulate(0, t)
}

// units are those of the values along members.
func (k key) units() string {
	return fmt.Sprintf("x in %s, N and V in %s, M in %s, tension on the side named.", k.st.UnitOf(notation.Length), k.st.UnitOf(notation.Force), k.st.UnitOf(notation.Moment))
}

// values are the answers at one place along a member: the place, N, V, M, and the side that M stretches.
func (k key) values(m int, s section) []string {
	cells := []string{k.ask.placeOf(m, s), "", "", "", ""}
	for q, item := range s.values {
		if item == nil {
			continue
		}
		value := item.Value
		if q == int(statics.ShearForce) {
			value = k.st.Shear.Value(value)
		}
		cells[1+q] = k.say.Cell(value)
	}
	if item := s.values[statics.BendingMoment]; item != nil {
		cells[4] = k.say.TensionSide(m, item.Value)
	}
	return cells
}
