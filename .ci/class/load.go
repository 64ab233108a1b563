package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"slices"
	"sync"
	"time"
)

// times are durations that several clients measure.
type times struct {
	mutex  sync.Mutex
	all    []time.Duration
	faults map[string]int
}

// add takes one, or why there is none.
func (t *times) add(d time.Duration, err error) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	if err != nil {
		if t.faults == nil {
			t.faults = map[string]int{}
		}
		t.faults[err.Error()]++
		return
	}
	t.all = append(t.all, d)
}

// tell prints the middle, the 99th percentile and the longest.
func (t *times) tell(what string) {
	t.mutex.Lock()
	defer t.mutex.Unlock()
	slices.Sort(t.all)
	if n := len(t.all); n > 0 {
		fmt.Printf("%s: %d; middle %v, 99 of 100 within %v, longest %v\n", what, n, t.all[n/2].Round(time.Millisecond),
			t.all[(n*99-1)/100].Round(time.Millisecond), t.all[n-1].Round(time.Millisecond))
	}
	for fault, n := range t.faults {
		fmt.Printf("%s: %d times: %s\n", what, n, fault)
	}
}

// load has all log in, work and rest.
func (c *class) load(within, work, pace, rest time.Duration) error {
	var logins, keys times
	var group sync.WaitGroup
	clients := make([]*client, len(c.ids))
	empty, idle := uses(c.host.Process.Pid)
	for i, code := range c.codes {
		group.Go(func() {
			time.Sleep(within * time.Duration(i) / time.Duration(len(c.ids)))
			begun := time.Now()
			one, err := login(c.address, code, "")
			if err == nil {
				err = one.sees("for today", time.Minute)
			}
			if logins.add(time.Since(begun), err); err == nil {
				clients[i] = one
			}
		})
	}
	group.Wait()
	logins.tell("logins, from the call to the list of problems")
	memory, before := uses(c.host.Process.Pid)
	_, own := uses(os.Getpid())
	fmt.Printf("processor time of the host for a login: %v\n", ((before - idle) / time.Duration(len(c.ids))).Round(time.Millisecond))
	fmt.Printf("memory of the host: %.0f MB, empty %.0f MB: %.2f MB a learner\n", memory, empty, (memory-empty)/float64(len(c.ids)))
	end := time.Now().Add(work)
	for _, one := range clients {
		if one == nil {
			continue
		}
		group.Go(func() { one.work(end, pace, &keys) })
	}
	group.Wait()
	keys.tell("keys, from the key to what it changes")
	memory, after := uses(c.host.Process.Pid)
	_, ownAfter := uses(os.Getpid())
	fmt.Printf("while they worked, in %v: processor time of the host %v, of the clients %v; memory %.2f MB a learner\n", work, after-before, ownAfter-own, (memory-empty)/float64(len(c.ids)))
	time.Sleep(rest)
	_, rested := uses(c.host.Process.Pid)
	fmt.Printf("while they rested, in %v: processor time of the host %v\n", rest, rested-after)
	for _, one := range clients {
		if one != nil {
			one.conn.Close()
		}
	}
	return nil
}

// again is where the script goes on from when it is through.
const again = 6

// script is what each does: looks through the list, begins a lesson, and again and again answers, looks at the help, and asks for help.
var script = []string{"\x1b[B", "\x1b[B", "\x1b[B", "\x1b[A", "\r", "\r", "4", "\x7f", "2", "\r", "?", "\x1b", "h", "i", "n", "t", "\r", "t", "e", "l", "l", "\r"}

// work types until a time, at a person's pace.
func (c *client) work(end time.Time, pace time.Duration, keys *times) {
	for i := 0; ; i++ {
		time.Sleep(pace/2 + rand.N(pace))
		if time.Now().After(end) {
			return
		}
		if i == len(script) {
			i = again
		}
		keys.add(c.answered(script[i]))
	}
}
