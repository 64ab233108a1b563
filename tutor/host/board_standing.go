package host

import (
	"fmt"
	"sync"
	"time"
)

// A standing is how far a class is with an exam. Every paper has to be read for it, so that it is made beside the board, and not each second.
type standing struct {
	mutex sync.Mutex
	about *set
	text  string
	made  time.Time
	busy  bool
}

// renewed is how old a standing may become.
const renewed = 5 * time.Second

// look has the standing of an exam made, unless there is a fresh one or it is being made.
func (st *standing) look(h exams, s *set) {
	st.mutex.Lock()
	defer st.mutex.Unlock()
	if st.busy || st.about == s && time.Since(st.made) < renewed {
		return
	}
	st.busy = true
	go func() {
		text := h.standing(s)
		st.mutex.Lock()
		defer st.mutex.Unlock()
		st.about, st.text, st.made, st.busy = s, text, time.Now(), false
	}()
}

// of is the standing of an exam; empty where it is not known.
func (st *standing) of(s *set) string {
	st.mutex.Lock()
	defer st.mutex.Unlock()
	if st.about != s {
		return ""
	}
	return st.text
}

// standing says how many of the roster are how far with an exam.
func (h exams) standing(s *set) string {
	n := map[stage]int{}
	for _, id := range h.roll() {
		at, _, err := h.stageOf(s, id)
		if err != nil {
			return ""
		}
		n[at]++
	}
	return fmt.Sprintf("%d not begun, %d writing, %d handed in", n[unbegun], n[writing], n[handedIn])
}
