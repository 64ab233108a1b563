package marking

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestAnswers reads every file of testdata/answers, good and broken, and holds what comes of it against the text beside it.
func TestAnswers(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob("testdata/answers/*.[tc][xs][tv]")
	if err != nil || len(files) < 7 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, path := range files {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		compare(t, path[:len(path)-len(".txt")]+filepath.Ext(path)[1:2]+".read", readText(filepath.Base(path), string(data)))
	}
}

// readText tells all that is read of a file.
func readText(name, data string) string {
	a, err := ReadAnswers(name, strings.NewReader(data))
	if err != nil {
		return err.Error() + "\n"
	}
	var text strings.Builder
	for _, p := range a.Papers {
		fmt.Fprintf(&text, "student %q problem %q code %q attempt %d\n", p.Student, p.Problem, p.Code, p.Attempt)
		for _, e := range p.Entries {
			fmt.Fprintf(&text, "  %d %q = %q\n", e.Line, e.Quantity, e.Value)
		}
	}
	for _, f := range a.Faults {
		fmt.Fprintf(&text, "%d %s: %s\n", f.Lines[0], f.Text, f.Why)
	}
	if len(a.Ignored) > 0 {
		fmt.Fprintf(&text, "passed over %q\n", a.Ignored)
	}
	return text.String()
}

// The order of blocks in a file makes no difference.
func TestOrderOfPapers(t *testing.T) {
	t.Parallel()
	rows := []string{"b,riding-hall,Cy,1", "a,riding-hall,Cy,2", "a,jetty-deck,RB,3", "a,riding-hall,Ay,4"}
	text := func(rows []string) string {
		a, err := ReadAnswers("a.csv", strings.NewReader("student,problem,quantity,value\n"+strings.Join(rows, "\n")+"\n"))
		if err != nil {
			t.Fatal(err)
		}
		var all []string
		for _, p := range a.Papers {
			for _, e := range p.Entries {
				all = append(all, p.Student+p.Problem+e.Quantity+e.Value)
			}
		}
		slices.Sort(all)
		return strings.Join(all, " ")
	}
	turned := slices.Clone(rows)
	slices.Reverse(turned)
	if text(rows) != text(turned) {
		t.Errorf("%s\n%s", text(rows), text(turned))
	}
}

// FuzzAnswers reads any text: each line of it is in a paper, told as a fault, or empty, and marking what was read is no crash.
func FuzzAnswers(f *testing.F) {
	files, _ := filepath.Glob("testdata/answers/*")
	for _, path := range append(files, "testdata/papers/riding-hall.txt") {
		data, _ := os.ReadFile(path)
		f.Add("a"+filepath.Ext(path), data)
	}
	m := markerOf(f, "riding-hall")
	scheme := DefaultScheme()
	f.Fuzz(func(t *testing.T, name string, data []byte) {
		a, err := ReadAnswers(name, strings.NewReader(string(data)))
		if err != nil {
			return
		}
		for _, p := range a.Papers[:min(len(a.Papers), 3)] {
			r := m.Mark(p, scheme, ten)
			if r.Got.Sign() < 0 || r.Got.Cmp(ten) > 0 {
				t.Fatalf("%s of 10 marks", r.Got)
			}
			read := len(r.Unread)
			for _, x := range r.Answers {
				read += len(x.Lines)
			}
			if read < len(p.Entries)/2 {
				t.Fatalf("of %d entries %d were told of", len(p.Entries), read)
			}
		}
	})
}
