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

// An order is a deed as it is kept: a line of a log of the set, so that it survives a restart and reaches every
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

// orderLog begins the names of logs of orders: one a set, so that they go with it.
const orderLog = "orders\n"

// orders are those of all instructors about each set, as far as they were read.
type orders struct {
	log   func(name string) record.Log
	sets  []string
	mutex sync.Mutex
	from  map[string]int64 // of each set, the place to read on from
	about map[string][]order
	heard func(order) // what is read that was not there at the start; may be nil
	tells sync.Mutex  // held from reading to telling, so that who reads at once tells in the order of what was ordered
	begun bool        // the start is over; tells is held
}

// ordersAbout are those about sets, in logs.
func ordersAbout(sets []*set, log func(name string) record.Log) *orders {
	o := &orders{log: log, from: map[string]int64{}, about: map[string][]order{}}
	for _, s := range sets {
		o.sets = append(o.sets, s.ID)
	}
	return o
}

// read reads what was added since, here or at another host.
func (o *orders) read() (err error) {
	for _, set := range o.sets {
		err = errors.Join(err, o.readOf(set))
	}
	o.tells.Lock()
	defer o.tells.Unlock()
	o.begun = true
	return err
}

// readOf reads what was added about a set, and tells of it.
func (o *orders) readOf(set string) error {
	o.tells.Lock()
	defer o.tells.Unlock()
	fresh, err := o.added(set)
	for _, one := range fresh {
		if o.heard != nil && o.begun {
			o.heard(one)
		}
	}
	return err
}

// added reads what was added about a set.
func (o *orders) added(set string) (fresh []order, err error) {
	o.mutex.Lock()
	defer o.mutex.Unlock()
	for line, err := range o.log(orderLog + set).Lines(o.from[set]) {
		if err != nil {
			return fresh, err
		}
		var one order
		if json.Unmarshal(line.Text, &one) == nil && one.Do != "" {
			fresh = append(fresh, one)
			o.about[set] = append(o.about[set], one)
		}
		o.from[set] = line.Next
	}
	return fresh, nil
}

// add keeps an order, and reads it.
func (o *orders) add(one order) error {
	line, err := json.Marshal(one)
	if err == nil {
		err = o.log(orderLog + one.Set).Append(line)
	}
	return errors.Join(err, o.readOf(one.Set))
}

// of lists those about a set.
func (o *orders) of(set string) []order {
	o.mutex.Lock()
	defer o.mutex.Unlock()
	return slices.Clone(o.about[set])
}

// forget removes those about a set.
func (o *orders) forget(set string) error {
	o.mutex.Lock()
	defer o.mutex.Unlock()
	delete(o.about, set)
	return o.log(orderLog + set).Erase()
}
