package variant

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"sync"

	"unpin/problems"
	"unpin/statics"
)

// A Maker makes copies of one problem. It may be used from several goroutines.
type Maker struct {
	problem *problems.Problem
	changes []Change
	screen  screen

	lock    sync.Mutex
	glanced map[string]Reason // by choices
	judged  map[string]Reason // of those that are rough or overlong at a glance
	spares  map[string]bool   // of those that have long decimals, whether they are good otherwise
}

// New is a maker of copies of a problem. The error says that its frame is not determinate, or that nothing of it can change.
func New(p *problems.Problem) (*Maker, error) {
	s, err := statics.Solve(p.Frame)
	if err != nil {
		return nil, err
	}
	if s.Count.Determinacy() != statics.Determinate {
		return nil, errors.New("its frame is not determinate, as unpin inspect tells")
	}
	m := &Maker{problem: p, changes: changesOf(p), glanced: map[string]Reason{}, judged: map[string]Reason{}, spares: map[string]bool{}}
	if len(m.changes) == 0 {
		return nil, errors.New("nothing in it can change: write under vary what may, such as vary: {h: 3..6 by 0.5}")
	}
	m.screen = newScreen(problems.Solved{Problem: p, Solution: s})
	return m, nil
}

// Changes lists what changes from copy to copy.
func (m *Maker) Changes() []Change { return m.changes }

// At is the copy of a draw, good or not. Where nothing can be read with its numbers, the error says why.
func (m *Maker) At(d Draw) (*problems.Problem, error) {
	return m.problem.With(m.texts(picks(m.changes, d)))
}

// texts are what stands in the file of a copy in place of the problem's numbers.
func (m *Maker) texts(choices []int) map[int]string {
	texts := map[int]string{}
	for i, c := range m.changes {
		c.combine(texts, choices[i])
	}
	return texts
}

// Judge says why the copy of a draw is no good, or that it is.
func (m *Maker) Judge(d Draw) Reason { return m.judge(picks(m.changes, d)) }

// judge remembers what it found.
func (m *Maker) judge(choices []int) Reason {
	if reason := m.glance(choices); reason != rough && reason != overlong {
		return reason
	}
	return remembered(&m.lock, m.judged, choices, func(choices []int) Reason { return m.look(choices, m.screen.judge) })
}

// glance is judge but for copies that are rough or overlong. It remembers.
func (m *Maker) glance(choices []int) Reason {
	return remembered(&m.lock, m.glanced, choices, func(choices []int) Reason { return m.look(choices, m.screen.glance) })
}

// remembered is what was found of choices before, or is found now.
func remembered[T any](lock sync.Locker, found map[string]T, choices []int, find func(choices []int) T) T {
	key := fmt.Sprint(choices)
	lock.Lock()
	it, known := found[key]
	lock.Unlock()
	if known {
		return it
	}
	it = find(choices)
	lock.Lock()
	defer lock.Unlock()
	found[key] = it
	return it
}

// spare reports whether the copy of a draw that has long decimals is good otherwise. It remembers.
func (m *Maker) spare(d Draw) bool {
	return m.spareOf(picks(m.changes, d))
}

// spareOf is spare of choices.
func (m *Maker) spareOf(choices []int) bool {
	return remembered(&m.lock, m.spares, choices, func(choices []int) bool {
		p, err := m.problem.Attempt(m.texts(choices))
		if err != nil {
			return false
		}
		copied, reason := m.screen.solved(p)
		return reason == Good && !m.screen.hides(copied)
	})
}

// lookedAt lists the choices that were looked at, by their keys.
func (m *Maker) lookedAt() []string {
	m.lock.Lock()
	defer m.lock.Unlock()
	return slices.Collect(maps.Keys(m.glanced))
}

// choicesOf are the choices of a key.
func choicesOf(key string) []int {
	var all []int
	for _, text := range strings.Fields(strings.Trim(key, "[]")) {
		n, _ := strconv.Atoi(text) // it was written from a number
		all = append(all, n)
	}
	return all
}

// look makes a copy and has it held against the problem.
func (m *Maker) look(choices []int, against func(*problems.Problem) Reason) Reason {
	if m.own(choices) {
		return OwnNumbers
	}
	p, err := m.problem.Attempt(m.texts(choices))
	if err != nil {
		return Unreadable
	}
	return against(p)
}

// own reports whether choices leave every number as it is.
func (m *Maker) own(choices []int) bool {
	for i, c := range m.changes {
		if choices[i] != c.own {
			return false
		}
	}
	return true
}
