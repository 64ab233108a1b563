package worksheet

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A setSurvey is what there is to say about a set before it is printed.
type setSurvey struct {
	*problems.Set
	tasks   []taskSurvey
	covered []string // skills, in teaching order
	missing []string
	clashes []string // a clause each
}

// A taskSurvey is what there is to say about one problem of a set.
type taskSurvey struct {
	problems.Task
	grade  int
	asked  int // values
	halves int // how many half minutes it takes
	copies variant.Supply
	none   string // why it has no copies, or empty
}

// surveyed looks at all problems of a set.
func surveyed(s *problems.Set) setSurvey {
	all := setSurvey{Set: s}
	found := map[string]bool{}
	for _, t := range s.Tasks {
		one := taskSurvey{Task: t, grade: t.Difficulty().Grade}
		items, err := t.Asked(t.Find)
		if err == nil { // which reading the set has seen to
			one.asked = len(items)
		}
		one.halves = halfMinutes(t.Solved, items)
		if m, err := variant.New(t.Problem); err != nil {
			one.none = err.Error()
		} else {
			one.copies = m.Supply()
		}
		all.tasks = append(all.tasks, one)
		for _, name := range slices.Concat(t.Skills, alongSkills(items)) {
			found[name] = true
		}
		for _, step := range t.Plan {
			for _, name := range t.StepSkills(step) {
				found[name] = true
			}
		}
	}
	for _, skill := range problems.Skills() {
		if found[skill.Name] {
			all.covered = append(all.covered, skill.Name)
		} else {
			all.missing = append(all.missing, skill.Name)
		}
	}
	all.clashes = clashes(s)
	return all
}

// The half minutes that a problem takes on an empty page: common practice, no source.
const (
	perProblem = 4
	perBody    = 2
	perSum     = 2
	perTerm    = 1
	perValue   = 2
)

// lengthRule tells how the length is found.
const lengthRule = "2 minutes for each problem, 1 for each free body, 1 for each equation and half a minute for each of its terms, " +
	"1 for each value of N, V and M; common practice, no source"

// halfMinutes is how long a problem takes, as far as its plan must be followed for what is asked.
func halfMinutes(p problems.Solved, items []problems.Item) int {
	along := 0
	forces := map[int]bool{}
	for _, item := range items {
		if item.Force == statics.None {
			along++
		} else {
			forces[item.Force] = true
		}
	}
	last := 0 // the steps up to the last that is needed
	for n, step := range p.Plan {
		if along > 0 && len(step.Gives) > 0 || slices.ContainsFunc(step.Gives, func(f int) bool { return forces[f] }) {
			last = n + 1
		}
	}
	half := perProblem + perBody*p.Bodies() + perValue*along
	for _, step := range p.Plan[:last] {
		for _, sum := range step.Sums {
			half += perSum
			for _, t := range sum.Terms() {
				if t.Why == statics.Counts {
					half += perTerm
				}
			}
		}
	}
	return half
}

// alongSkills lists the skills that values along members ask for, as far as their names show them.
func alongSkills(items []problems.Item) []string {
	var all []string
	for _, item := range items {
		if item.Force != statics.None {
			continue
		}
		all = append(all, "cut-forces")
		if strings.HasSuffix(item.Name, " after)") {
			all = append(all, "jumps")
		}
		if item.Place {
			all = append(all, "extreme-moment")
		}
	}
	return all
}

// clashes lists the conventions and units in which problems of a set differ: "moments: cw in shelf; ccw in canopy and pier".
func clashes(s *problems.Set) []string {
	var all []string
	differ := func(name string, word func(problems.Task) string) {
		var words []string
		who := map[string][]string{}
		for _, t := range s.Tasks {
			w := word(t)
			if who[w] == nil {
				words = append(words, w)
			}
			who[w] = append(who[w], t.Name)
		}
		if len(words) < 2 {
			return
		}
		var texts []string
		for _, w := range words {
			texts = append(texts, w+" in "+notation.List(who[w]))
		}
		all = append(all, name+": "+strings.Join(texts, "; "))
	}
	for _, name := range notation.ConventionNames() {
		differ(name, func(t problems.Task) string { return t.Conventions.Word(name) })
	}
	differ("units", func(t problems.Task) string { return t.Units.String() })
	return all
}

// minutes is the length of the whole set, in minutes.
func (s setSurvey) minutes() int {
	halves := 0
	for _, t := range s.tasks {
		halves += t.halves
	}
	return (halves + 1) / 2
}

// grades lists the grades in the order of the problems.
func (s setSurvey) grades() []string {
	var all []string
	for _, t := range s.tasks {
		all = append(all, fmt.Sprint(t.grade))
	}
	return all
}

// InspectSet is what there is to say about a set: its points, grades, skills and length, what clashes, and how many copies
// there are.
func InspectSet(set *problems.Set, o Options) string {
	s := surveyed(set)
	d := &document{passages: passages{ascii: o.ASCII}}
	d.title(oneLine(notation.VisibleLines(set.Title)))
	d.blank()
	line := func(label, text string) { d.item(fmt.Sprintf("%-11s", label), text) }
	line("Set", set.ID+s.course())
	line("Points", s.pointsText())
	line("Grades", strings.Join(s.grades(), ", ")+" of 6, in the order of the problems")
	line("Length", s.lengthText())
	for i, text := range s.timesTexts() {
		line([]string{"Open", ""}[min(i, 1)], text)
	}
	line("Skills", strings.Join(s.covered, ", "))
	line("Not in it", strings.Join(orNone(s.missing), ", "))
	for i, text := range s.clashes {
		line([]string{"Clash", ""}[min(i, 1)], text)
	}
	for _, w := range set.Warnings {
		line("Warning", notation.VisibleLines(w))
	}
	d.section("Problems")
	for i, t := range s.tasks {
		d.item(fmt.Sprintf("%-4s", fmt.Sprintf("%d.", i+1)), t.text())
	}
	return d.asText(o)
}

func (s setSurvey) course() string {
	if s.Course == "" {
		return ""
	}
	return ", " + notation.VisibleLines(s.Course)
}

func (s setSurvey) pointsText() string {
	var each []string
	for _, t := range s.tasks {
		each = append(each, t.Points.Decimal(3))
	}
	return s.Points().Decimal(3) + ": " + strings.Join(each, ", ")
}

func (s setSurvey) lengthText() string {
	text := fmt.Sprintf("about %d minutes", s.minutes())
	if s.Minutes > 0 {
		text += fmt.Sprintf(", and the file gives %d", s.Minutes)
	}
	return text + " (" + lengthRule + ")"
}

// momentText is a moment with its zone.
func momentText(t time.Time) string { return t.Format("Mon 2 Jan 2006, 15:04 -07:00") }

func (s setSurvey) timesTexts() []string {
	var all []string
	if !s.Opens.IsZero() {
		all = append(all, "from "+momentText(s.Opens))
	}
	if !s.Closes.IsZero() {
		all = append(all, "until "+momentText(s.Closes))
	}
	if !s.Keep.IsZero() {
		all = append(all, "what students did is kept until "+s.Keep.Format("Mon 2 Jan 2006"))
	}
	return all
}

// text tells of one problem in a few clauses.
func (t taskSurvey) text() string {
	return fmt.Sprintf("%s, %s: %s for %s; grade %d, about %d minutes; %s", t.Name, oneLine(notation.VisibleLines(t.Title)), wording.Counted(t.asked, "value"),
		wordingPoints(t.Points), t.grade, (t.halves+1)/2, t.copiesText())
}

// wordingPoints is "1 point", "7.5 points".
func wordingPoints(p exact.Num) string {
	if p.Equal(exact.Int(1)) {
		return "1 point"
	}
	return p.Decimal(3) + " points"
}

// plenty is how many copies are no longer counted: as many as a class can have students.
const plenty = 20_000

// copiesText tells how many good copies there are, about how many where they are too many to judge.
func (t taskSurvey) copiesText() string {
	c := t.copies
	about := 0
	if c.Judged > 0 {
		about = c.Choices / c.Judged * c.Good
	}
	switch tried := fmt.Sprintf("%d of %d tried sets of numbers are good", c.Good, c.Judged); {
	case t.none != "":
		return "no copies, for " + t.none
	case c.All && c.Good == 1:
		return "1 copy"
	case c.All:
		return fmt.Sprintf("%d copies", c.Good)
	case c.Good == 0:
		return "hardly any copies: " + tried
	case about > plenty:
		return fmt.Sprintf("more than %d copies: %s", plenty, tried)
	default:
		return fmt.Sprintf("about %d copies: %s", twoFigures(about), tried)
	}
}

// twoFigures is a number rounded down to two figures.
func twoFigures(n int) int {
	unit := 1
	for n/unit >= 100 {
		unit *= 10
	}
	return n / unit * unit
}

// InspectSetBrief is what InspectSet says in one line: "statics-w5: 3 problems, 29.5 points, grades 1, 2 and 4, about 50 minutes".
func InspectSetBrief(set *problems.Set) string {
	s := surveyed(set)
	facts := []string{wording.Counted(len(s.tasks), "problem"), wordingPoints(s.Points())}
	facts = append(facts, wording.Plural(len(s.tasks), "grade")+" "+notation.List(s.grades()), fmt.Sprintf("about %d minutes", s.minutes()))
	if n := len(s.clashes); n > 0 {
		facts = append(facts, fmt.Sprintf("conventions clash: %d", n))
	}
	for _, t := range s.tasks {
		if t.none != "" {
			facts = append(facts, t.Name+" has no copies")
		}
	}
	if n := len(set.Warnings); n > 0 {
		facts = append(facts, wording.Counted(n, "warning"))
	}
	return notation.Visible(s.ID+": "+strings.Join(facts, ", ")) + "\n"
}
