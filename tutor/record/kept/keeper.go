package kept

import (
	"context"
	"errors"
	"sync"
	"time"

	"unpin/tutor/record"
)

// A Base is where lines belong, which may be away.
type Base interface {
	Log(learner string) record.Log
	// AppendOnce adds a line, if the learner has none that is the same.
	AppendOnce(ctx context.Context, learner string, line []byte) error
	Alive(ctx context.Context) error
}

// ErrAway is that the base is away.
var ErrAway = errors.New("the class's store is away")

// A State tells of the base.
type State struct {
	Away    bool
	Since   time.Time // when it went
	Waiting int       // lines
}

// A Keeper stands between logs and their base.
type Keeper struct {
	base    Base
	away    func(error) bool // whether an error is that the base is away
	whose   func(log string) string
	changed func(State)
	tells   sync.Mutex // held from a change to the end of telling it, so that changes are told in their order
	mutex   sync.Mutex
	state   State
	spill   spill
	waiting []waiting         // while the base is away, and until all of them are in it
	size    int               // of what waits, in bytes
	minds   map[string]*minds // by learner at work
	wake    chan struct{}
}

// waiting is a line that is not in the base yet.
type waiting struct {
	Learner string `json:"learner"`
	Line    string `json:"line"`
}

// mostWaiting bounds what waits, in bytes: an hour of a thousand who answer each eight seconds has less.
const mostWaiting = 256 << 20

// New stands before a base; lines that wait are in a file of a folder, named by the host. Functions tell for which
// errors it counts as away, and whose a log is, of which a learner may have several. Of every change another is told, which must return
// soon, and find nothing lost meanwhile.
func New(base Base, folder, host string, away func(error) bool, whose func(log string) string, changed func(State)) *Keeper {
	return &Keeper{base: base, away: away, whose: whose, changed: changed, spill: spill{path: pathOf(folder, host)}, minds: map[string]*minds{}, wake: make(chan struct{}, 1)}
}

// State is that of the base.
func (k *Keeper) State() State {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	return k.state
}

// Lost notes an error of the base; it reports whether it is that the base is away.
func (k *Keeper) Lost(err error) bool {
	if !k.away(err) {
		return false
	}
	k.tells.Lock()
	defer k.tells.Unlock()
	k.mutex.Lock()
	before := k.state.Away
	k.went()
	now := k.state
	k.mutex.Unlock()
	if !before {
		k.changed(now)
	}
	return true
}

// went notes that the base is away; the mutex is held.
func (k *Keeper) went() {
	if k.state.Away {
		return
	}
	k.state.Away, k.state.Since = true, time.Now()
	select {
	case k.wake <- struct{}{}:
	default:
	}
}

// Run looks again and again whether a base that went away is back, until the context ends.
func (k *Keeper) Run(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-k.wake:
		}
		for k.State().Away && ctx.Err() == nil {
			if k.Settle(ctx) != nil {
				select {
				case <-ctx.Done():
				case <-time.After(again):
				}
			}
		}
	}
}

// How often it is looked, and how long that may take.
const (
	again = time.Second
	short = 3 * time.Second
)

// Settle puts what waits into the base, if it is there.
func (k *Keeper) Settle(ctx context.Context) error {
	trying, cancel := context.WithTimeout(ctx, short)
	defer cancel()
	if err := k.base.Alive(trying); err != nil {
		return err
	}
	for {
		one, more := k.next()
		if !more {
			return nil
		}
		if err := k.put(ctx, one); err != nil {
			return err
		}
		k.drop()
	}
}

// put puts one line into the base. One that it refuses for good is kept aside, so that those behind it are not held up.
func (k *Keeper) put(ctx context.Context, one waiting) error {
	putting, cancel := context.WithTimeout(ctx, short)
	defer cancel()
	err := k.base.AppendOnce(putting, one.Learner, []byte(one.Line))
	if err == nil || k.away(err) {
		return err
	}
	return spill{path: k.spill.path + ".refused"}.add(one)
}

// next is the first that waits. Where there is none, the base counts as there again.
func (k *Keeper) next() (waiting, bool) {
	k.tells.Lock()
	defer k.tells.Unlock()
	k.mutex.Lock()
	if len(k.waiting) > 0 {
		defer k.mutex.Unlock()
		return k.waiting[0], true
	}
	before := k.state
	if before.Away {
		if err := k.spill.empty(); err == nil {
			k.state = State{}
		}
	}
	now := k.state
	k.mutex.Unlock()
	if before.Away && !now.Away {
		k.changed(now)
	}
	return waiting{}, false
}

// drop drops the first that waits.
func (k *Keeper) drop() {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	k.size -= len(k.waiting[0].Line)
	k.waiting[0] = waiting{}
	k.waiting = k.waiting[1:]
	k.state.Waiting = len(k.waiting)
}

// hold has a line wait, if the base is away.
func (k *Keeper) hold(one waiting) (held bool, err error) {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	if !k.state.Away {
		return false, nil
	}
	if k.size+len(one.Line) > mostWaiting {
		return true, errors.New("the class's store is away, and too much waits for it here")
	}
	if err := k.spill.add(one); err != nil {
		return true, errors.Join(ErrAway, err)
	}
	k.waiting = append(k.waiting, one)
	k.size += len(one.Line)
	k.state.Waiting = len(k.waiting)
	return true, nil
}
