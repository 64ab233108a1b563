package main

import (
	"fmt"
	"os"
	"runtime"
	"slices"
	"strings"
	"sync"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/marking"
)

// A task is a problem that is marked, with its points.
type task struct {
	problem *problems.Problem
	points  exact.Num
	marker  *marking.Marker // of the problem's own numbers
}

// A desk is where papers are marked: the problems, and the copies that were handed out.
type desk struct {
	means  meaning
	tasks  []*task
	batch  func() (variant.Batch, error)
	handed map[string]string // the code of each student, attempt and problem, by a list
	listed []variant.Student // those of the list, in its order
	copies map[string]*marking.Marker
	mutex  sync.Mutex
}

// newDesk is the desk for the problem or the set that a word means; list is the file of who has which copy, or empty.
func newDesk(cmd *cobra.Command, word, list string) (*desk, error) {
	means, err := meaningOf(word, cmd.InOrStdin())
	if err != nil {
		return nil, err
	}
	means.warn(cmd)
	d := &desk{means: means, copies: map[string]*marking.Marker{}, handed: map[string]string{}}
	d.batch = sync.OnceValues(func() (variant.Batch, error) { return means.batch("1") })
	for i, p := range means.problems() {
		t := &task{problem: p, points: problems.UsualPoints}
		if means.set != nil {
			t.points = means.set.Tasks[i].Points
		}
		if t.marker, err = markerOf(p); err != nil {
			return nil, err
		}
		d.tasks = append(d.tasks, t)
	}
	if list != "" {
		err = d.readList(list)
	}
	return d, err
}

// readList reads who has which copy.
func (d *desk) readList(path string) error {
	file, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	defer file.Close()
	list, err := variant.ReadList(path, file)
	if err != nil {
		return err
	}
	batch, err := d.batch()
	if err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	handouts, err := batch.Handed(path, list)
	if err != nil {
		return err
	}
	for _, h := range handouts {
		d.listed = append(d.listed, h.Student)
		for i, c := range h.Copies {
			d.handed[ownCopy(c.Student, c.Attempt, d.tasks[i].problem.Name)] = c.Code
		}
	}
	return nil
}

func ownCopy(student string, attempt int, problem string) string {
	return fmt.Sprintf("%s\x00%d\x00%s", student, attempt, problem)
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

// ahead is how many students are marked before those in front of them are done with, on each core.
const ahead = 8

// mark marks all papers on all cores, and hands on those of each student together, in their order. What is handed on need not be
// kept, so that a large class takes no more room than a small one.
func (d *desk) mark(answers *marking.Answers, scheme *marking.Scheme, take func([]*marking.Result) error) error {
	waiting := make(chan chan []*marking.Result, ahead*runtime.GOMAXPROCS(0))
	work := make(chan func())
	done := make(chan struct{})
	defer close(done)
	for range runtime.GOMAXPROCS(0) {
		go func() {
			for job := range work {
				job()
			}
		}()
	}
	go func() {
		defer close(work)
		defer close(waiting)
		for _, papers := range byStudent(answers.Papers) {
			results := make(chan []*marking.Result, 1)
			select {
			case waiting <- results:
			case <-done:
				return
			}
			work <- func() { results <- d.markAll(papers, scheme) }
		}
	}()
	for results := range waiting {
		if err := take(<-results); err != nil {
			return err
		}
	}
	return nil
}

// byStudent parts papers, which are sorted, into those of each student.
func byStudent(papers []*marking.Paper) [][]*marking.Paper {
	var all [][]*marking.Paper
	for i, p := range papers {
		if i == 0 || papers[i-1].Student != p.Student {
			all = append(all, nil)
		}
		all[len(all)-1] = append(all[len(all)-1], p)
	}
	return all
}

// markAll marks papers of one student, in the order of the problems, without those of no problem here.
func (d *desk) markAll(papers []*marking.Paper, scheme *marking.Scheme) []*marking.Result {
	var all []*marking.Result
	for _, p := range papers {
		if r := d.markOne(p, scheme); r != nil {
			all = append(all, r)
		}
	}
	names := d.names()
	slices.SortStableFunc(all, func(a, b *marking.Result) int {
		return slices.Index(names, a.Marker.Name) - slices.Index(names, b.Marker.Name)
	})
	return all
}

// markOne marks a paper; nil where it is of no problem here.
func (d *desk) markOne(p *marking.Paper, scheme *marking.Scheme) *marking.Result {
	t, marker, why := d.of(p)
	if why != "" {
		return nil
	}
	return tutor.MarkPaper(marker, p, scheme, t.points, d.means.set != nil)
}

// refused lists papers that are of no problem here.
func (d *desk) refused(papers []*marking.Paper) []marking.Unread {
	var all []marking.Unread
	for _, p := range papers {
		if u, bad := d.refuse(p); bad {
			all = append(all, u)
		}
	}
	return all
}

// refuse says why a paper is of no problem here; false if it is of one.
func (d *desk) refuse(p *marking.Paper) (marking.Unread, bool) {
	_, _, why := d.of(p)
	text := strings.TrimSpace(p.Student + " " + p.Problem + " " + p.Code)
	return marking.Unread{Lines: []int{p.Line}, Text: text, Why: why}, why != ""
}

// of is what a paper is held against; or why it is of no problem here.
func (d *desk) of(p *marking.Paper) (*task, *marking.Marker, string) {
	code := p.Code
	if code == "" && p.Problem == "" && len(d.tasks) > 1 {
		return nil, nil, "it is not said which problem this answers: write problem: and its name"
	}
	for _, t := range d.tasks {
		if code == "" && (p.Problem == t.problem.Name || p.Problem == "") {
			if code = d.handed[ownCopy(p.Student, p.Attempt, t.problem.Name)]; code == "" {
				return t, t.marker, d.unlisted(p)
			}
		}
	}
	named := code != ""
	if !named {
		code = p.Problem
	}
	t, marker, err := d.copyOf(code)
	switch {
	case err == nil:
		return t, marker, ""
	case !named:
		return nil, nil, "no problem here is called so; they are " + notation.List(d.names())
	}
	return nil, nil, err.Error()
}

// codeOf is the code of the copy that a paper of a problem is held against, empty where that is the problem itself.
func (d *desk) codeOf(p *marking.Paper, t *task) string {
	if p.Code != "" {
		return p.Code
	}
	return d.handed[ownCopy(p.Student, p.Attempt, t.problem.Name)]
}

// unlisted says that a student has no copy by the list; empty where there is no list.
func (d *desk) unlisted(p *marking.Paper) string {
	if len(d.handed) == 0 {
		return ""
	}
	return "the list of copies has none of this student and attempt"
}

// markers are what papers with the problems' own numbers are held against.
func (d *desk) markers() []*marking.Marker {
	var all []*marking.Marker
	for _, t := range d.tasks {
		all = append(all, t.marker)
	}
	return all
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
	batch, err := d.batch()
	if err != nil {
		return nil, nil, err
	}
	at, draw, err := batch.Decode(code)
	if err != nil {
		return nil, nil, err
	}
	key := fmt.Sprint(at, " ", draw)
	d.mutex.Lock()
	marker := d.copies[key]
	d.mutex.Unlock()
	if marker != nil {
		return d.tasks[at], marker, nil
	}
	p, err := batch[at].At(draw)
	if err != nil {
		return nil, nil, err
	}
	if marker, err = markerOf(p.In(d.tasks[at].problem.Conventions).Asking(d.tasks[at].problem.Find)); err != nil {
		return nil, nil, err
	}
	d.mutex.Lock()
	d.copies[key] = marker
	d.mutex.Unlock()
	return d.tasks[at], marker, nil
}

// readAnswers reads files of answers.
func readAnswers(paths []string) (*marking.Answers, error) {
	var all []*marking.Answers
	for _, path := range paths {
		one, err := readAnswersIn(path)
		if err != nil {
			return nil, err
		}
		all = append(all, one)
	}
	return marking.Join(paths, all), nil
}

func readAnswersIn(path string) (*marking.Answers, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	defer file.Close()
	return marking.ReadAnswers(path, file)
}
