package host

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/charmbracelet/ssh"

	"unpin/statics/wording"
)

// privacyLine is told at the first visit.
const privacyLine = "What you do here is kept on this host. The word privacy after the address of the host says what, and how long."

// keeping is what a host keeps of whom, and how long.
type keeping struct{ *Host }

// keepingOf is that of a host.
func keepingOf(h *Host) keeping { return keeping{h} }

// privacyText is what is kept of a learner, for how long, and how to see and erase it.
func (h keeping) privacyText() []string {
	lines := []string{
		"What this host keeps of you, and for how long.",
		"Your id, and your name if it stands in the roster: as long as you are on the roster.",
		"A digest of your personal code and the fingerprints of your keys, so that you are known again: until the class's store is removed.",
		"Practice: each line that you type in a lesson, when, and what became of it. Until you erase it: record --erase does, for good.",
		"Which numbers you have in each set: with the set.",
		"Exams: each line of a paper and when, when it was begun and handed in, more time that was given to you. record --erase leaves these; they are erased after the day that the set says:",
	}
	exams := 0
	for _, s := range h.sets {
		switch {
		case !s.exam():
			continue
		case s.Keep.IsZero():
			lines = append(lines, "  "+s.Title+": no day is set; ask your instructor.")
		default:
			lines = append(lines, "  "+s.Title+": kept until "+s.Keep.Format("Monday 2 January 2006")+".")
		}
		exams++
	}
	if exams == 0 {
		lines = append(lines, "  There is no exam here now.")
	}
	return append(lines,
		"The log of the host: when you came and left, and from which address: as long as whoever runs the host keeps it.",
		"Who sees it: you, by record --export; your instructors, on their board and in the marks; whoever runs the host. No other learner.",
		"Copies that were made of the store before something was erased still hold it.")
}

// greet tells a learner at the first visit where it stands what is kept; it is empty at later ones.
func (h keeping) greet(id string) string {
	const told = "told what is kept"
	notes := h.keep.Log(id)
	if text, err := notes.Note(told); err != nil || text != nil {
		return ""
	}
	if err := notes.SetNote(told, []byte(h.o.Clock().UTC().Format(time.DateOnly))); err != nil {
		h.o.Log.Error("it cannot be kept what was told", "id", id, "error", err.Error())
	}
	return privacyLine
}

// erase erases a learner's practice once they have said so, and returns the exit code.
func (h keeping) erase(s ssh.Session, id string, mine *seat, sure bool) int {
	if !sure {
		in := linesOf(s, mine)
		say(s, "All your practice on this host will be gone for good; exams stay as long as their sets say. Type erase to go on:")
		if line, err := in.ReadString('\n'); err != nil || strings.TrimSpace(line) != "erase" {
			say(s, "Nothing was erased.")
			return 1
		}
	}
	if err := h.store(id).Erase(); err != nil {
		say(s.Stderr(), wording.Sentence(err.Error()))
		return 1
	}
	h.activity.forget(id)
	if err := h.hub.say(word{At: h.o.Clock(), Erased: true}); err != nil {
		h.o.Log.Error("the other hosts are not told that practice was erased", "error", err.Error())
	}
	h.o.Log.Info("practice erased", "id", id)
	say(s, "Your practice is erased.")
	return 0
}

// forgetErased forgets whoever has no practice any more: it was erased at another host.
func (h keeping) forgetErased() {
	ctx, cancel := context.WithTimeout(context.Background(), statement)
	defer cancel()
	left, err := h.o.Data.Learners(ctx)
	if err != nil {
		h.o.Log.Error("it cannot be read whose practice was erased", "error", err.Error())
		return
	}
	for _, d := range h.activity.all() {
		if !slices.Contains(left, logName(d.id, "")) {
			h.activity.forget(d.id)
		}
	}
}

// ends is when a set's day of keeping is over, by its own clock.
func (s *set) keptUntil() time.Time {
	year, month, day := s.Keep.Date()
	return time.Date(year, month, day+1, 0, 0, 0, 0, s.zone())
}

// purge erases what is kept of exams whose day is over; of exams that no set of the folder names it is told.
func (h keeping) purge(ctx context.Context) error {
	logs, err := h.o.Data.Learners(ctx)
	if err != nil {
		return err
	}
	unknown := map[string]int{}
	for _, log := range logs {
		id, about := named(log)
		if set, of := strings.CutPrefix(log, orderLog); of {
			id, about = "", set
		}
		if about == "" {
			continue
		}
		at := slices.IndexFunc(h.sets, func(s *set) bool { return s.ID == about })
		switch {
		case at < 0:
			unknown[about]++
		case !h.sets[at].Keep.IsZero() && !h.o.Clock().Before(h.sets[at].keptUntil()):
			err = errors.Join(err, h.forget(h.sets[at], id))
		}
	}
	for set := range unknown {
		h.o.Log.Warn("exams are kept that no set of the folder names, so that they are never erased", "set", set)
	}
	return err
}

// forget erases what is kept of a set: of a learner, or, with an empty id, the orders.
func (h keeping) forget(s *set, id string) error {
	h.o.Log.Info("erased, since its day is over", "set", s.ID, "id", id, "day", s.Keep.Format(time.DateOnly))
	if id == "" {
		return h.orders.forget(s.ID)
	}
	return errors.Join(h.storeOf(id, s.ID).Erase(), h.keep.Direct(id).SetNote(s.copiesNote(), nil))
}

// keepsDays purges now and then until the context ends.
func (h keeping) keepsDays(ctx context.Context) {
	for {
		if !h.keep.State().Away {
			if err := h.purge(ctx); err != nil && ctx.Err() == nil {
				h.o.Log.Error("what is to be erased cannot be", "error", fmt.Sprint(err))
			}
		}
		select {
		case <-ctx.Done():
			return
		case <-time.After(time.Hour):
		}
	}
}
