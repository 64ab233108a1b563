package host

import (
	"context"
	"crypto/rand"
	"encoding/json"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"unpin/statics/wording"
	"unpin/tutor/record"
	"unpin/tutor/record/database"
	"unpin/tutor/record/kept"
)

// join prepares what ties the host to its store, and by it to others.
func (h *Host) join() {
	id := rand.Text()[:12]
	h.figures.since = time.Now()
	if h.o.pulse == (pulse{}) {
		h.o.pulse = pulse{pulses, silence}
	}
	h.keep = kept.New(h.o.Data, filepath.Dir(h.o.Key), id, database.Away, owner, h.storeChanged)
	h.hub = &hub{data: h.o.Data, keep: h.keep, seats: &h.seats, log: h.o.Log, host: id, name: h.o.Name, beat: beats, heard: h.heardLine,
		look: make(chan struct{}, 1), news: make(chan struct{}, 1), recent: map[int64]bool{}}
	if h.hub.name == "" {
		h.hub.name = id
	}
}

// begin goes along with the store and the other hosts until the context ends.
func (h *Host) begin(ctx context.Context) error {
	if err := h.setClock(ctx); err != nil {
		return fmt.Errorf("the time cannot be read: %w", err)
	}
	if err := h.hub.arrive(ctx); err != nil {
		return fmt.Errorf("the class cannot be read: %w", err)
	}
	go h.keep.Run(ctx)
	go h.hub.run(ctx)
	go h.keepTime(ctx)
	go keepingOf(h).keepsDays(ctx)
	return nil
}

// setClock sets the clock by the database's, or, where that is the machine's, by it.
func (h *Host) setClock(ctx context.Context) error {
	ask := func(context.Context) (time.Time, error) { return h.clock.machine(), nil }
	if h.o.Data.Shared() {
		ask = h.o.Data.Now
	}
	return h.clock.set(ctx, ask)
}

// keepTime sets the clock again and again.
func (h *Host) keepTime(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-time.After(time.Minute):
			h.hub.asks(ctx, h.setClock)
		}
	}
}

// settled is how long it is tried at the end to have all in the store.
const settled = 5 * time.Second

// stop ends all sessions, and has what was done in the store.
func (h *Host) stop() {
	close(h.stopping)
	h.seats.close("The host is stopping. What you have done is kept: log in again later.")
	h.server.Close()
	ctx, cancel := context.WithTimeout(context.Background(), settled)
	defer cancel()
	if h.keep.State().Away {
		if err := h.keep.Settle(ctx); err != nil {
			h.o.Log.Warn("the store is away: what waits is kept in a file here, and goes into the store when a host is started in this folder", "waiting", h.keep.State().Waiting, "error", err.Error())
		}
	}
	h.hub.asks(ctx, func(ctx context.Context) error { return h.o.Data.Depart(ctx, h.hub.host, h.hub.host) })
	h.o.Log.Info("stopped")
}

// storeChanged tells those who are there that the store went away or is back.
func (h *Host) storeChanged(now kept.State) {
	if now.Away {
		h.o.Log.Warn("the store is away")
		h.seats.tell("The class's store is away. Go on: what you do is kept here until it is back.")
		return
	}
	h.o.Log.Info("the store is back, and has all that waited")
	h.seats.tell("The class's store is back, and has all that you did.")
	h.hub.poke()
	h.hub.changed()
}

// storeText says on the board that the store is away, and how much waits for it.
func (h *Host) storeText() string {
	state := h.keep.State()
	if !state.Away {
		return ""
	}
	return fmt.Sprintf("; the store is away since %s, %s here", state.Since.Format(time.TimeOnly), wording.Counted(state.Waiting, "line")+" kept")
}

// saw takes what a learner has added here.
func (h *Host) saw(id, set string, r record.Record) {
	h.activity.saw(id, set, r)
	h.hub.changed()
}

// heardLine takes a line that was added at any host: of a learner, or of the class.
func (h *Host) heardLine(learner string, line []byte, old bool) {
	if learner == peopleName {
		var said word
		switch {
		case json.Unmarshal(line, &said) != nil || old:
		case said.Erased:
			keepingOf(h).forgetErased()
		case said.Word == "":
		case said.To != "":
			h.seats.tellTo(said.To, fromInstructor+said.Word)
		default:
			h.seats.tell(fromInstructor + said.Word)
		}
		return
	}
	if set, ordered := strings.CutPrefix(learner, orderLog); ordered {
		if err := h.orders.readOf(set); err != nil {
			h.o.Log.Error("what was ordered cannot be read", "set", set, "error", err.Error())
		}
		return
	}
	var r record.Record
	if json.Unmarshal(line, &r) == nil && h.o.Clock().Sub(r.At) < longest {
		id, set := named(learner)
		h.activity.heard(id, set, r)
	}
}

// where is at which host a learner is, by its name, which is empty where there is but one host.
func (h *Host) where(id string) (host string, there bool) {
	if h.seats.holds(id, "") {
		if h.hub.several() {
			host = h.hub.name
		}
		return host, true
	}
	host, there = h.hub.elsewhere()[id]
	return host, there
}

// present is how many learners are there, at all hosts.
func (h *Host) present() int {
	n := h.seats.count()
	for id := range h.hub.elsewhere() {
		if !h.seats.holds(id, "") {
			n++
		}
	}
	return n
}
