package marking

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

var ten = exact.Int(10)

var update = flag.Bool("update", false, "rewrite what is expected")

// compare holds a text against a file.
func compare(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o666); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil || string(want) != got {
		t.Errorf("%s: %v; got\n%s", path, err, got)
	}
}

// beside is the marker of the problem in the file beside a file of papers, or of one of the library where there is none.
func beside(t testing.TB, path, name string) *Marker {
	t.Helper()
	data, err := os.ReadFile(path + ".yaml")
	if os.IsNotExist(err) {
		return markerOf(t, name)
	}
	if err != nil {
		t.Fatal(err)
	}
	p, err := problems.Read(path+".yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	return markerFor(t, p)
}

// markerOf is the marker of a problem of the library.
func markerOf(t testing.TB, name string) *Marker {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("there is no %s", name)
	}
	return markerFor(t, p)
}

// markerFor is the marker of a problem.
func markerFor(t testing.TB, p *problems.Problem) *Marker {
	t.Helper()
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	m, err := New(problems.Solved{Problem: p, Solution: s}, nil)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// TestPapers marks every paper of testdata/papers and holds what comes of it against the text beside it.
func TestPapers(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob("testdata/papers/*.txt")
	if err != nil || len(files) < 1 {
		t.Fatalf("%d papers, %v", len(files), err)
	}
	for _, path := range files {
		file, err := os.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		answers, err := ReadAnswers(filepath.Base(path), file)
		file.Close()
		if err != nil {
			t.Fatal(err)
		}
		var text strings.Builder
		for _, f := range answers.Faults {
			fmt.Fprintf(&text, "fault %v %s: %s\n", f.Lines, f.Text, f.Why)
		}
		for _, p := range answers.Papers {
			text.WriteString(shown(beside(t, strings.TrimSuffix(path, ".txt"), p.Problem).Mark(p, DefaultScheme(), ten)))
		}
		compare(t, strings.TrimSuffix(path, ".txt")+".marks", text.String())
	}
}

// shown is a result, a line for each answer that was given.
func shown(r *Result) string {
	var text strings.Builder
	fmt.Fprintf(&text, "%s %s: %s of %s, faults %v\n", r.Paper.Student, r.Paper.Problem, r.Got.String(), r.Of.String(), r.Faults)
	for _, a := range r.Answers {
		if a.Verdict == Missing {
			continue
		}
		fmt.Fprintf(&text, "  %s = %s (%s) %s", a.Item.Name, a.Given, a.Item.Value.Decimal(4), a.Verdict)
		if len(a.Slips) > 0 {
			fmt.Fprintf(&text, " %v", a.Slips)
		}
		if len(a.From) > 0 {
			fmt.Fprintf(&text, " from %v by %s", a.From, a.Follows)
		}
		if len(a.Or) > 0 {
			fmt.Fprintf(&text, " or %v", a.Or)
		}
		for _, v := range a.Violates {
			fmt.Fprintf(&text, "; %s: %s", v.Name, v.By.Decimal(4))
		}
		if a.Remark != "" {
			fmt.Fprintf(&text, "; %s", a.Remark)
		}
		fmt.Fprintln(&text)
	}
	for _, u := range r.Unread {
		fmt.Fprintf(&text, "  unread %v %s: %s\n", u.Lines, u.Text, u.Why)
	}
	return text.String()
}
