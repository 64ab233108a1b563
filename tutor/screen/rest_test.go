package screen

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/tutor"
)

// BenchmarkAtRest runs a hundred lessons in one process while nobody types: how often its threads wake in a second, how
// much processor time that takes, and the memory of a lesson. The second line is the same with bubbletea's own renderer.
func BenchmarkAtRest(b *testing.B) {
	const lessons = 100
	for name, start := range map[string]func(*Model, io.Reader) error{
		"painted when something came": func(m *Model, in io.Reader) error {
			s := &shown{program: m, terminal: &terminal{in: in, out: io.Discard}}
			s.Update(tea.WindowSizeMsg{Width: 120, Height: 40})
			return s.run()
		},
		"bubbletea's renderer": func(m *Model, in io.Reader) error {
			size(m, 120, 40)
			_, err := tea.NewProgram(m, tea.WithInput(in), tea.WithOutput(io.Discard), tea.WithoutSignalHandler()).Run()
			return err
		},
	} {
		b.Run(name, func(b *testing.B) {
			memory := inUse()
			var typists []*io.PipeWriter
			ended := make(chan error)
			for range lessons {
				m := New(Options{Lesson: lesson(b, "sawmill-portal", tutor.Values, false), Colour: true})
				in, typist := io.Pipe()
				typists = append(typists, typist)
				go func() { ended <- start(m, in) }()
				io.WriteString(typist, "7")
			}
			time.Sleep(time.Second)
			memory = inUse() - memory
			b.ResetTimer()
			before, began := threadWakeups(b), time.Now()
			for range b.N {
				time.Sleep(3 * time.Second)
			}
			b.ReportMetric(float64(threadWakeups(b)-before)/time.Since(began).Seconds(), "wakeups/s")
			b.ReportMetric(float64(memory)/lessons/1000, "kB/lesson")
			for _, typist := range typists {
				typist.CloseWithError(io.EOF)
				if name == "bubbletea's renderer" {
					continue // which does not end with its input
				}
				if err := <-ended; err != nil {
					b.Error(err)
				}
			}
		})
	}
}

// inUse is the memory in use, in bytes.
func inUse() uint64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapInuse + m.StackInuse
}

// threadWakeups is how often the threads of this process have waited for something and gone on.
func threadWakeups(b *testing.B) (n int) {
	threads, _ := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/status", os.Getpid()))
	if len(threads) == 0 {
		b.Skip("needs /proc")
	}
	for _, name := range threads {
		text, _ := os.ReadFile(name)
		if _, after, ok := strings.Cut(string(text), "\nvoluntary_ctxt_switches:"); ok {
			count, _, _ := strings.Cut(after, "\n")
			k, _ := strconv.Atoi(strings.TrimSpace(count))
			n += k
		}
	}
	return n
}
