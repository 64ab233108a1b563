package host

import (
	"context"
	"sync"
	"time"
)

// A hostClock goes by the database's, so that all hosts of a class have one time. Between two looks at that one it goes by itself, whatever
// is done to the clock of the machine, and it never goes back.
type hostClock struct {
	machine func() time.Time
	mutex   sync.Mutex
	read    time.Time // what the database's said
	at      time.Time // when that was, by the machine
	last    time.Time
}

// back is by how much a clock may have gone wrong by itself: beyond it, it is followed back.
const back = 5 * time.Second

// newClock is one that goes by the machine until it is set.
func newClock(machine func() time.Time) *hostClock {
	if machine == nil {
		machine = time.Now
	}
	now := machine()
	return &hostClock{machine: machine, read: now, at: now}
}

// now is what time it is.
func (c *hostClock) now() time.Time {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	now := c.read.Add(c.machine().Sub(c.at)).Round(0)
	if now.Before(c.last) {
		now = c.last
	}
	c.last = now
	return now
}

// set asks three times for the time, and takes the answer that came soonest: it was in the middle between question and answer.
func (c *hostClock) set(ctx context.Context, ask func(context.Context) (time.Time, error)) error {
	best := time.Hour
	var read, at time.Time
	for range 3 {
		asked := c.machine()
		said, err := ask(ctx)
		if err != nil {
			return err
		}
		if took := c.machine().Sub(asked); took < best {
			best, read, at = took, said, asked.Add(took/2)
		}
	}
	c.mutex.Lock()
	defer c.mutex.Unlock()
	if c.read, c.at = read, at; c.last.Sub(read.Add(c.machine().Sub(at))) > back {
		c.last = time.Time{} // somebody has put the clock right
	}
	return nil
}
