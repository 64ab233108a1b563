package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"os"
	"runtime"
	"strings"
	"sync"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/tutor/marking"
)

// A task is a problem that is marked, with its place and points.
type task struct {
	problem *problems.Problem
	source  variant.Source
	points  exact.Num
	marker  *marking.Marker // of the problem's own numbers
	maker   func() (*variant.Maker, error)
}

// A desk is where papers are marked: the problems, and the copies that were handed out.
type desk struct {
	tasks  []*task
	copies map[string]*marking.Marker // by code
	mutex  sync.Mutex
	faults []marking.Unread
}

// newDesk is the desk for the problem that a word means.
func newDesk(cmd *cobra.Command, word string) (*desk, error) {
	p, err := find(word, cmd.InOrStdin())
	if err != nil {
		return nil, err
	}
	warn(cmd, p)
	t, err := newTask(p, variant.Source{Set: p.Name, Place: 1}, exact.Num{})
	if err != nil {
		return nil, err
	}
	return &desk{tasks: []*task{t}, copies: map[string]*marking.Marker{}}, nil
}

func newTask(p *problems.Problem, source variant.Source, points exact.Num) (*task, error) {
	marker, err := markerOf(p)
	if err != nil {
		return nil, err
	}
	maker := sync.OnceValues(func() (*variant.Maker, error) { return variant.New(p) })
	return &task{problem: p, source: source, points: pointsOf(points), marker: marker, maker: maker}, nil
}

// markerOf is what papers of a problem are held against: the words that it says are to be found.
func markerOf(p *problems.Problem) (*marking.Marker, error) {
	s, err := statics.Solve(p.Frame)
	if err != nil {
		return nil, err
	}
	m, err := marking.New(problems.Solved{Problem: p, Solution: s}, p.Find)
	if err != nil {
		return nil, fmt.Errorf("unpin: %w", err)
	}
	return m, nil
}

// mark marks all papers, on all cores, in their order.
func (d *desk) mark(answers *marking.Answers, scheme *marking.Scheme) []*marking.Result {
	all := make([]*marking.Result, len(answers.Papers))
	var next sync.Mutex
	var group sync.WaitGroup
	at := 0
	for range runtime.GOMAXPROCS(0) {
		group.Go(func() {
			for {
				next.Lock()
				i := at
				at++
				next.Unlock()
				if i >= len(all) {
					return
				}
				all[i] = d.markOne(answers.Papers[i], scheme)
			}
		})
	}
	group.Wait()
	var marked []*marking.Result
	for i, r := range all {
		if r != nil {
			marked = append(marked, r)
		} else {
			d.refuse(answers.Papers[i])
		}
	}
	return marked
}

// markOne marks a paper; nil where it is of no problem here.
func (d *desk) markOne(p *marking.Paper, scheme *marking.Scheme) *marking.Result {
	t, marker, why := d.of(p)
	if why != "" {
		return nil
	}
	return marker.Mark(p, scheme, t.points)
}

// refuse notes a paper that is of no problem here.
func (d *desk) refuse(p *marking.Paper) {
	_, _, why := d.of(p)
	text := strings.TrimSpace(p.Student + " " + p.Problem + " " + p.Code)
	d.faults = append(d.faults, marking.Unread{Lines: []int{p.Line}, Text: text, Why: why})
}

// of is what a paper is held against; or why it is of no problem here.
func (d *desk) of(p *marking.Paper) (*task, *marking.Marker, string) {
	code := p.Code
	for _, t := range d.tasks {
		if p.Problem != "" && p.Problem == t.problem.Name || p.Problem == "" && code == "" && len(d.tasks) == 1 {
			if code == "" {
				return t, t.marker, ""
			}
		}
	}
	if code == "" && p.Problem != "" {
		code = p.Problem
	}
	if code == "" {
		return nil, nil, "it is not said which problem this answers: write problem: and its name"
	}
	t, marker, err := d.copyOf(code)
	if err != nil && p.Code == "" {
		return nil, nil, "no problem here is called so: " + notation.List(d.names())
	}
	if err != nil {
		return nil, nil, err.Error()
	}
	return t, marker, ""
}

func (d *desk) names() []string {
	var all []string
	for _, t := range d.tasks {
		all = append(all, t.problem.Name)
	}
	return all
}

// copyOf is the copy of a code.
func (d *desk) copyOf(code string) (*task, *marking.Marker, error) {
	place, draw, err := d.tasks[0].source.Decode(code)
	if err != nil {
		return nil, nil, err
	}
	if place < 1 || place > len(d.tasks) {
		return nil, nil, fmt.Errorf("the code %s is of problem %d, and there are %d", code, place, len(d.tasks))
	}
	t := d.tasks[place-1]
	key := fmt.Sprint(place, draw)
	d.mutex.Lock()
	marker := d.copies[key]
	d.mutex.Unlock()
	if marker != nil {
		return t, marker, nil
	}
	maker, err := t.maker()
	if err != nil {
		return nil, nil, err
	}
	p, err := maker.At(draw)
	if err != nil {
		return nil, nil, err
	}
	if marker, err = markerOf(p); err != nil {
		return nil, nil, err
	}
	d.mutex.Lock()
	d.copies[key] = marker
	d.mutex.Unlock()
	return t, marker, nil
}

// blank is the table of answers to be filled in.
func (d *desk) blank() []byte {
	rows := [][]string{{"student", "problem", "quantity", "value"}}
	for _, t := range d.tasks {
		for i, item := range t.marker.Items {
			if t.marker.Asked[i] {
				rows = append(rows, []string{"", t.problem.Name, item.Name, ""})
			}
		}
	}
	return variant.WriteCSV(rows)
}

// ask has a person on a terminal type answers, up to an empty line.
func (d *desk) ask(in io.Reader, out io.Writer) io.Reader {
	var names []string
	for i, item := range d.tasks[0].marker.Items {
		if d.tasks[0].marker.Asked[i] {
			names = append(names, item.Name)
		}
	}
	fmt.Fprintf(out, "Type your answers, one a line, such as %s = 9.5; an empty line ends them.\nAsked for: %s.\n", names[0], strings.Join(names, "; "))
	var typed bytes.Buffer
	lines := bufio.NewScanner(in)
	for lines.Scan() && strings.TrimSpace(lines.Text()) != "" {
		fmt.Fprintln(&typed, lines.Text())
	}
	if typed.Len() == 0 {
		fmt.Fprintln(&typed, "# nothing")
	}
	return &typed
}

// readAnswers reads a file of answers.
func readAnswers(path string) (*marking.Answers, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	defer file.Close()
	return marking.ReadAnswers(path, file)
}
