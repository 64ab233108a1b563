package kept

import (
	"io"
	"iter"
	"sync"

	"unpin/tutor/record"
)

// A log is a learner's, of the base as long as it is there.
type log struct {
	*Keeper
	under   record.Log
	learner string
}

// Log is the log of a learner, by a name of the caller's choice.
func (k *Keeper) Log(learner string) record.Log { return log{k, k.base.Log(learner), learner} }

// Append adds a line: to the base, or, where that is away, to what waits for it.
func (l log) Append(line []byte) error {
	one := waiting{l.learner, string(line)}
	held, err := l.hold(one)
	if !held {
		if err = l.under.Append(line); err != nil && l.Lost(err) {
			if held, again := l.hold(one); held {
				err = again
			}
		}
	}
	if m := l.mind(l.learner); m != nil && err == nil {
		m.add(one.Line)
	}
	return err
}

// Direct is the log of a learner, or of nobody, in which nothing waits and of which nothing is remembered: while the base is away it says so.
func (k *Keeper) Direct(learner string) record.Log { return direct{log{k, k.base.Log(learner), ""}} }

// direct is such a log.
type direct struct{ log }

// Append adds a line to the base.
func (d direct) Append(line []byte) error {
	return d.guarded(func() error { return d.under.Append(line) })
}

// guarded does what needs the base.
func (l log) guarded(do func() error) error {
	if l.State().Away {
		return ErrAway
	}
	err := do()
	if err != nil && l.Lost(err) {
		return ErrAway
	}
	return err
}

// Lines goes over the lines of the base; where it is away, over those that are remembered and those that wait.
func (l log) Lines(from int64) iter.Seq2[record.Line, error] {
	return func(yield func(record.Line, error) bool) {
		m, ended := l.mind(l.learner), false
		fresh := m.begins()
		err := l.guarded(func() error {
			for line, err := range l.under.Lines(from) {
				if err != nil {
					return err
				}
				m.take(from, line)
				from = line.Next
				if ended = !yield(line, nil); ended {
					return nil
				}
			}
			m.whole(from, fresh)
			return nil
		})
		if err == nil || ended {
			return
		}
		all, known := m.rest(from)
		if !known {
			yield(record.Line{}, err)
			return
		}
		for _, line := range all {
			if !yield(line, nil) {
				return
			}
		}
	}
}

// Note is a text of the base, or, where that is away, what it was when it was read.
func (l log) Note(name string) (text []byte, err error) {
	m := l.mind(l.learner)
	err = l.guarded(func() error {
		text, err = l.under.Note(name)
		return err
	})
	if err == nil {
		m.note(name, text)
		return text, nil
	}
	if old, known := m.noted(name); known {
		return old, nil
	}
	return nil, err
}

// SetNote keeps a text in the base.
func (l log) SetNote(name string, text []byte) error {
	return l.guarded(func() error { return l.under.SetNote(name, text) })
}

// Place is where a note stands, for people.
func (l log) Place(name string) string { return l.under.Place(name) }

// Export copies every line of the base.
func (l log) Export(to io.Writer) error {
	return l.guarded(func() error { return l.under.Export(to) })
}

// Erase removes all lines of the base.
func (l log) Erase() error {
	err := l.guarded(l.under.Erase)
	if m := l.mind(l.learner); m != nil && err == nil {
		m.forget()
	}
	return err
}

// A memory is what is remembered of a log of one who is at work: the lines that were read last, from one place to the end, those that came
// in since, and notes. A nil one remembers nothing.
type memory struct {
	mutex sync.Mutex
	known bool
	from  int64 // the place from which all lines are held
	next  int64 // behind them
	lines []record.Line
	fresh []string // added since, in the base or waiting
	notes map[string][]byte
	size  int
}

// mostRemembered bounds a memory, in bytes.
const mostRemembered = 1 << 20

// Remember has the logs of a learner who is at work remembered, until the function is called that it returns.
func (k *Keeper) Remember(learner string) (forget func()) {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	mine := &minds{map[string]*memory{}}
	k.minds[learner] = mine
	return func() {
		k.mutex.Lock()
		defer k.mutex.Unlock()
		if k.minds[learner] == mine {
			delete(k.minds, learner)
		}
	}
}

// mind is what is remembered of a log, or nil.
func (k *Keeper) mind(log string) *memory {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	mine := k.minds[k.whose(log)]
	if mine == nil {
		return nil
	}
	if mine.of[log] == nil {
		mine.of[log] = &memory{notes: map[string][]byte{}}
	}
	return mine.of[log]
}

// minds are what is remembered of the logs of one who is at work.
type minds struct{ of map[string]*memory }

// forget forgets all; the mutex is not held.
func (m *memory) forget() {
	m.mutex.Lock()
	defer m.mutex.Unlock()
	m.known, m.lines, m.fresh, m.notes, m.size = false, nil, nil, map[string][]byte{}, 0
}

// grows counts what is remembered, and forgets the lines where it is too much; the mutex is held.
func (m *memory) grows(by int) {
	if m.size += by; m.size > mostRemembered {
		m.known, m.lines, m.fresh, m.notes, m.size = false, nil, nil, map[string][]byte{}, 0
	}
}

// add remembers a line that was added.
func (m *memory) add(line string) {
	m.mutex.Lock()
	defer m.mutex.Unlock()
	if m.known {
		m.fresh = append(m.fresh, line)
		m.grows(len(line))
	}
}

// begins is how many lines were added before a reading begins.
func (m *memory) begins() int {
	if m == nil {
		return 0
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	return len(m.fresh)
}

// take remembers a line that was read on from a place.
func (m *memory) take(from int64, line record.Line) {
	if m == nil {
		return
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	if !m.known && m.size == 0 {
		m.known, m.from, m.next = true, from, from
	}
	if m.known && from >= m.from && from <= m.next && line.At >= m.next {
		m.lines, m.next = append(m.lines, line), line.Next
		m.grows(len(line.Text))
	}
}

// whole notes that a reading came to the end at a place: what had been added before is among it.
func (m *memory) whole(end int64, fresh int) {
	if m == nil {
		return
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	if !m.known && m.size == 0 {
		m.known, m.from, m.next = true, end, end
	}
	if m.known && m.next >= end && fresh <= len(m.fresh) {
		for _, line := range m.fresh[:fresh] {
			m.size -= len(line)
		}
		m.fresh = m.fresh[fresh:]
	}
}

// rest is what is remembered from a place on, if all of it is.
func (m *memory) rest(from int64) (all []record.Line, known bool) {
	if m == nil {
		return nil, false
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	if !m.known || from < m.from {
		return nil, false
	}
	for _, line := range m.lines {
		if line.At >= from {
			all = append(all, line)
		}
	}
	for i, line := range m.fresh {
		if at := m.next + int64(i); at >= from {
			all = append(all, record.Line{Text: []byte(line), At: at, Next: at + 1})
		}
	}
	return all, true
}

// note remembers a note that was read.
func (m *memory) note(name string, text []byte) {
	if m == nil {
		return
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	m.size -= len(m.notes[name])
	m.notes[name] = text
	m.grows(len(text))
}

// noted is a note that is remembered.
func (m *memory) noted(name string) ([]byte, bool) {
	if m == nil {
		return nil, false
	}
	m.mutex.Lock()
	defer m.mutex.Unlock()
	text, known := m.notes[name]
	return text, known
}
