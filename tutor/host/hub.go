package host

import (
	"context"
	"encoding/json"
	"log/slog"
	"maps"
	"sync"
	"time"

	"unpin/tutor/record/database"
	"unpin/tutor/record/kept"
)

// A hub ties a host to the others of its class by their database: who is seated where, and what is added anywhere. A notice from
// another host says only that there is something new; what it is, is read, so that a notice that is missed costs no more than a beat.
type hub struct {
	data  *database.DB
	keep  *kept.Keeper
	seats *seats
	log   *slog.Logger
	host  string // this one, as it was started
	name  string // of this one, for people
	beat  time.Duration
	heard func(learner string, line []byte, old bool) // what was added anywhere; old is from before the start

	look chan struct{} // something may be new
	news chan struct{} // others have to be told

	mutex  sync.Mutex
	there  []database.Seat
	hosts  map[string]string // name by host, of those that are there
	place  int64             // lines were read up to it
	recent map[int64]bool    // places of those that were read last
}

// How often a host says that it is there; how many lines before the last one are read again, since one may become visible late; and how
// many from before the start are read.
const (
	beats   = 3 * time.Second
	margin  = 64
	history = 3000
)

// statement bounds what a hub asks of the database.
const statement = 4 * time.Second

// asks asks something of the database, unless that is away; it reports whether it went well.
func (u *hub) asks(ctx context.Context, ask func(context.Context) error) bool {
	if u.keep.State().Away {
		return false
	}
	short, cancel := context.WithTimeout(ctx, statement)
	defer cancel()
	err := ask(short)
	switch {
	case err == nil || ctx.Err() != nil:
	case !u.data.Shared() && database.Away(err): // a file is not away: the disk is slow, or another host is writing
		u.log.Info("the store is slow", "error", err.Error())
	case !u.keep.Lost(err):
		u.log.Error("the store refuses", "error", err.Error())
	}
	return err == nil
}

// arrive takes the place of an earlier host of the same name, takes up what such a one has left, and reads what was added lately.
func (u *hub) arrive(ctx context.Context) error {
	if err := u.data.Depart(ctx, u.host, u.name); err != nil {
		return err
	}
	if err := u.data.Beat(ctx, u.host, u.name); err != nil {
		return err
	}
	if err := u.takeUp(ctx); err != nil {
		return err
	}
	last, err := u.data.Last(ctx)
	if err != nil {
		return err
	}
	all, err := u.data.Since(ctx, last-history, history)
	if err != nil {
		return err
	}
	u.place = last
	for _, one := range all {
		u.recent[one.Place] = true
		u.place = max(u.place, one.Place)
		u.heard(one.Learner, one.Line, true)
	}
	return u.readSeats(ctx)
}

// takeUp takes up lines that hosts which are gone have left in the folder.
func (u *hub) takeUp(ctx context.Context) error {
	hosts, err := u.data.Hosts(ctx)
	if err != nil {
		return err
	}
	lines, err := u.keep.TakeUp(ctx, func(host string) bool { return hosts[host] != "" })
	if lines > 0 {
		u.log.Info("what an earlier host had kept is in the store", "lines", lines)
	}
	return err
}

// run goes along with the others until the context ends.
func (u *hub) run(ctx context.Context) {
	go u.data.Listen(ctx, func(by string) {
		if by != u.host {
			u.poke()
		}
	})
	go u.tells(ctx)
	ticks := time.NewTicker(u.beat)
	defer ticks.Stop()
	for n := 1; ; n++ {
		select {
		case <-ctx.Done():
			return
		case <-u.look:
		case <-ticks.C:
			u.asks(ctx, func(ctx context.Context) error { return u.data.Beat(ctx, u.host, u.name) })
			if n%20 == 0 {
				u.asks(ctx, u.takeUp)
				u.asks(ctx, u.data.Fade)
			}
		}
		u.asks(ctx, u.readLines)
		if here, others := u.seats.known(); u.asks(ctx, u.readSeats) {
			u.settle(ctx, here)
			u.introduce(ctx, others)
		}
	}
}

// poke has the hub look at once.
func (u *hub) poke() { offer(u.look) }

// changed has the others look soon.
func (u *hub) changed() { offer(u.news) }

// offer puts a sign into a channel that holds one.
func offer(to chan struct{}) {
	select {
	case to <- struct{}{}:
	default:
	}
}

// apart is from one notice to the next at least.
const apart = 100 * time.Millisecond

// tells tells the others, in a flood of changes now and then.
func (u *hub) tells(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-u.news:
			u.asks(ctx, func(ctx context.Context) error { return u.data.Tell(ctx, u.host) })
			time.Sleep(apart)
		}
	}
}

// readLines reads what was added.
func (u *hub) readLines(ctx context.Context) error {
	for {
		all, err := u.data.Since(ctx, u.place-margin, 10*margin)
		if err != nil {
			return err
		}
		for _, one := range all {
			if !u.recent[one.Place] {
				u.recent[one.Place] = true
				u.heard(one.Learner, one.Line, false)
			}
			u.place = max(u.place, one.Place)
		}
		maps.DeleteFunc(u.recent, func(place int64, _ bool) bool { return place <= u.place-margin })
		if len(all) < 10*margin {
			return nil
		}
	}
}

// readSeats reads who is where.
func (u *hub) readSeats(ctx context.Context) error {
	there, err := u.data.Seats(ctx, "")
	if err != nil {
		return err
	}
	hosts, err := u.data.Hosts(ctx)
	if err != nil {
		return err
	}
	u.mutex.Lock()
	defer u.mutex.Unlock()
	u.there, u.hosts = there, hosts
	return nil
}

// elsewhere lists who is at other hosts, each with the host's name.
func (u *hub) elsewhere() map[string]string {
	u.mutex.Lock()
	defer u.mutex.Unlock()
	all := map[string]string{}
	for _, s := range u.there {
		if s.Host != u.host {
			all[s.Learner] = s.Name
		}
	}
	return all
}

// several reports whether there are other hosts.
func (u *hub) several() bool {
	u.mutex.Lock()
	defer u.mutex.Unlock()
	return len(u.hosts) > 1
}

// settle brings the sessions here, as they were before the seats of the database were read, and those seats together: of a learner's
// sessions the latest goes on.
func (u *hub) settle(ctx context.Context, here map[string]*seat) {
	u.mutex.Lock()
	there := u.there
	u.mutex.Unlock()
	latest, known := map[string]database.Seat{}, map[string]bool{}
	for _, s := range there {
		latest[s.Learner], known[s.Ticket] = s, true
	}
	for id, mine := range here {
		switch last, taken := latest[id]; {
		case taken && last.Host != u.host:
			mine.stop(goesOn)
		case !known[mine.ticket]: // this host was thought to be gone
			u.asks(ctx, func(ctx context.Context) error { return u.data.Sit(ctx, mine.ticket, id, u.host) })
		}
	}
	for _, s := range there {
		if s.Host == u.host && !u.seats.holds(s.Learner, s.Ticket) {
			u.asks(ctx, func(ctx context.Context) error { return u.data.Leave(ctx, s.Ticket) })
		}
	}
}

// alone reports whether there is nobody whom seats concern: a file has one host, but while it gives way to the next.
func (u *hub) alone() bool { return !u.data.Shared() && !u.several() }

// introduce has sessions known to all hosts that were taken while this one was alone.
func (u *hub) introduce(ctx context.Context, unknown map[string]*seat) {
	for id, mine := range unknown {
		if !u.alone() && u.asks(ctx, func(ctx context.Context) error { return u.data.Sit(ctx, mine.ticket, id, u.host) }) {
			u.seats.seated(mine)
		}
	}
}

// sit has a session known to all hosts, and waits until an earlier one of the same learner at another host has ended.
func (u *hub) sit(ctx context.Context, id string, mine *seat) {
	if u.alone() || !u.asks(ctx, func(ctx context.Context) error { return u.data.Sit(ctx, mine.ticket, id, u.host) }) {
		return
	}
	u.seats.seated(mine)
	u.changed()
	for end := time.Now().Add(patience + patience/3); ; time.Sleep(apart) {
		before := u.before(ctx, id, mine.ticket)
		if len(before) == 0 || mine.told() != "" {
			return
		}
		if time.Now().After(end) {
			for _, ticket := range before { // it does not answer
				u.asks(ctx, func(ctx context.Context) error { return u.data.Leave(ctx, ticket) })
			}
			return
		}
	}
}

// before lists the tickets of a learner's earlier seats at hosts that are there.
func (u *hub) before(ctx context.Context, id, ticket string) (all []string) {
	u.asks(ctx, func(ctx context.Context) error {
		there, err := u.data.Seats(ctx, id)
		for _, s := range there {
			if s.Ticket == ticket {
				return err
			}
			all = append(all, s.Ticket)
		}
		return err
	})
	return all
}

// leave has a seat given up known to all hosts.
func (u *hub) leave(ctx context.Context, mine *seat) {
	if u.seats.isSat(mine) && u.asks(ctx, func(ctx context.Context) error { return u.data.Leave(ctx, mine.ticket) }) {
		u.changed()
	}
}

// A word is what an instructor says to one or to all, or a host to the others: a line of the log that belongs to no learner.
type word struct {
	At   time.Time `json:"at"`
	Word string    `json:"word"`
	To   string    `json:"to,omitempty"` // a learner, or empty for all

	Erased bool `json:"erased,omitempty"` // in place of a word: somebody's practice is gone; whose, is not kept
}

// say says a word to one or to all, at every host.
func (u *hub) say(said word) error {
	line, err := json.Marshal(said)
	if err == nil {
		err = u.keep.Direct(peopleName).Append(line)
	}
	u.poke()
	u.changed()
	return err
}
