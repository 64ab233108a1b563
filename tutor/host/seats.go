package host

import (
	"crypto/rand"
	"sync"
	"time"
)

// seats are the sessions in hand, one a learner: who logs in again takes over.
type seats struct {
	mutex sync.Mutex
	taken map[string]*seat
	full  bool          // no more are given
	waits time.Duration // for a session to stop by itself, before its connection is cut
}

// A seat is one learner's session.
type seat struct {
	end    chan struct{} // closed when the session has to stop
	why    string        // told then
	once   sync.Once
	left   chan struct{} // closed when it has stopped
	ticket string        // by which all hosts know it
	sat    bool          // they do
	cut    func()        // ends the connection, for one that does not stop
	news   chan string   // what is said to all
	waits  time.Duration // for it to stop by itself

	changed chan struct{} // the times of exams may be otherwise
	exam    string        // the set whose exam is written here, or empty
}

// patience is how long a session has to stop by itself.
const patience = 3 * time.Second

// mostSeats is how many sessions there are at most.
const mostSeats = 2000

// goesOn is told to who has logged in again, here or at another host.
const goesOn = "You have logged in somewhere else, and your lesson goes on there."

// take seats a learner; an earlier session of theirs is ended first, so that two never write one lesson. Without a place it is nil.
func (s *seats) take(id string, cut func()) *seat {
	mine := &seat{end: make(chan struct{}), left: make(chan struct{}), cut: cut, news: make(chan string, 4), changed: make(chan struct{}, 1), ticket: rand.Text(), waits: s.waits}
	for {
		s.mutex.Lock()
		before := s.taken[id]
		if before == nil {
			if s.full || len(s.taken) >= mostSeats {
				s.mutex.Unlock()
				return nil
			}
			s.taken[id] = mine
			s.mutex.Unlock()
			return mine
		}
		s.mutex.Unlock()
		before.stop(goesOn)
		<-before.left
	}
}

// leave gives a seat up.
func (s *seats) leave(id string, mine *seat) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	delete(s.taken, id)
	close(mine.left)
}

// stop asks a session to stop, and says why.
func (s *seat) stop(why string) {
	s.once.Do(func() {
		s.why = why
		close(s.end)
		go func() {
			select {
			case <-s.left:
			case <-time.After(s.waits):
				s.cut()
			}
		}()
	})
}

// told is why the session was asked to stop; empty where it was not.
func (s *seat) told() string {
	select {
	case <-s.end:
		return s.why
	default:
		return ""
	}
}

// close ends all sessions, and waits for them.
func (s *seats) close(why string) {
	s.mutex.Lock()
	s.full = true
	var all []*seat
	for _, one := range s.taken {
		all = append(all, one)
	}
	s.mutex.Unlock()
	for _, one := range all {
		one.stop(why)
	}
	for _, one := range all {
		<-one.left
	}
}

// count is how many sessions there are.
func (s *seats) count() int {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return len(s.taken)
}

// holds reports whether a learner is there, by one ticket or, with an empty one, by any.
func (s *seats) holds(id, ticket string) bool {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	one := s.taken[id]
	return one != nil && (ticket == "" || one.ticket == ticket)
}

// seated notes that all hosts know a seat.
func (s *seats) seated(one *seat) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	one.sat = true
}

// known lists the seats that all hosts know, and those that they do not.
func (s *seats) known() (known, unknown map[string]*seat) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	known, unknown = map[string]*seat{}, map[string]*seat{}
	for id, one := range s.taken {
		if one.sat {
			known[id] = one
		} else {
			unknown[id] = one
		}
	}
	return known, unknown
}

// isSat reports whether all hosts know a seat.
func (s *seats) isSat(one *seat) bool {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	return one.sat
}

// tell says a word to all who are there, and returns to how many; who has not heard the last four yet misses it.
func (s *seats) tell(word string) (heard int) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for _, one := range s.taken {
		select {
		case one.news <- word:
			heard++
		default:
		}
	}
	return heard
}

// tellTo says a word to one, and reports whether they hear it.
func (s *seats) tellTo(id, word string) bool {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	one := s.taken[id]
	if one == nil {
		return false
	}
	select {
	case one.news <- word:
		return true
	default:
		return false
	}
}

// examines notes which exam is written in a session.
func (s *seats) examines(one *seat, set string) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	one.exam = set
}

// ordered says a word to all who write an exam, or with an empty set to all, and of these, where one is named, to that one alone; it has
// everybody look at what is open.
func (s *seats) ordered(set, who, word string) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	for id, one := range s.taken {
		offer(one.changed)
		if word == "" || set != "" && one.exam != set || who != "" && id != who {
			continue
		}
		select {
		case one.news <- word:
		default:
		}
	}
}
