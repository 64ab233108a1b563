package host

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	"unpin/problems"
	"unpin/statics/wording"
)

// setList are the sets of the class, with what an instructor does to them.
type setList struct {
	list  []*set
	stand standing // of the one in hand
}

func (l *setList) look(b *board) {
	if l.list = b.host.sets; b.at < len(l.list) && l.list[b.at].exam() {
		l.stand.look(examsOf(b.host), l.list[b.at])
	}
	if err := b.host.orders.read(); err != nil {
		b.said = "The sets cannot be read: " + err.Error()
	}
}

func (l *setList) chooses() bool { return true }

// note is the title of the set in hand, what it is, and how far the class is with it.
func (l *setList) note(b *board) string {
	if b.at >= len(l.list) {
		return ""
	}
	s := l.list[b.at]
	text := fmt.Sprintf("%s: %s, %s, %s points", s.ID, s.Title, wording.Counted(len(s.Tasks), "problem"), s.Points())
	if stands := l.stand.of(s); stands != "" {
		text = s.ID + ": " + stands + "; " + s.Title
	}
	return text
}

func (l *setList) head(b *board) []string {
	return []string{"Sets of the class. It is " + moment(b.host.o.Clock().In(time.Local)), "", fmt.Sprintf("   %-14s %-14s %s", "set", "worked as", "state")}
}

func (l *setList) rows(b *board) []string {
	var lines []string
	for _, s := range l.list {
		w := b.host.hours(s)
		kind := "lessons"
		if s.exam() {
			kind = fmt.Sprintf("exam, %d min", w.minutes)
		}
		lines = append(lines, fmt.Sprintf("   %-14s %-14s %s", short(s.ID, 14), kind, s.state(w, b.host.o.Clock())))
	}
	if len(lines) == 0 {
		lines = []string{"   There are no sets in the folder of the class."}
	}
	return lines
}

// state says how far a set is, in short.
func (s *set) state(w hours, now time.Time) string {
	var parts []string
	switch w.at(now) {
	case before:
		parts = append(parts, "not open")
		if !w.opens.IsZero() && !w.unopened {
			parts = append(parts, "opens "+s.shortMoment(w.opens))
		}
	case running:
		parts = append(parts, "open")
		if !w.closes.IsZero() {
			parts = append(parts, "closes "+s.shortMoment(w.closesAt(now)))
		}
	case resting:
		parts = append(parts, "paused since "+s.shortMoment(w.pauses[len(w.pauses)-1].from))
	case over:
		parts = append(parts, "closed "+s.shortMoment(w.closesAt(now)))
	}
	if n := w.given[""]; n > 0 {
		parts = append(parts, fmt.Sprintf("%d min given back", n/time.Minute))
	}
	if n := len(w.pauses); n > 0 {
		parts = append(parts, wording.Counted(n, "pause"))
	}
	for _, id := range slices.Sorted(maps.Keys(w.extra)) {
		if w.extra[id] > 0 && w.minutes > 0 {
			parts = append(parts, fmt.Sprintf("%s +%d %%", id, w.extra[id]))
		}
	}
	for _, id := range slices.Sorted(maps.Keys(w.given)) {
		if id != "" {
			parts = append(parts, fmt.Sprintf("%s +%d min", id, w.given[id]/time.Minute))
		}
	}
	return strings.Join(parts, ", ")
}

// shortMoment is a time in the zone of the set.
func (s *set) shortMoment(t time.Time) string {
	text := moment(t.In(s.zone()))
	day, at, _ := strings.Cut(text, ", ")
	return strings.Join(strings.Fields(day)[1:3], " ") + ", " + at
}

func (l *setList) press(b *board, key string) {
	if b.at >= len(l.list) {
		return
	}
	s := l.list[b.at]
	w := b.host.hours(s)
	switch key {
	case "o":
		b.ask("open "+s.ID+" until (11:30, 2026-12-04T11:30+01:00, or nothing for no end): ", b.opens(s))
	case "c":
		b.ask("close "+s.ID+" for everybody, for good? Type close: ", b.closes(s))
	case "p":
		do := pauseSet
		if w.at(b.host.o.Clock()) == resting {
			do = goOn
		}
		b.said = b.order(order{Set: s.ID, Do: do}, map[deed]string{pauseSet: s.ID + " is paused: p goes on.", goOn: s.ID + " goes on; who had begun has the time of the pause back."}[do])
	case "g":
		b.ask("give back in "+s.ID+": MINUTES to all, or ID and MINUTES: ", b.gives(s))
	case "x":
		b.ask("more time in "+s.ID+": ID and PER CENT: ", b.extends(s))
	case "m":
		b.ask("minutes that each has in "+s.ID+": ", b.lasts(s))
	}
}

func (l *setList) keys() string {
	return "o open  c close  p pause, go on  g give minutes  x extra  m minutes  esc back"
}

// order keeps an order, and says what it comes to.
func (b *board) order(o order, said string) string {
	o.At, o.By = b.host.o.Clock(), b.by
	if err := b.host.orders.add(o); err != nil {
		b.host.o.Log.Error("an order cannot be kept", "set", o.Set, "do", string(o.Do), "error", err.Error())
		return "This cannot be kept, so it does not hold: " + err.Error()
	}
	b.host.hub.changed()
	b.host.o.Log.Info("an order", "set", o.Set, "do", string(o.Do), "who", o.Who, "minutes", o.Minutes, "percent", o.Percent, "until", o.Until, "by", o.By)
	return said
}

// opens opens a set until a time that is typed.
func (b *board) opens(s *set) func(string) string {
	return func(text string) string {
		now := b.host.o.Clock()
		var until time.Time
		if text != "" {
			var read bool
			if until, read = timeTyped(text, now.In(s.zone())); !read {
				return "This is no time: type it as 11:30, or with its day and offset as 2026-12-04T11:30+01:00."
			}
			if !until.After(now) {
				return s.moment(until) + " is over already."
			}
			return b.order(order{Set: s.ID, Do: openSet, Until: until}, s.ID+" is open until "+s.moment(until)+".")
		}
		return b.order(order{Set: s.ID, Do: openSet}, s.ID+" is open until you close it.")
	}
}

// timeTyped reads a time: of the same day where only hours and minutes are typed.
func timeTyped(text string, now time.Time) (time.Time, bool) {
	if at, err := time.Parse("15:04", text); err == nil {
		return time.Date(now.Year(), now.Month(), now.Day(), at.Hour(), at.Minute(), 0, 0, now.Location()), true
	}
	return problems.ReadMoment(text, now.Location())
}

// closes closes a set once that is typed.
func (b *board) closes(s *set) func(string) string {
	return func(text string) string {
		if text != "close" {
			return "It stays as it is: to close it, type close."
		}
		return b.order(order{Set: s.ID, Do: closeSet}, s.ID+" is closed, and all papers are handed in as they stand.")
	}
}

// Bounds of what is typed.
const (
	mostGiven   = 10_000 // minutes
	mostPercent = 400
)

// gives gives minutes back.
func (b *board) gives(s *set) func(string) string {
	return func(text string) string {
		who, n, fault := b.whoAndNumber(text, mostGiven, true)
		if fault != "" {
			return fault
		}
		to := "all"
		if who != "" {
			to = who
		}
		return b.order(order{Set: s.ID, Do: giveBack, Who: who, Minutes: n}, fmt.Sprintf("%s for %s in %s.", wording.Counted(n, "minute"), to, s.ID))
	}
}

// extends gives one learner more time.
func (b *board) extends(s *set) func(string) string {
	return func(text string) string {
		who, n, fault := b.whoAndNumber(text, mostPercent, false)
		if fault != "" {
			return fault
		}
		return b.order(order{Set: s.ID, Do: setExtra, Who: who, Percent: n}, fmt.Sprintf("%s has %d per cent more time in %s.", who, n, s.ID))
	}
}

// lasts sets how many minutes each has.
func (b *board) lasts(s *set) func(string) string {
	return func(text string) string {
		n, err := strconv.Atoi(text)
		switch {
		case !s.exam():
			return s.ID + " is worked as lessons, which have no minutes: only a set with minutes in its file is an exam."
		case err != nil || n < 1 || n > mostGiven:
			return fmt.Sprintf("Type a whole number of minutes, from 1 to %d.", mostGiven)
		}
		return b.order(order{Set: s.ID, Do: setMinutes, Minutes: n}, fmt.Sprintf("Each has %s in %s.", wording.Counted(n, "minute"), s.ID))
	}
}

// whoAndNumber reads an id of the roster and a whole number; where all may be meant, also the number alone.
func (b *board) whoAndNumber(text string, most int, all bool) (who string, n int, fault string) {
	at := strings.LastIndex(text, " ")
	who = strings.TrimSpace(text[:max(at, 0)])
	n, err := strconv.Atoi(strings.TrimSuffix(text[at+1:], "%"))
	switch {
	case err != nil || n < 0 || n > most:
		return "", 0, fmt.Sprintf("Type a whole number up to %d, with the id of a learner before it.", most)
	case who == "" && !all:
		return "", 0, "Type whose time it is: the id of a learner, then the number."
	case who != "" && !b.host.door.knows(who):
		return "", 0, who + " is not on the roster."
	}
	return who, n, ""
}
