package record

import (
	"iter"
	"slices"
	"time"
)

// A step is what is counted of a record: the record itself, or, along a member, each place by itself; and of one that went wrong by one
// mistake what else it asked for, which was right: otherwise a skill that never comes alone would be counted where it is missed alone.
type step struct {
	at             time.Time
	frame          string
	right          bool
	skills, missed []string
}

// steps are those of a record.
func (r Record) steps() []step {
	var all []step
	switch {
	case len(r.Along) > 0:
	case r.Outcome != StepRight && len(r.Right) > 0:
		return []step{{r.At, r.Frame, true, r.Right, nil}, {r.At, r.Frame, false, r.Missed, r.Missed}}
	default:
		return []step{{r.At, r.Frame, r.Outcome == StepRight, r.Skills, r.Missed}}
	}
	for _, p := range r.Along {
		asked := []string{p.Skill}
		if p.Outcome != StepRight && len(p.Missed) > 0 {
			asked = p.Missed
		}
		all = append(all, step{r.At, r.Frame, p.Outcome == StepRight, asked, p.Missed})
	}
	return all
}

// tried goes over the skills that a record tells something of, for each of its steps.
func (r Record) tried() iter.Seq[string] {
	return func(yield func(string) bool) {
		for _, st := range r.steps() {
			for skill := range st.tried() {
				if !yield(skill) {
					return
				}
			}
		}
	}
}

// tried goes over the skills that a step tells something of: where it went wrong only those that were wanting, where that is known.
func (st step) tried() iter.Seq[string] {
	return func(yield func(string) bool) {
		for _, skill := range st.skills {
			if !st.right && len(st.missed) > 0 && !slices.Contains(st.missed, skill) {
				continue
			}
			if !yield(skill) {
				return
			}
		}
	}
}

// wanting reports whether a step shows the skills that it tells something of to be wanting: it went wrong, and by no other.
func (st step) wanting() bool { return !st.right && (len(st.missed) > 0 || len(st.skills) == 1) }
