package host

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"unpin/statics/slip"
	"unpin/statics/wording"
)

// learners are all of the roster: first who has done something since the host started, who is stuck before others.
type learners struct{ list []doing }

func (l *learners) look(b *board) {
	held := ""
	if b.at < len(l.list) {
		held = l.list[b.at].id
	}
	l.list = b.host.activity.all()
	var others []doing
	for id := range b.host.door.students {
		if !slices.ContainsFunc(l.list, func(d doing) bool { return d.id == id }) {
			others = append(others, doing{id: id})
		}
	}
	slices.SortFunc(others, func(x, y doing) int { return cmp.Compare(x.id, y.id) })
	l.list = append(l.list, others...)
	b.at = min(b.at, max(len(l.list)-1, 0))
	if i := slices.IndexFunc(l.list, func(d doing) bool { return d.id == held }); i >= 0 {
		b.at = i
	}
}

func (l *learners) chooses() bool { return true }

// whoWidth is how wide the column of who it is may be. Where there is no room for more, what a mistake was is said of the row in hand only.
func (b *board) whoWidth() int { return map[bool]int{true: 28, false: 24}[b.w >= 120] }

// last is the last column, where there is room for one.
func (b *board) last(text string) string {
	if b.w < 100 {
		return ""
	}
	return "  " + text
}

func (l *learners) head(b *board) []string {
	begun := 0
	for _, d := range l.list {
		if _, here := b.host.where(d.id); here && d.run != "" {
			begun++
		}
	}
	return []string{
		fmt.Sprintf("%s: %s here of %d, %d at work", b.host.o.Title, wording.Counted(b.host.present(), "learner"), len(b.host.door.students), begun) + b.host.storeText(), "",
		fmt.Sprintf("   %-*s %-16s %-14s %6s %5s %5s", b.whoWidth(), "who", "problem", "question", "for", "wrong", "first") + b.last("mistake"),
	}
}

func (l *learners) rows(b *board) []string {
	var lines []string
	now := b.host.o.Clock()
	for _, d := range l.list {
		mark, place := " ", ""
		if at, here := b.host.where(d.id); here {
			if mark = "*"; at != "" {
				place = " (at " + at + ")"
			}
		}
		who := short(d.id+" "+b.host.door.students[d.id].Name, b.whoWidth()-len([]rune(place))) + place
		if d.run == "" {
			lines = append(lines, fmt.Sprintf(" %s %-*s %s", mark, b.whoWidth(), who, map[bool]string{true: "choosing"}[mark == "*"]))
			continue
		}
		lines = append(lines, fmt.Sprintf(" %s %-*s %-16s %-14s %6s %5d %5s", mark, b.whoWidth(), who, short(d.problem, 16), short(d.at(), 14),
			inWords(now.Sub(d.since)), d.wrong, d.firstTries())+b.last(d.mistake()))
	}
	return lines
}

// note says what the one in hand typed last, with the mistake in it, and how much help was asked for.
func (l *learners) note(b *board) string {
	if b.at >= len(l.list) {
		return ""
	}
	d := l.list[b.at]
	text := strings.TrimSpace(d.id + " " + b.host.door.students[d.id].Name)
	switch {
	case d.run == "":
		return text + " has done nothing since this host started."
	case d.lately.Typed != "":
		text += ", " + short(d.lately.Typed, 24) + ": " + outcomeText(d.lately)
	}
	if d.exam {
		text += "; in an exam"
	}
	if d.helped > 0 {
		text += "; asked for help " + map[bool]string{true: "once", false: fmt.Sprintf("%d times", d.helped)}[d.helped == 1]
	}
	return text
}

// at is the question in hand, or, as long as nothing is typed at the next one, what was settled before it.
func (d doing) at() string {
	if d.settled {
		return "after " + d.question
	}
	return d.question
}

// firstTries are those of a run; in an exam, which gives no verdicts, how many are answered.
func (d doing) firstTries() string {
	if d.exam {
		return fmt.Sprint(d.first.Of)
	}
	return fmt.Sprintf("%d/%d", d.first.Right, d.first.Of)
}

// mistake is the one that was recognised last.
func (d doing) mistake() string {
	if d.exam {
		return "in an exam"
	}
	if s := slip.ByID(d.slip); s != nil {
		return s.Principle()
	}
	return ""
}

func (l *learners) press(b *board, key string) {
	switch {
	case key == "t":
		b.open(&steps{})
	case key == "s":
		b.open(&setList{})
	case b.at >= len(l.list):
	case key == "enter":
		b.open(&sheet{of: l.list[b.at]})
	case key == "h":
		id := l.list[b.at].id
		b.ask("a hint to "+id+" alone, enter sends it: ", b.tellOne(id))
	}
}

func (l *learners) keys() string {
	return "* here  enter read  h hint to one  w word to all  t tries  s sets  ctrl+c leave"
}

// inWords is a time in minutes, short ones in seconds.
func inWords(d time.Duration) string {
	if d < 2*time.Minute {
		return fmt.Sprintf("%d s", int(max(d, 0)/time.Second))
	}
	return fmt.Sprintf("%d min", int(d/time.Minute))
}

// moment says which mistakes are made most now, in two lines.
func (b *board) moment() []string {
	lines := []string{"", ""}
	for i, m := range b.host.activity.frequent(b.host.o.Clock()) {
		if s := slip.ByID(m.ID); s != nil && i < len(lines) {
			lines[i] = fmt.Sprintf("%d times in the last quarter of an hour: %s", m.Times, s.Principle())
		}
	}
	return lines
}
