package problems

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// filesRead are the problem files that are read without fault, with what is in each.
func filesRead(t *testing.T) map[string]*Problem {
	t.Helper()
	all := map[string]*Problem{}
	for _, pattern := range []string{"library/*.yaml", "../testdata/read/*.yaml", "../testdata/read/*.json", "../testdata/examples/*.yaml", "../testdata/solutions/*.yaml"} {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			t.Fatalf("no files %s: %v", pattern, err)
		}
		for _, path := range files {
			p, err := Load(path)
			if err != nil {
				t.Fatal(err)
			}
			all[path] = p
		}
	}
	return all
}

// A trial is what a file with other numbers is, but for that file.
func TestTrial(t *testing.T) {
	t.Parallel()
	for path, p := range filesRead(t) {
		for i, n := range p.Numbers() {
			texts := map[int]string{i: n.Text + " + 1/4 * (" + n.Text + ")"}
			tried, errTried := p.Trial(texts)
			other, err := p.With(texts)
			if (err == nil) != (errTried == nil) {
				t.Errorf("%s, %s: a trial gives %v, a file %v", path, n.Text, errTried, err)
			} else if other != nil && withoutNumbers(describe(tried)) != withoutNumbers(describe(other)) {
				t.Errorf("%s, %s: a trial is another problem than the file:\n%s\n%s", path, n.Text, describe(tried), describe(other))
			}
		}
	}
}

// withoutNumbers is what describes a problem but for the numbers of its file.
func withoutNumbers(text string) string {
	return regexp.MustCompile(`(?m)^number .*\n`).ReplaceAllString(text, "")
}

// With the texts that stand there already, a problem is what it was, whatever quotes, comments and blanks its file has.
func TestWithItsOwnNumbers(t *testing.T) {
	t.Parallel()
	for path, p := range filesRead(t) {
		own := map[int]string{}
		for i, n := range p.Numbers() {
			own[i] = n.Text
		}
		other, err := p.With(own)
		if err != nil {
			t.Errorf("%s: %v", path, err)
		} else if describe(other) != describe(p) || other.Source() != p.Source() {
			t.Errorf("%s is another problem with its own numbers", path)
		}
	}
}

// With another text at one place, the number there has the value of that text, and no other number of its own differs.
func TestWithOneNumber(t *testing.T) {
	t.Parallel()
	for path, p := range filesRead(t) {
		for i, n := range p.Numbers() {
			text := "( " + n.Text + " )" // longer than what stood there, and of the same value
			other, err := p.With(map[int]string{i: text})
			if err != nil {
				t.Errorf("%s: %q in place of %q: %v", path, text, n.Text, err)
				continue
			}
			if got := other.Numbers()[i]; got.Text != text || !got.Value.Equal(n.Value) {
				t.Errorf("%s: %q in place of %q is read as %q, %v", path, text, n.Text, got.Text, got.Value)
			}
			if !strings.Contains(other.Source(), text) {
				t.Errorf("%s: the file made has no %s", path, text)
			}
		}
	}
}

// A given number that is changed changes all that rests on it, in the text too; what does not fit is a fault.
func TestWithGiven(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../testdata/read/placeholders.yaml")
	if err != nil {
		t.Fatal(err)
	}
	p, err := Read("placeholders.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	other, err := p.With(map[int]string{0: "9", 1: "10.25"})
	if err != nil {
		t.Fatal(err)
	}
	if want := "A beam of 9 m under 10,25 kN/m"; other.Title != want {
		t.Errorf("the title is %q, not %q", other.Title, want)
	}
	if x := other.Frame.Joints[2].At.X; !x.Equal(exact.Int(11)) {
		t.Errorf("C is at %v, not 11", x)
	}
	if other.Where[1].Holds || !other.Where[3].Holds {
		t.Errorf("conditions hold otherwise than with L = 9, w = 10.25: %v", other.Where)
	}
	if _, err := p.With(map[int]string{0: "2"}); err == nil {
		t.Error("a load beyond the end of its member is no fault")
	}
	if point := p.In(other.Conventions); point.Text != p.Text {
		t.Errorf("in the same conventions the text is %q", point.Text)
	}
}

// An attempt is a trial where all conditions hold; where one does not, it says so and has no frame.
func TestAttempt(t *testing.T) {
	t.Parallel()
	p, _ := Library("hillside-garage")
	met := map[bool]int{}
	for _, e := range []string{"2", "2.5", "3.5", "4"} {
		texts := map[int]string{}
		for i, n := range p.Numbers() {
			if n.Name == "e" {
				texts[i] = e
			}
		}
		tried, err := p.Trial(texts)
		attempt, errAttempt := p.Attempt(texts)
		if err != nil || errAttempt != nil || len(tried.Where) != 1 || len(attempt.Where) != 1 || tried.Where[0] != attempt.Where[0] {
			t.Fatalf("%v %v %+v %+v", err, errAttempt, tried.Where, attempt.Where)
		}
		holds := tried.Where[0].Holds
		if met[holds]++; holds && describe(attempt) != describe(tried) || !holds && len(attempt.Frame.Joints) > 0 {
			t.Errorf("e = %s, which holds: %v\n%s\n%s", e, holds, describe(attempt), describe(tried))
		}
	}
	if met[true] == 0 || met[false] == 0 {
		t.Errorf("conditions hold or not: %v", met)
	}
}
