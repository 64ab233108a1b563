package host

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net"
	"strings"
	"time"

	"github.com/charmbracelet/ssh"
	"github.com/charmbracelet/wish"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/tutor/record"
	"unpin/tutor/record/database"
	"unpin/tutor/record/kept"
)

// Options say what a host serves, and to whom.
type Options struct {
	Title    string              // of the class, as it is shown
	Students []variant.Student   // those who may come in
	Keys     []string            // fingerprints of the keys of instructors, who see the board
	Problems []*problems.Problem // besides the library
	Sets     []Set
	Data     *database.DB // what the learners do
	Key      string       // the file of the host's key, made where there is none
	Log      *slog.Logger
	Clock    func() time.Time // what time it is; nil for that of the database
	pulse    pulse            // of connections; zero for the usual one
	machine  func() time.Time // the machine's clock; nil for time.Now
	Name     string           // of this host, for people, where several serve one class
}

// A Host serves lessons.
type Host struct {
	o        Options
	door     *door
	sets     []*set
	orders   *orders
	seats    seats
	activity activity
	keep     *kept.Keeper
	hub      *hub
	figures  figures
	clock    *hostClock
	server   *ssh.Server
	stopping chan struct{} // closed when the host stops
}

// peopleName is the log of the database that belongs to no learner: an id of a roster is never empty.
const peopleName = ""

// New prepares a host.
func New(o Options) (*Host, error) {
	c := newClock(o.machine)
	if o.Clock == nil {
		o.Clock = c.now
	}
	known, err := knownPeople(o.Data)
	if err != nil {
		return nil, err
	}
	h := &Host{o: o, clock: c, sets: served(o.Sets), seats: seats{taken: map[string]*seat{}, waits: patience}, stopping: make(chan struct{}),
		activity: activity{learners: map[string]*doing{}, own: map[string]time.Time{}}}
	h.join()
	known.notes = h.keep.Direct(peopleName)
	h.door = newDoor(h.o, known, func() bool { return h.keep.State().Away })
	h.orders = ordersAbout(h.sets, h.keep.Direct)
	if err := h.orders.read(); err != nil {
		return nil, fmt.Errorf("it cannot be read which sets are open: %w", err)
	}
	h.orders.heard = examsOf(h).heardOrder
	h.server, err = wish.NewServer(
		ssh.EmulatePty(),
		wish.WithHostKeyPath(o.Key),
		wish.WithVersion("unpin"),
		wish.WithPublicKeyAuth(h.door.hearKey),
		wish.WithKeyboardInteractiveAuth(h.door.hearCode),
		wish.WithIdleTimeout(idle),
		func(s *ssh.Server) error { s.ConnCallback = hurry; return nil },
		wish.WithMaxTimeout(longest),
		wish.WithMiddleware(func(ssh.Handler) ssh.Handler { return h.session }),
	)
	if err != nil {
		return nil, fmt.Errorf("the host's key in %s cannot be used: %w", o.Key, err)
	}
	return h, nil
}

// How long a connection may rest, and last, and how long a login may take.
const (
	logins  = 2 * time.Minute
	idle    = 2 * time.Hour
	longest = 12 * time.Hour
)

// Fingerprint is that of the host's key, as clients show it at their first visit.
func (h *Host) Fingerprint() string { return fingerprint(h.server.HostSigners[0].PublicKey()) }

// Serve serves those who come until the context ends; then it lets nobody in, tells those who are there, waits for them, and has what
// they did in the store, all within some seconds.
func (h *Host) Serve(ctx context.Context, at net.Listener) error {
	going, end := context.WithCancel(context.WithoutCancel(ctx))
	defer end()
	if err := h.begin(going); err != nil {
		return errors.Join(err, at.Close())
	}
	stopped := make(chan struct{})
	context.AfterFunc(ctx, func() {
		defer close(stopped)
		at.Close()
		h.stop()
	})
	h.o.Log.Info("serving", "address", at.Addr().String(), "key", h.Fingerprint())
	err := h.server.Serve(at)
	if ctx.Err() != nil {
		<-stopped
		return nil
	}
	return err
}

// NewCodes makes a code for each of those who have none, or with all for everybody, and lists them by id; a code cannot be read again.
func (h *Host) NewCodes(all bool) (ids, codes []string, err error) {
	return h.door.newCodes(all)
}

// store is where the practice of a learner is kept.
func (h *Host) store(id string) *record.Store { return h.storeOf(id, "") }

// storeOf is where the work of a learner in an exam over a set is kept, or else the learner's practice. Practice may be erased by
// itself, so exams stand apart.
func (h *Host) storeOf(id, set string) *record.Store {
	return record.On(watched{h.keep.Log(logName(id, set)), id, set, h.saw, h.figures.kept.add})
}

// logName names a log of a learner. No id has an end of line in it.
func logName(id, set string) string {
	if set == "" {
		return id
	}
	return examLog + set + "\n" + id
}

// examLog begins the names of logs of exams.
const examLog = "exam\n"

// owner is whose log it is by its name.
func owner(log string) string {
	id, _ := named(log)
	return id
}

// named is whose log it is by its name, and in the exam over which set.
func named(log string) (id, set string) {
	if exam, ok := strings.CutPrefix(log, examLog); ok {
		set, id, _ = strings.Cut(exam, "\n")
		return id, set
	}
	return log, ""
}
