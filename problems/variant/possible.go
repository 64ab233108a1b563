package variant

import (
	"context"

	"unpin/problems"
)

// A Supply is how many good copies a problem has.
type Supply struct {
	Choices int  // how many sets of numbers there are, Many if there are more
	Good    int  // of those that were judged
	Judged  int  // all of them, or a sample
	All     bool // all were judged
}

// Many is where the counting of choices ends.
const Many = 1_000_000_000

// The most choices that are all judged, and how many are where there are more.
const (
	allJudged = 400
	sampled   = 300
)

// Supply judges all sets of numbers of the problem where these are few, and else the first of its draws.
func (m *Maker) Supply() Supply {
	s := Supply{Choices: combinations(m.changes, Many)}
	if s.All = s.Choices <= allJudged; s.All {
		m.everyChoice(func(choices []int) bool {
			s.count(m.glance(choices))
			return true
		})
		return s
	}
	for d := range Draw(sampled) {
		s.count(m.glance(picks(m.changes, d)))
	}
	return s
}

func (s *Supply) count(reason Reason) {
	if s.Judged++; reason == Good {
		s.Good++
	}
}

// A class has about so many students; and so many draws are looked at to tell whether it would find copies.
const (
	smallClass = 30
	glanced    = 60
)

// Few says why a class would hardly find copies enough of a determinate problem: what was judged, and that in words, or that it has no
// copies. It is nil and empty where there are plenty.
func Few(p *problems.Problem) (*Shortage, string) {
	m, err := New(p)
	if err != nil {
		return nil, err.Error()
	}
	choices, good := combinations(m.changes, Many), 0
	for d := range Draw(glanced) {
		if reason := m.Judge(d); reason == Good || reason == Long {
			good++
		}
		if choices > 2*smallClass && choices/glanced*good >= smallClass {
			return nil, "" // soon, for most problems
		}
	}
	all := choices <= allJudged
	if all && m.judgeAll(context.Background()) != nil {
		return nil, "" // cannot happen: nothing ends it
	}
	few := m.lack(smallClass, all)
	if few.Good >= smallClass {
		return nil, ""
	}
	return few, few.brief()
}
