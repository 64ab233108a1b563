package host

import (
	"fmt"
	"io"
	"net/http"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"unpin/statics/wording"
)

// figures are figures of use, counted since the host was started. They name nobody.
type figures struct {
	since       time.Time
	in, refused atomic.Int64 // sessions let in, sessions not let in
	faults      atomic.Int64 // sessions that failed
	kept        spans        // how long it took to keep a line
}

// spans are durations, counted by how long they are.
type spans struct {
	mutex sync.Mutex
	upTo  [len(bounds) + 1]int64
	sum   time.Duration
}

// bounds are where one count ends and the next begins; what is longer than the last has a count of its own.
var bounds = [...]time.Duration{5 * time.Millisecond, 20 * time.Millisecond, 100 * time.Millisecond, 500 * time.Millisecond, 2 * time.Second}

// add counts one.
func (s *spans) add(d time.Duration) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	s.sum += d
	for i, bound := range bounds {
		if d <= bound {
			s.upTo[i]++
			return
		}
	}
	s.upTo[len(bounds)]++
}

// write writes them as OpenMetrics has a histogram: each count holds those before it.
func (s *spans) write(to io.Writer, name string) {
	s.mutex.Lock()
	defer s.mutex.Unlock()
	n := int64(0)
	for i, count := range s.upTo {
		n += count
		bound := "+Inf"
		if i < len(bounds) {
			bound = fmt.Sprint(bounds[i].Seconds())
		}
		fmt.Fprintf(to, "%s_bucket{le=%q} %d\n", name, bound, n)
	}
	fmt.Fprintf(to, "%s_sum %v\n%s_count %d\n", name, s.sum.Seconds(), name, n)
}

// A figure is one of them, as OpenMetrics names and explains it (OpenMetrics 1.0, its text format).
type figure struct {
	name, kind, help string
	value            int64
}

// figuresNow lists them.
func (h *Host) figuresNow() []figure {
	state, away := h.keep.State(), int64(0)
	if state.Away {
		away = 1
	}
	return []figure{
		{"unpin_sessions", "gauge", "Learners who are at this host.", int64(h.seats.count())},
		{"unpin_class_sessions", "gauge", "Learners who are at any host of the class.", int64(h.present())},
		{"unpin_let_in", "counter", "Sessions that were let in.", h.figures.in.Load()},
		{"unpin_not_let_in", "counter", "Sessions that were not let in.", h.figures.refused.Load()},
		{"unpin_wrong_codes", "counter", "Wrong codes that were typed.", h.door.wrong.Load()},
		{"unpin_faults", "counter", "Sessions that ended by a fault of the host.", h.figures.faults.Load()},
		{"unpin_store_away", "gauge", "1 while the store is away.", away},
		{"unpin_waiting_lines", "gauge", "Lines that are kept here until the store is back.", int64(state.Waiting)},
		{"unpin_up_seconds", "gauge", "How long the host has been up.", int64(time.Since(h.figures.since) / time.Second)},
	}
}

// writeFigures writes them in the text format of OpenMetrics.
func (h *Host) writeFigures(to io.Writer) {
	for _, f := range h.figuresNow() {
		sample := f.name
		if f.kind == "counter" {
			sample += "_total"
		}
		fmt.Fprintf(to, "# TYPE %s %s\n", f.name, f.kind)
		if strings.HasSuffix(f.name, "_seconds") {
			fmt.Fprintf(to, "# UNIT %s seconds\n", f.name)
		}
		fmt.Fprintf(to, "# HELP %s %s\n%s %v\n", f.name, f.help, sample, f.value)
	}
	const keeping = "unpin_keeping_seconds"
	fmt.Fprintf(to, "# TYPE %s histogram\n# UNIT %s seconds\n# HELP %s How long it took to keep what a learner did.\n", keeping, keeping, keeping)
	h.figures.kept.write(to, keeping)
	io.WriteString(to, "# EOF\n")
}

// healthText says how the host is, in one line, and whether it lets learners in.
func (h *Host) healthText() (text string, well bool) {
	select {
	case <-h.stopping:
		return "The host is stopping.", false
	default:
	}
	if state := h.keep.State(); state.Away {
		return fmt.Sprintf("The store is away since %s: nobody can be let in; what those do who are here is kept, %s so far.",
			state.Since.UTC().Format(time.RFC3339), wording.Counted(state.Waiting, "line")), false
	}
	return fmt.Sprintf("All is well: %s here, up for %s.", wording.Counted(h.seats.count(), "learner"), time.Since(h.figures.since).Round(time.Second)), true
}

// Watch answers who asks how the host is: /health in words, with the status 503 (RFC 9110) where nobody can be let in, and /metrics.
func (h *Host) Watch() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /health", func(w http.ResponseWriter, _ *http.Request) {
		text, well := h.healthText()
		w.Header().Set("Content-Type", "text/plain; charset=utf-8")
		if !well {
			w.WriteHeader(http.StatusServiceUnavailable)
		}
		fmt.Fprintln(w, text)
	})
	mux.HandleFunc("GET /metrics", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "application/openmetrics-text; version=1.0.0; charset=utf-8")
		h.writeFigures(w)
	})
	return mux
}
