package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A sheet is the document of one task's questions.
type sheet struct {
	*document
	medium medium
	task   Task
	ask    answering
}

// newSheet writes the questions of a task into a document.
func newSheet(t Task, m medium) *document {
	d := newDocument(t.Problem, t.Solution, false)
	d.pictures = m.pictures
	s := sheet{d, m, t, answering{d, t.Items}}
	s.question()
	if d.Values == nil {
		d.prose("The frame is not determinate: its count is all that can be worked out.")
		return d
	}
	s.wanted()
	s.signs()
	s.bodies()
	s.work()
	s.along()
	s.answers()
	return d
}

// question is the problem as it is set.
func (s sheet) question() {
	s.title(oneLine(s.p.Title))
	for text := range strings.SplitSeq(s.p.Text, "\n\n") {
		if line := oneLine(text); line != "" {
			s.tell(line)
		}
	}
	drawing{s.document}.leaveOut()
	if s.pictures && !s.medium.lists {
		drawing{s.document}.given()
		return
	}
	given{s.document}.write()
}

// wanted says what is asked for.
func (s sheet) wanted() {
	s.item("Find", s.ask.asked()+".")
	s.symbolic("NVM")
}

// signs says what conventions the answers keep to.
func (s sheet) signs() {
	texts := []string{s.figures(), s.turns()}
	if len(s.ask.forces()) > 0 {
		texts = append(texts, "An unknown is positive in the sense printed first beside its box, on the part named there, and reversed on the other part of "+wording.APin(&s.Frame)+". "+
			"Give the size and mark the sense, or give the value with its sign.")
	}
	s.item("Signs", strings.Join(texts, " "))
}

// figures says how answers are written.
func (s sheet) figures() string {
	if s.p.Units.Letters() {
		return "Answer in letters: " + s.say.Units() + "."
	}
	return fmt.Sprintf("Give %s figures.", wording.Count(s.st.Figures))
}

// turns says which turn is positive in a sum.
func (s sheet) turns() string {
	if s.st.Moments == notation.ClockwiseMoments {
		return "Moments in a sum are positive clockwise."
	}
	return "Moments in a sum are positive counter-clockwise."
}

// bodies is what is printed of the free bodies: with their unknowns where the sums are printed, else outlines to draw on.
func (s sheet) bodies() {
	switch {
	case s.task.Level <= TermsLevel:
		s.section("Free bodies")
		drawing{s.document}.bodies(false)
		if !s.pictures {
			for b := range s.Bodies() {
				bodies{s.document}.body(b)
			}
		}
	case s.task.Level == PlanLevel:
		s.section("Free bodies")
		s.outlines()
	}
}

// Rooms to work in, in rows of dots: squared paper of 5 mm. How much hand work takes is common practice without a source: about
// 10 mm for a line of numbers, 70 mm for a sketch of a part with its forces.
const (
	valueRoom   = 5  // to put numbers into a printed sum and solve it
	termsRoom   = 5  // to write the sum and solve it
	planRoom    = 9  // to choose, write and solve one
	checkRoom   = 3  // to put numbers into a check
	sketchRoom  = 14 // to sketch a free body
	alongRoom   = 7  // to work out N, V and M along a member
	diagramRoom = 12 // to draw the three along a member
)

// work is room for the sums.
func (s sheet) work() {
	if len(s.ask.forces()) == 0 && len(s.ask.members()) == 0 {
		return
	}
	switch s.task.Level {
	case PlanLevel:
		s.section("Sums")
		s.planned()
	case BlankLevel:
		s.section("Working")
		s.room(s.blankRoom())
	default:
		s.section("Sums")
		s.lead(map[Level]string{
			ValuesLevel: "Every sum is printed. Put in what was found before, and solve it.",
			TermsLevel:  "Write the sign of every term, the force of every load, and every arm; then solve the sum.",
		}[s.task.Level])
		s.printed()
	}
}

// blankRoom is the room for all work of a task.
func (s sheet) blankRoom() int {
	steps := 0
	for _, step := range s.Plan {
		steps += len(step.Gives)
	}
	return steps*planRoom + s.Bodies()*sketchRoom + len(s.ask.members())*(alongRoom+diagramRoom)
}

// planned is an empty step for each sum that the plan has.
func (s sheet) planned() {
	s.lead("Choose free bodies and sums so that each sum has one unknown, where there is such a sum.")
	n := 0
	for _, step := range s.Plan {
		for range step.Gives {
			n++
			s.numbered(fmt.Sprintf("%d.", n), "Free body "+longBlank+"  sum "+longBlank+"  about "+shortBlank)
			s.room(planRoom - 2)
			s.conclude("", "gives "+shortBlank+" = "+valueBlank)
		}
	}
	s.numbered("", "A check by a sum that has not been used: free body "+longBlank+"  sum "+longBlank)
	s.room(checkRoom)
}

// Blanks to write on: for a name or an arm, for a value at the size of handwriting, for words, and for a sign.
const (
	shortBlank = "__________"
	valueBlank = "_______________"
	longBlank  = "________________"
	signBlank  = "___"
)

// printed is the plan with its sums: whole, or without what stands in each term.
func (s sheet) printed() {
	w := newWorking(s.document)
	if short := w.shortcut(); short != nil {
		w = w.with(short)
	}
	for n, step := range w.of.Plan {
		s.step(w, n+1, step)
	}
}

func (s sheet) step(w working, n int, step statics.Step) {
	title := wording.Capital(w.say.BodyAndSum(step.Sums[0]))
	switch {
	case len(step.Sums) > 1:
		title = wording.Capital(wording.Count(len(step.Sums))) + " sums solved together"
	case step.Check:
		title = "Check: " + w.say.BodyAndSum(step.Sums[0])
	}
	s.numbered(fmt.Sprintf("%d.", n), title)
	for k, sum := range step.Sums {
		if len(step.Sums) > 1 {
			s.because(fmt.Sprintf("(%d)", k+1), wording.Capital(w.say.BodyAndSum(sum)))
		}
		s.sum(w, sum)
	}
	switch {
	case step.Relation:
		s.because("", "Two unknowns are left in it: keep it for later.")
	case step.Check:
		s.room(checkRoom)
		s.conclude("", "comes to "+valueBlank+" (it must be 0)")
	default:
		s.room(map[Level]int{ValuesLevel: valueRoom, TermsLevel: termsRoom}[s.task.Level] * len(step.Sums))
		s.conclude("", strings.Join(s.results(w, step.Gives), "   "))
	}
}

// results are blanks for what a step gives, in the units of the problem.
func (s sheet) results(w working, gives []int) []string {
	var all []string
	for _, i := range gives {
		f := w.of.Forces[i]
		all = append(all, strings.TrimSpace(f.Name+" = "+valueBlank+" "+s.st.UnitOf(notation.ForceDimension(f))))
	}
	return all
}

// sum is a sum as the level prints it.
func (s sheet) sum(w working, sum statics.Sum) {
	if s.task.Level == ValuesLevel {
		s.equate("", w.say.Symbols(sum))
		return
	}
	t := table{align: "llll", head: []string{"term", "sign", "force [" + s.st.UnitOf(notation.Force) + "]", "arm [" + s.st.UnitOf(notation.Length) + "]"}}
	for _, k := range sum.Terms() {
		if k.Why == statics.Counts {
			t.add(s.term(w, k)...)
		}
	}
	if !sum.Moment {
		for i, row := range t.rows {
			t.rows[i] = row[:3]
		}
		t.align, t.head = t.align[:3], t.head[:3]
	}
	s.tabulate(4, t)
}

// term is a row with blanks for what the lesson asks of a term: its size where it is a load's, its arm, its sign.
func (s sheet) term(w working, k statics.Term) []string {
	force, arm := shortBlank, shortBlank
	if k.Force != statics.None {
		force = w.say.Source(k)
		if !k.Size.Equal(exact.Int(1)) { // a component, or what an inclined force has along the sum
			force = shortBlank + " · " + force
		}
	}
	if k.What == statics.TurnOnly {
		arm = "no arm"
		if k.Force == statics.None {
			force += " " + s.st.UnitOf(notation.Moment)
		}
	}
	return []string{w.say.Component(k), signBlank, force, arm}
}
