package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// mostNamed bounds the ids that are named at once.
const mostNamed = 20

// checkClass tells who is not on the roster, and who on it has no paper, or none of a problem.
func (m mark) checkClass(cmd *cobra.Command, desk *desk, papers []*marking.Paper, roster *variant.Roster) {
	if roster == nil {
		return
	}
	var unknown, absent []string
	for _, p := range papers {
		if !slices.ContainsFunc(roster.Students, func(s variant.Student) bool { return s.ID == p.Student }) {
			unknown = append(unknown, p.Student)
		}
	}
	for _, s := range roster.Students {
		if !slices.ContainsFunc(papers, func(p *marking.Paper) bool { return s.ID == p.Student }) {
			absent = append(absent, s.ID)
		}
	}
	tell := func(ids []string, what string) {
		if len(ids) > 0 {
			fmt.Fprintf(cmd.ErrOrStderr(), "%s: %s.\n", what, notation.VisibleLines(idsText(ids)))
		}
	}
	tell(unknown, "not on the roster")
	tell(absent, "on the roster, without a paper")
	for _, t := range desk.tasks {
		if len(desk.tasks) > 1 {
			tell(desk.lacking(t, papers, roster), "without a paper of "+notation.Visible(t.problem.Name))
		}
	}
}

// nameless is what a paper is called on which no student is named.
const nameless = "a paper without a name"

// idsText lists ids in their order, each once, and not too many.
func idsText(ids []string) string {
	slices.Sort(ids)
	ids = slices.Compact(ids)
	if n := len(ids); n > mostNamed {
		ids = append(ids[:mostNamed:mostNamed], fmt.Sprintf("%d others", n-mostNamed))
	}
	for i, id := range ids {
		if id == "" {
			ids[i] = nameless
		}
	}
	return notation.List(ids)
}

// lacking are those of a roster who have papers, but none of one of the problems.
func (d *desk) lacking(t *task, papers []*marking.Paper, roster *variant.Roster) []string {
	some, this := map[string]bool{}, map[string]bool{}
	for _, p := range papers {
		of, _, why := d.of(p)
		some[p.Student] = true
		this[p.Student] = this[p.Student] || why == "" && of == t
	}
	var all []string
	for _, s := range roster.Students {
		if some[s.ID] && !this[s.ID] {
			all = append(all, s.ID)
		}
	}
	return all
}

// checkTimes tells which papers have answers from after the end of the set, and which times cannot be read.
func (m mark) checkTimes(cmd *cobra.Command, desk *desk, papers []*marking.Paper, roster *variant.Roster) {
	set := desk.means.set
	for _, p := range papers {
		var last time.Time
		for _, e := range p.Entries {
			if e.Time == "" {
				continue
			}
			place := time.UTC
			if set != nil && !set.Closes.IsZero() {
				place = set.Closes.Location()
			}
			t, ok := problems.ReadMoment(e.Time, place)
			if !ok {
				fmt.Fprintf(cmd.ErrOrStderr(), "line %d: the time %s cannot be read: write it like 2026-12-04T10:00+01:00.\n", e.Line, notation.Visible(e.Time))
				break
			}
			if t.After(last) {
				last = t
			}
		}
		if set == nil || set.Closes.IsZero() || last.IsZero() {
			continue
		}
		if end := endFor(set, roster, p.Student); last.After(end) {
			late := int((last.Sub(end) + time.Minute - 1) / time.Minute)
			fmt.Fprintf(cmd.ErrOrStderr(), "late, by %s: %s, %s.\n", wording.Counted(late, "minute"), notation.Visible(strings.TrimSpace(p.Student+" "+p.Problem+" "+p.Code)), last.Format("2006-01-02 15:04 -07:00"))
		}
	}
}

// endFor is when a set ends for a student: more time counts from when it closes.
func endFor(set *problems.Set, roster *variant.Roster, student string) time.Time {
	end := set.Closes
	if roster == nil {
		return end
	}
	for _, s := range roster.Students {
		if s.ID == student {
			return end.Add(time.Duration(set.Minutes) * time.Minute * time.Duration(s.Extra) / 100)
		}
	}
	return end
}
