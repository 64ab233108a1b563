package tutor

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"unpin/problems"
	"unpin/statics/wording"
	"unpin/tutor/record"
)

// An Offer is a problem to practise now, and why.
type Offer struct {
	Problem *problems.Problem // as its file has it; Fresh gives it other numbers
	Level   Level
	Skill   problems.Skill // for which it is offered; empty where nothing is wanting
	Why     string         // one line
	Form    Form           // a whole problem, unless it is a piece of a portion
	Halves  int            // of a piece: about how many half minutes it takes
	Skills  []string       // that it asks for
	Worked  bool           // a step like it is read first, worked, from another problem: for a skill that is stuck

	of  task // of one step or one member
	day int  // of the year, on which it is made: who comes back gets another example
}

// mostOffers is how many problems are offered at once: about half an hour's work.
const mostOffers = 3

// Today lists what to practise now, of the problems at hand: first the skills that are due, the longest overdue first; then those that are
// stuck, by a worked step to read and then a simple one to do; then the weakest of those in work; then what was not met yet, a little at a time; where nothing is wanting, the
// problem that was not worked on for longest. Problems that follow each other differ in shape, and none is offered twice.
func Today(all []record.Record, now time.Time, at []*problems.Problem) []Offer {
	return newToday(all, now, at).wholes()
}

// Offers are a portion and what Today lists, with the problems looked over once.
func Offers(all []record.Record, now time.Time, at []*problems.Problem) (portion, wholes []Offer) {
	t := newToday(all, now, at)
	return t.anew().portion(), t.anew().wholes()
}

// anew is what is known, before offers are made.
func (t *today) anew() *today {
	return &today{standings: t.standings, now: t.now, last: t.last, materials: t.materials}
}

// wholes are the problems to practise.
func (t *today) wholes() []Offer {
	for _, need := range t.needs() {
		if len(t.offers) < mostOffers && !t.covered(need.skill.Name) {
			t.offer(need)
		}
	}
	for len(t.offers) < mostOffers && t.offerNew() {
	}
	if len(t.offers) == 0 {
		t.offerAny()
	}
	return t.offers
}

// today is what is known when offers are made, and those made.
type today struct {
	standings map[string]record.Standing
	now       time.Time
	last      map[string]time.Time // of work on each problem, by name
	materials []material
	offers    []Offer
	taken     []material // of the offers
}

// newToday gathers what is known before offers are made.
func newToday(all []record.Record, now time.Time, at []*problems.Problem) *today {
	t := &today{standings: record.Standings(all), now: now, last: lastWork(all)}
	for _, p := range at {
		if m, ok := known.of(p); ok {
			t.materials = append(t.materials, m)
		}
	}
	return t
}

// A need is a skill to be practised, and why.
type need struct {
	skill  problems.Skill
	why    string
	stuck  bool
	gently bool // by what asks for little besides, as for who is stuck, but with nothing worked
}

// needs lists the skills to be practised, the most urgent first.
func (t *today) needs() []need {
	var due, stuck, weak []need
	for _, skill := range problems.Skills() {
		s, met := t.standings[skill.Name]
		count := fmt.Sprintf("%d of %d right at the first try", s.Right, s.Of)
		switch {
		case !met:
		case s.Stuck():
			stuck = append(stuck, need{skill, "worked first, then one of yours: " + skill.Doc + ", " + count, true, false})
		case s.Due(t.now):
			due = append(due, need{skill, "due: " + skill.Doc + ", " + count + ", last done " + ago(s.Last, t.now), false, false})
		case !s.Stands():
			weak = append(weak, need{skill, "to become surer: " + skill.Doc + ", " + count + ", " + wants(s), false, false})
		}
	}
	byStanding := func(order func(a, b record.Standing) int) func(a, b need) int {
		return func(a, b need) int { return order(t.standings[a.skill.Name], t.standings[b.skill.Name]) }
	}
	slices.SortStableFunc(due, byStanding(func(a, b record.Standing) int { return cmp.Or(b.Overdue(t.now)-a.Overdue(t.now), a.Weaker(b)) }))
	slices.SortStableFunc(weak, byStanding(record.Standing.Weaker))
	slices.SortStableFunc(stuck, byStanding(func(a, b record.Standing) int { return a.Last.Compare(b.Last) }))
	return slices.Concat(stuck, due, weak)
}

// covered reports whether a problem already offered exercises a skill.
func (t *today) covered(skill string) bool {
	return slices.ContainsFunc(t.taken, func(m material) bool { return slices.Contains(m.skills, skill) })
}

// offer adds the problem that suits a need best, if any exercises the skill; of one that is stuck a step.
func (t *today) offer(n need) {
	if n.stuck {
		if o, m, found := t.piece(n, longest); found {
			t.take(m, o)
		}
		return
	}
	if m, found := t.best(func(m material) bool { return slices.Contains(m.skills, n.skill.Name) }); found {
		t.take(m, Offer{Problem: m.problem, Level: Gradual, Skill: n.skill, Why: n.why})
	}
}

// offerNew adds the problem that suits best of those that ask for a skill that was not met; false where none does.
func (t *today) offerNew() bool {
	m, found := t.best(func(m material) bool { return len(t.unmet(m)) > 0 })
	if found {
		skill := t.unmet(m)[0]
		t.take(m, Offer{Problem: m.problem, Level: Gradual, Skill: skill, Why: "new: " + skill.Doc})
	}
	return found
}

// offerAny adds the problem that was not worked on for longest.
func (t *today) offerAny() {
	best, found := material{}, false
	for _, m := range t.materials {
		if !found || t.last[m.problem.Name].Before(t.last[best.problem.Name]) {
			best, found = m, true
		}
	}
	if found {
		t.take(best, Offer{Problem: best.problem, Level: Gradual, Why: "nothing is due: a problem that you have not worked on for long"})
	}
}

// best is the problem, of those that will do and are not offered, that suits best.
func (t *today) best(will func(material) bool) (best material, found bool) {
	for _, m := range t.materials {
		if will(m) && !t.offered(m) && (!found || t.better(m, best)) {
			best, found = m, true
		}
	}
	return best, found
}

// take adds an offer of a problem; what it asks for is covered then.
func (t *today) take(m material, o Offer) {
	switch o.Form {
	case WholeProblem:
		o.Skills = m.skills
	case FindMistake:
		o.Skills = []string{o.Skill.Name}
	}
	m.skills = o.Skills
	t.offers, t.taken = append(t.offers, o), append(t.taken, m)
}

// offered reports whether a problem is among the offers.
func (t *today) offered(m material) bool {
	return slices.ContainsFunc(t.taken, func(o material) bool { return o.problem == m.problem })
}

// better reports whether a problem suits better than another: it is not much harder than those worked on before, it was not worked on these days,
// each of its steps does more for what is wanting, it is of another shape than the one before, it was not worked on so lately, it is gentler.
func (t *today) better(a, b material) bool {
	return cmp.Or(
		t.beyond(a)-t.beyond(b),
		t.recent(a)-t.recent(b),
		t.gain(b.skills)*a.steps-t.gain(a.skills)*b.steps,
		t.alike(a)-t.alike(b),
		t.last[a.problem.Name].Compare(t.last[b.problem.Name]),
		a.grade-b.grade,
	) < 0
}

// mostNew is how many skills may be new at once; each one beyond them makes a problem so much less of a gain.
const mostNew = 4

// gain is what a problem or a piece does for the skills that are wanting: most for one that does not stand yet, less for one that stands and is due, nothing
// for one that stands; and less where too much is new at once.
func (t *today) gain(skills []string) int {
	gain, fresh := 0, 0
	for _, skill := range skills {
		switch s, met := t.standings[skill]; {
		case t.covered(skill):
		case !met:
			fresh++
			gain += 2
		case !s.Stands():
			gain += 2
		case s.Due(t.now):
			gain++
		}
	}
	return max(gain-3*max(fresh-mostNew, 0), 0)
}

// unmet lists the skills of a problem that were not met, nor are by what is offered, in teaching order.
func (t *today) unmet(m material) []problems.Skill {
	var all []problems.Skill
	for _, skill := range problems.Skills() {
		if _, met := t.standings[skill.Name]; !met && slices.Contains(m.skills, skill.Name) && !t.covered(skill.Name) {
			all = append(all, skill)
		}
	}
	return all
}

// recent is 1 for a problem that was worked on today or yesterday, else 0: another frame shows better whether a skill stands.
func (t *today) recent(m material) int {
	if at, done := t.last[m.problem.Name]; done && !at.After(t.now.Add(time.Hour)) && record.DaysBetween(at, t.now) <= 1 {
		return 1
	}
	return 0
}

// alike is 1 for a problem that has the shape of the one offered before it, else 0.
func (t *today) alike(m material) int {
	if n := len(t.taken); n > 0 && t.taken[n-1].shape == m.shape {
		return 1
	}
	return 0
}

// ClockSays tells where skills were last practised at times that are still to come, and what is made of it; nothing where none was.
func ClockSays(all []record.Record, now time.Time) string {
	n, last := 0, now
	for _, s := range record.Standings(all) {
		if s.Ahead(now) {
			n++
			if s.Last.After(last) {
				last = s.Last
			}
		}
	}
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("A clock was or is wrong: %s dated up to %s, still to come. They count as due today.",
		map[bool]string{true: "1 skill is", false: wording.Counted(n, "skill") + " are"}[n == 1], last.Format(time.DateOnly))
}

// lastWork is when each problem was worked on last, by its name.
func lastWork(all []record.Record) map[string]time.Time {
	last := map[string]time.Time{}
	for _, r := range all {
		last[r.Problem] = r.At
	}
	return last
}

// ago is a time in words of days.
func ago(at, now time.Time) string {
	switch days := record.DaysBetween(at, now); {
	case at.After(now.Add(time.Hour)):
		return "by a clock that ran ahead"
	case days <= 0:
		return "today"
	case days == 1:
		return "yesterday"
	default:
		return wording.Counted(days, "day") + " ago"
	}
}
