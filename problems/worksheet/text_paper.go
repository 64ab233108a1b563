package worksheet

import (
	"fmt"
	"io"
	"iter"
	"strings"

	"unpin/statics"
	"unpin/statics/figure"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// PapersText writes papers as plain text for who hears them: one fact a line, no drawing, no table, signs as words or in ASCII, and
// each answer on a line that ends with a colon or an equals sign. It heeds Key and Full; a key is set as a solution is.
func PapersText(w io.Writer, papers iter.Seq[Paper], o PaperOptions) error {
	for p := range papers {
		s := &spokenPaper{o: o, Paper: p.settled()}
		s.write()
		if _, err := io.WriteString(w, s.String()); err != nil {
			return err
		}
	}
	return nil
}

// A spokenPaper is a paper as text in the writing.
type spokenPaper struct {
	strings.Builder
	o PaperOptions
	Paper
}

// line writes a line, unless it says nothing.
func (s *spokenPaper) line(text string) {
	if text != "" {
		s.WriteString(text + "\n")
	}
}

func (s *spokenPaper) write() {
	s.line(s.title(s.o))
	s.line(s.Course)
	s.line("Name: " + s.Name)
	s.line("Id: " + s.Student)
	s.line(s.Caution)
	for _, t := range s.Tasks {
		s.WriteString("\n")
		for _, text := range []string{t.name(), t.code()} {
			if text != "" {
				s.line(text + ".")
			}
		}
		if s.o.Key {
			s.WriteString(documentOf(t, s.o, medium{}).asText(Options{}))
			continue
		}
		s.tell(t)
	}
}

// tell writes the questions of a task.
func (s *spokenPaper) tell(t Task) {
	d := newDocument(t.Problem, t.Solution, true)
	q := spokenTask{s, sheet{d, medium{}, t, answering{d, t.Items}}, wording.New(d.Assembly, d.st).Spoken()}
	s.line(oneLine(d.p.Title))
	s.line(oneLine(d.p.Text))
	s.line("Units: " + q.speak.Units() + ".")
	for _, line := range figure.Describe(d.Assembly, figure.Options{Style: d.st}) {
		s.line(line)
	}
	if d.Values == nil {
		s.line("The frame is not determinate.")
		return
	}
	s.line("Find: " + q.ask.asked() + ".")
	s.line(q.figures())
	s.line(q.turns())
	q.bodies()
	q.sums()
	q.answers()
}

// A spokenTask is the questions of one task as they are spoken.
type spokenTask struct {
	*spokenPaper
	sheet
	speak wording.Speaker
}

// bodies tells what acts on each free body, where the level prints it.
func (q spokenTask) bodies() {
	if q.task.Level > TermsLevel {
		return
	}
	for b := range q.Bodies() {
		q.out(figure.DescribeBody(q.Assembly, statics.FreeBody{b}, nil, figure.Options{Style: q.st})...)
	}
}

func (q spokenTask) out(lines ...string) {
	for _, line := range lines {
		q.spokenPaper.line(line)
	}
}

// sums are the steps, as far as the level prints them.
func (q spokenTask) sums() {
	switch q.task.Level {
	case BlankLevel:
	case PlanLevel:
		n := 0
		for _, step := range q.Plan {
			for range len(step.Gives) {
				n++
				q.out(fmt.Sprintf("Step %d.", n), "Free body:", "Sum:", "Equation:", "Gives:")
			}
		}
	default:
		for n, step := range q.Plan {
			q.step(n+1, step)
		}
	}
}

func (q spokenTask) step(n int, step statics.Step) {
	q.out(fmt.Sprintf("Step %d.", n))
	for _, sum := range step.Sums {
		q.out(wording.Sentence(q.speak.BodyAndSum(sum)))
		if q.task.Level == TermsLevel {
			q.terms(sum)
		} else {
			q.out(q.say.Symbols(sum))
		}
	}
	if step.Check {
		q.out("This sum checks the work: it must come to 0.")
	}
	for _, i := range step.Gives {
		f := q.Forces[i]
		q.out(f.Name + q.inUnit(notation.ForceDimension(f)) + " =")
	}
}

// inUnit is the unit of an answer after its name.
func (q spokenTask) inUnit(d notation.Dimension) string {
	if unit := q.st.UnitOf(d); unit != "" {
		return " in " + unit
	}
	return ""
}

// terms asks for what the lesson asks of each term.
func (q spokenTask) terms(sum statics.Sum) {
	for _, k := range sum.Terms() {
		if k.Why != statics.Counts {
			continue
		}
		q.out("Term: "+q.speak.Component(k)+".", "Sign:")
		switch {
		case k.Force == statics.None && k.What == statics.TurnOnly:
			q.out("Couple" + q.inUnit(notation.Moment) + ":")
		case k.Force == statics.None:
			q.out("Force" + q.inUnit(notation.Force) + ":")
		}
		if sum.Moment && k.What != statics.TurnOnly {
			q.out("Arm" + q.inUnit(notation.Length) + ":")
		}
	}
}

// answers are the answers, one a line.
func (q spokenTask) answers() {
	q.out("Answers.")
	for _, a := range q.ask.forces() {
		where := ""
		if a.where != "" {
			where = ", " + a.where
		}
		q.out(a.name + q.inUnit(a.item.Dim) + where + ", positive " + a.plus + ":")
	}
	for _, m := range q.ask.members() {
		q.out(q.say.Member(m)+".", q.say.SectionSigns(m))
		for _, c := range q.ask.cuts(m) {
			if q.task.Level == ValuesLevel {
				q.cut(c)
			}
			q.places(m, c.section)
		}
	}
}

// cut is the sums that give N, V and M at a place.
func (q spokenTask) cut(c cut) {
	if c.station.Found {
		q.out(c.toFind(q.ask))
		return
	}
	q.out(wording.Capital(q.say.KeptTitle(c.kept)) + ".")
	q.out(c.sums...)
}

// places are the answers at one place along a member.
func (q spokenTask) places(m int, k section) {
	place := map[statics.Side]string{statics.Before: " just before", statics.After: " just after"}[k.station.Side] + " " + q.say.Along(m, k.station.At)
	switch {
	case k.station.Found:
		place = " where " + q.ask.placeName(m, k)
	case k.station.At.IsZero() || k.station.At.Equal(q.Frame.Length(m)):
		place = " " + q.say.Along(m, k.station.At)
	}
	if k.place != nil {
		q.out("x" + place + "," + q.inUnit(k.place.Dim) + ":")
	}
	for _, item := range k.values {
		if item != nil {
			q.out(item.Quantity.Letter() + place + "," + q.inUnit(item.Dim) + ":")
		}
	}
}
