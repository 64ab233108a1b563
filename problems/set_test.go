package problems

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"unpin/statics/notation"
)

// TestSets reads the sets of testdata/sets, good and broken, and holds what comes of each against the text beside it.
func TestSets(t *testing.T) {
	t.Parallel()
	folder := filepath.Join("..", "testdata", "sets")
	for _, name := range []string{"week5", "least", "fields", "names", "times", "order", "yaml", "twice", "careless", "careless-time"} {
		path := filepath.Join(folder, name+".yaml")
		data := readFile(t, path)
		if !Holds(data) {
			t.Errorf("%s is not told to be a set", name)
		}
		s, err := ReadSet(name+".yaml", data, Beside(folder))
		text := ""
		if err != nil {
			text = strings.ReplaceAll(err.Error(), folder+string(filepath.Separator), "") + "\n"
			checkSetPlaces(t, data, err)
		} else {
			text = setText(s)
		}
		compare(t, strings.TrimSuffix(path, ".yaml")+".txt", text)
	}
}

// checkSetPlaces checks the faults of a set's own file.
func checkSetPlaces(t *testing.T, data []byte, err error) {
	t.Helper()
	joined, ok := err.(interface{ Unwrap() []error })
	if !ok {
		checkPlaces(t, data, err)
		return
	}
	if own := (*Faults)(nil); errors.As(joined.Unwrap()[0], &own) {
		checkPlaces(t, data, own)
	}
}

// setText is all that was read of a set, a line for each field.
func setText(s *Set) string {
	var b strings.Builder
	moment := func(t time.Time) string { return t.Format(time.RFC3339) }
	fmt.Fprintf(&b, "id %s\ntitle %s\ncourse %s\nseed %s\nask %s\nlevel %s\nsame %s\n", s.ID, s.Title, s.Course, s.Seed, s.Ask, s.Level, s.Same)
	fmt.Fprintf(&b, "opens %s\ncloses %s\nminutes %d\nkeep %s\nscheme %s\n", moment(s.Opens), moment(s.Closes), s.Minutes, moment(s.Keep), s.Scheme)
	for _, task := range s.Tasks {
		fmt.Fprintf(&b, "%s: %s points, find %q, %s\n", task.Name, task.Points, task.Find, task.Conventions)
	}
	fmt.Fprintf(&b, "%s points\n", s.Points())
	for _, w := range s.Warnings {
		fmt.Fprintln(&b, "warning:", w)
	}
	return b.String()
}

// What is no set is not taken for one: a problem of any kind, and what is no YAML.
func TestHolds(t *testing.T) {
	t.Parallel()
	for _, name := range Names() {
		if p, _ := Library(name); Holds([]byte(p.Source())) {
			t.Errorf("%s is taken for a set", name)
		}
	}
	for text, want := range map[string]bool{"": false, "\xff": false, "[problems]": false, "problems: []": true, `{"problems": 3}`: true, "{": false, "id: [\nproblems: 3": true,
		"text: |\n  problems: none": false, "title: x\ntext: [\n problems: 1": false} {
		if Holds([]byte(text)) != want {
			t.Errorf("%q: %v", text, !want)
		}
	}
}

// The conventions of a course hold where a problem's own file settles none, in whatever order they are put on.
func TestUnder(t *testing.T) {
	t.Parallel()
	p, err := Read("p", []byte("title: T\nunits: kN m\njoints: {A: [0, 0], B: [4, 0]}\nmembers: [AB]\nsupports: {A: fixed}\nask: {shear: ccw, figures: 5}\n"))
	if err != nil {
		t.Fatal(err)
	}
	course, err := notation.ReadPreferences("moments=cw,shear=cw,decimal=comma")
	if err != nil {
		t.Fatal(err)
	}
	want := "figures=5,moments=cw,shear=counter-clockwise,side=tension,decimal=comma,two-force=plain"
	if got := p.Under(course).Conventions.String(); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := p.Under(course).Under(nil).Conventions.String(); got != want {
		t.Errorf("twice: %s, want %s", got, want)
	}
}

// FuzzReadSet reads anything as a set: no input may crash it or hang it, and each fault has a place in the file.
func FuzzReadSet(f *testing.F) {
	files, err := filepath.Glob(filepath.Join("..", "testdata", "sets", "*.yaml"))
	if err != nil || len(files) < 8 {
		f.Fatalf("%d sets: %v", len(files), err)
	}
	for _, path := range files {
		f.Add(readFile(f, path))
	}
	open := func(string) (*Problem, error) {
		p, _ := Library("jetty-deck")
		return p, nil
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 20_000 {
			t.Skip("large input is TestBig's")
		}
		Holds(data)
		s, err := ReadSet("fuzz.yaml", data, open)
		if err != nil {
			checkSetPlaces(t, data, err)
		} else if s.ID == "" || len(s.Tasks) == 0 {
			t.Errorf("a set without an id or problems is read: %+v", s)
		}
	})
}
