package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
)

var recordTo = flag.String("record", "", "write everything that TestRecorded looks at into this `FOLDER`, to compare two revisions")

// digestFolder holds a line for each output that TestRecorded looks at: its name and the start of its SHA-256.
const digestFolder = "testdata/recorded"

// An output is one thing that the program wrote. The first element of its name is its kind; a name that ends in .codes
// holds verdicts and slips without any wording.
type output struct {
	name    string
	content []byte
}

// A recorder gathers outputs, from several goroutines.
type recorder struct {
	mu  sync.Mutex
	all []output
}

func (r *recorder) add(name string, content []byte) {
	r.mu.Lock()
	defer r.mu.Unlock()
	r.all = append(r.all, output{name, content})
}

// A subject is a problem that is recorded: the word for it on the command line.
type subject struct{ name, word string }

// TestRecorded compares what the program says of all problems with what it said when testdata/recorded was written: the
// documents of every problem, sheets and keys, lessons in which wrong values are typed, what was made of these in codes, and screens. It
// tells which outputs changed; to see how, write them out before and after with -record FOLDER and compare the folders. A
// short run takes every sixth problem.
func TestRecorded(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", os.DevNull) // nothing can be kept there, so that no lesson knows of another
	var jobs []func(*recorder)
	lessons, others := librarySubjects(), otherSubjects(t)
	if testing.Short() {
		lessons, others = everySixth(lessons), everySixth(others)
	}
	for _, s := range slices.Concat(lessons, others) {
		jobs = append(jobs, func(r *recorder) { recordDocuments(r, s) })
	}
	for _, s := range lessons {
		jobs = append(jobs, lessonJobs(t, s)...)
	}
	for n, s := range librarySubjects() {
		if slices.Contains(lessons, s) {
			jobs = append(jobs, func(r *recorder) { recordSheets(r, s, n) })
		}
	}
	jobs = append(jobs, screenJobs(t)...)
	all := carryOut(jobs)
	if len(all) < 100 {
		t.Errorf("only %d outputs", len(all))
	}
	if *recordTo != "" {
		writeOut(t, *recordTo, all)
	}
	compareDigests(t, all)
}

// carryOut does all jobs, as many at a time as there are processors, and returns the outputs by name.
func carryOut(jobs []func(*recorder)) []output {
	var r recorder
	var workers sync.WaitGroup
	queue := make(chan func(*recorder))
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for job := range queue {
				job(&r)
			}
		})
	}
	for _, job := range jobs {
		queue <- job
	}
	close(queue)
	workers.Wait()
	slices.SortFunc(r.all, func(a, b output) int { return strings.Compare(a.name, b.name) })
	return r.all
}

func everySixth(all []subject) []subject {
	var some []subject
	for i := 0; i < len(all); i += 6 {
		some = append(some, all[i])
	}
	return some
}

// librarySubjects are the problems that lessons are recorded of: a sample of the library and the examples.
func librarySubjects() []subject {
	var all []subject
	for _, name := range librarytest.Names() {
		all = append(all, subject{name, name})
	}
	for _, name := range []string{"canopy", "shelter"} {
		all = append(all, subject{name, "../../testdata/examples/" + name + ".yaml"})
	}
	return all
}

// otherSubjects are problems of which documents alone are recorded: files that test other things too, among them frames that are
// refused, the published cases, and the rest of the library.
func otherSubjects(t *testing.T) []subject {
	var all []subject
	for _, folder := range []string{"solutions", "read", "refused"} {
		files, err := filepath.Glob("../../testdata/" + folder + "/*.yaml")
		if err != nil || len(files) == 0 {
			t.Fatalf("no problems in testdata/%s", folder)
		}
		for _, f := range files {
			all = append(all, subject{folder + "-" + strings.TrimSuffix(filepath.Base(f), ".yaml"), f})
		}
	}
	var cases []struct {
		ID      string
		Problem json.RawMessage
	}
	data, err := os.ReadFile("../../testdata/cases/published.json")
	if err == nil {
		err = json.Unmarshal(data, &cases)
	}
	if err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	for _, c := range cases {
		file := filepath.Join(folder, c.ID+".yaml")
		if err := os.WriteFile(file, c.Problem, 0o666); err != nil {
			t.Fatal(err)
		}
		all = append(all, subject{"case-" + c.ID, file})
	}
	for _, name := range problems.Names() {
		if !slices.Contains(librarytest.Names(), name) {
			all = append(all, subject{name, name})
		}
	}
	return all
}

// writeOut writes all outputs as files into a folder.
func writeOut(t *testing.T, folder string, all []output) {
	for _, o := range all {
		path := filepath.Join(folder, o.name)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, o.content, 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// compareDigests holds the outputs to the digests that are kept, a file for each kind, and names those that changed.
func compareDigests(t *testing.T, all []output) {
	kinds := map[string]*bytes.Buffer{}
	for _, o := range all {
		kind, _, _ := strings.Cut(o.name, "/")
		if strings.HasSuffix(o.name, ".codes") {
			kind = "codes"
		}
		if kinds[kind] == nil {
			kinds[kind] = &bytes.Buffer{}
		}
		sum := sha256.Sum256(o.content)
		fmt.Fprintf(kinds[kind], "%s %x\n", o.name, sum[:6])
	}
	for kind, digests := range kinds {
		file := filepath.Join(digestFolder, kind+".txt")
		if *update && !testing.Short() {
			if err := os.WriteFile(file, digests.Bytes(), 0o666); err != nil {
				t.Fatal(err)
			}
			continue
		}
		kept, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if changed := changedLines(string(kept), digests.String()); len(changed) > 0 {
			t.Errorf("%d outputs changed: %s\nCompare with -record FOLDER before and after; if the change is meant, -update keeps it.",
				len(changed), shortList(changed, 40))
		}
	}
}

// changedLines are the names that stand in one of two lists of digests alone, or in both with other digests.
func changedLines(kept, now string) []string {
	before := map[string]bool{}
	for line := range strings.Lines(kept) {
		before[line] = true
	}
	changed := map[string]bool{}
	for line := range strings.Lines(now) {
		if !before[line] {
			changed[strings.Fields(line)[0]] = true
		}
		delete(before, line)
	}
	for line := range before {
		if !testing.Short() {
			changed[strings.Fields(line)[0]] = true
		}
	}
	var names []string
	for name := range changed {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// shortList joins names, and counts those beyond the first few.
func shortList(names []string, most int) string {
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(names[:most], ", "), len(names)-most)
}
