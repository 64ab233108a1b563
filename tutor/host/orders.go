package host

import (
	"encoding/json"
	"errors"
	"slices"
	"sync"
	"time"

	"unpin/tutor/record"
)

// A deed is what an instructor does to a set. Codes never change.
type deed string

// The deeds.
const (
	openSet    deed = "open"    // from now on, until Until or until it is closed
	closeSet   deed = "close"   // now, for everybody
	pauseSet   deed = "pause"   // the clock stands, and nothing is taken
	goOn       deed = "go on"   // after a pause
	setMinutes deed = "minutes" // how long each has
	setExtra   deed = "extra"   // Who has Percent more time
	giveBack   deed = "give"    // Minutes are given back to Who, or to all
)

// An order is a deed as it is kept: a line of the log that belongs to no learner, so that it survives a restart and reaches every
// host that shares the database.
type order struct {
	At      time.Time `json:"at"`
	By      string    `json:"by"` // the fingerprint of the instructor's key
	Set     string    `json:"set"`
	Do      deed      `json:"do"`
	Who     string    `json:"who,omitempty"` // empty for all
	Until   time.Time `json:"until,omitzero"`
	Minutes int       `json:"minutes,omitempty"`
	Percent int       `json:"percent,omitempty"`
}

// orders are those of all instructors, as far as they were read.
type orders struct {
	log   record.Log
	mutex sync.Mutex
	from  int64 // the place to read on from
	all   []order
}

// read reads what was added since, here or at another host.
func (o *orders) read() error {
	o.mutex.Lock()
	defer o.mutex.Unlock()
	for line, err := range o.log.Lines(o.from) {
		if err != nil {
			return err
		}
		var one order
		if json.Unmarshal(line.Text, &one) == nil && one.Do != "" {
			o.all = append(o.all, one)
		}
		o.from = line.Next
	}
	return nil
}

// add keeps an order, and reads it.
func (o *orders) add(one order) error {
	line, err := json.Marshal(one)
	if err == nil {
		err = o.log.Append(line)
	}
	return errors.Join(err, o.read())
}

// of lists those about a set.
func (o *orders) of(set string) []order {
	o.mutex.Lock()
	defer o.mutex.Unlock()
	var all []order
	for _, one := range o.all {
		if one.Set == set {
			all = append(all, one)
		}
	}
	return slices.Clip(all)
}
