package tutor

import (
	"fmt"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/slip"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// An Account is what a learner has done and knows, as people read it.
type Account struct {
	Skills   []SkillAccount   // those met, in teaching order
	Unmet    []problems.Skill // the others, in teaching order
	Mistakes []MistakeAccount // those recognised more than once, the most frequent first
	Sessions []record.Session // the latest first
	Days     []DayAccount     // the last four weeks, the oldest day first
	Clock    string           // what a clock that was wrong has to do with it; nothing where none was
}

// A SkillAccount is how far one skill is.
type SkillAccount struct {
	problems.Skill
	record.Standing
	State string // stands, due, in work, stuck: what is to be said of it
	Days  int    // until it is due; zero or less when it is
}

// A MistakeAccount is a mistake that came back.
type MistakeAccount struct {
	record.Mistake
	Says string // the principle that it goes against
}

// A DayAccount is how steps came out on one day.
type DayAccount struct {
	Day   time.Time // its midnight
	Steps record.Count
}

// weeks is how long an account looks back day by day.
const weeks = 4

// AccountOf is the account of all records at a time.
func AccountOf(all []record.Record, now time.Time) Account {
	a := Account{Sessions: record.Sessions(all), Days: daysOf(all, now), Clock: ClockSays(all, now)}
	for i := range a.Sessions { // a file's name, and whatever else was written into the record
		a.Sessions[i].Problem = notation.VisibleLines(a.Sessions[i].Problem)
		a.Sessions[i].Level = notation.VisibleLines(a.Sessions[i].Level)
	}
	standings := record.Standings(all)
	for _, skill := range problems.Skills() {
		s, met := standings[skill.Name]
		if !met {
			a.Unmet = append(a.Unmet, skill)
			continue
		}
		a.Skills = append(a.Skills, SkillAccount{skill, s, stateOf(s, now), -s.Overdue(now)})
	}
	for _, m := range record.Mistakes(all) {
		if s := slip.ByID(m.ID); s != nil && m.Times > 1 {
			a.Mistakes = append(a.Mistakes, MistakeAccount{m, s.Principle()})
		}
	}
	return a
}

// stateOf is a skill's state in a word or two.
func stateOf(s record.Standing, now time.Time) string {
	switch {
	case s.Stuck():
		return "stuck"
	case s.Due(now):
		return "due"
	case s.Stands():
		return "stands"
	}
	return "in work"
}

// daysOf counts the steps of each of the last days.
func daysOf(all []record.Record, now time.Time) []DayAccount {
	y, m, d := now.Date()
	days := make([]DayAccount, 7*weeks)
	for i := range days {
		days[i].Day = time.Date(y, m, d-len(days)+1+i, 0, 0, 0, 0, now.Location())
	}
	for _, r := range all {
		at := r.At.In(now.Location())
		i, found := slices.BinarySearchFunc(days, at, func(day DayAccount, at time.Time) int {
			switch {
			case at.Before(day.Day):
				return 1
			case at.Before(day.Day.AddDate(0, 0, 1)):
				return 0
			}
			return -1
		})
		if found {
			days[i].Steps.AddAll(r)
		}
	}
	return days
}

// Lines is an account in plain lines, a fact each.
func (a Account) Lines() []string {
	if len(a.Sessions) == 0 {
		return []string{"Nothing has been practised here yet. unpin opens the list of problems."}
	}
	var lines []string
	if a.Clock != "" {
		lines = append(lines, a.Clock, "")
	}
	lines = append(lines, "Skills, and how many of their steps came right at the first try and without help:")
	width := 0
	for _, s := range a.Skills {
		width = max(width, len([]rune(s.Doc)))
	}
	for _, s := range a.Skills {
		lines = append(lines, fmt.Sprintf("  %-*s  %2d of %-2d  %s", width, s.Doc, s.Right, s.Of, s.Says()))
	}
	if n := len(a.Unmet); n > 0 {
		lines = append(lines, fmt.Sprintf("  and %s not met yet.", wording.Counted(n, "skill")))
	}
	lines = append(append(lines, ""), standsWhen...)
	if len(a.Mistakes) > 0 {
		lines = append(lines, "", "Mistakes that came back:")
	}
	for _, m := range a.Mistakes {
		lines = append(lines, fmt.Sprintf("  %d times, last %s: %s.", m.Times, m.Last.Format(time.DateOnly), m.Says))
	}
	lines = append(lines, "", "What was done:")
	for _, s := range a.Sessions {
		lines = append(lines, "  "+sessionText(s))
	}
	return lines
}

// Says is a skill's state, what is wanting for it to stand, and when it is due.
func (s SkillAccount) Says() string {
	if s.State == "stuck" {
		return "stuck: read a worked step, then try again"
	}
	state := "stands"
	if !s.Stands() {
		state = s.Wants() // as short as that: rows of a skill are long
	}
	switch {
	case s.State == "due":
		return state + ", due today"
	case s.Days == 1:
		return state + ", due tomorrow"
	}
	return state + ", due in " + wording.Counted(s.Days, "day")
}

// Wants is how far a skill is in what it wants most to stand, such as 1 of 3 days; nothing where it stands.
func (s SkillAccount) Wants() string { return wants(s.Standing) }

// wants is that of a standing: days first, since steps and frames come with them.
func wants(s record.Standing) string {
	switch {
	case s.Stands():
		return ""
	case s.DaysHeld() < record.LeastDays:
		return fmt.Sprintf("%d of %d days", s.DaysHeld(), record.LeastDays)
	case s.Frames() < record.LeastFrames:
		return fmt.Sprintf("%d of %d frames", s.Frames(), record.LeastFrames)
	case s.Right < record.LeastRight:
		return fmt.Sprintf("%d of %d steps", s.Right, record.LeastRight)
	}
	return "once more"
}

// standsWhen says when a skill stands, and when it is stuck.
var standsWhen = []string{
	fmt.Sprintf("A skill stands after %d steps right, %d frames and %d days; its row says how far.", record.LeastRight, record.LeastFrames, record.LeastDays),
	"A day's first step counts: right gives a day, a mistake in the skill takes one.",
	fmt.Sprintf("Stuck is what %d steps brought no nearer.", record.MostSteps),
}

// sessionText is one line about work on a problem.
func sessionText(s record.Session) string {
	what := workText(s.Level)
	if s.Exam {
		what = "exam, " + what
	}
	text := fmt.Sprintf("%s  %s, %s: %s", s.Last.Format(time.DateOnly), s.Problem, what, wording.Counted(s.Answers, "answer"))
	if s.Steps.Of > 0 {
		text += fmt.Sprintf(", %d of %s right at the first try", s.Steps.Right, wording.Counted(s.Steps.Of, "step"))
	}
	return text
}

// workText says what the work of a session was: at which level, or which exercise.
func workText(level string) string {
	for f := OneStep; f <= SketchFirst; f++ {
		if f.code() == level {
			return f.String()
		}
	}
	return level
}
