package exact

import (
	"flag"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

var update = flag.Bool("update", false, "rewrite the answers in testdata")

// checkAnswers holds a text file of questions with answers against answer.
// Fields are parted by bars; the first inputs fields of a line are the
// question, the rest the answer. Lines that begin with # are comments.
func checkAnswers(t *testing.T, file string, inputs int, answer func(t *testing.T, question []string) string) {
	t.Helper()
	old, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	for line := range strings.Lines(string(old)) {
		line = strings.TrimSuffix(line, "\n")
		if !strings.HasPrefix(line, "#") {
			question := strings.Split(line, " | ")[:inputs]
			line = strings.Join(append(question, answer(t, question)), " | ")
		}
		b.WriteString(line + "\n")
	}
	if *update {
		if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want := strings.Split(string(old), "\n")
	for i, got := range strings.Split(b.String(), "\n") {
		if !*update && got != want[i] {
			t.Errorf("%s:%d:\n got %s\nwant %s", file, i+1, got, want[i])
		}
	}
}

// num reads what String writes, roots and all.
func num(t rapid.TB, s string) Num {
	t.Helper()
	s = strings.ReplaceAll(s, " - ", " + -")
	var sum Num
	for text := range strings.SplitSeq(s, " + ") {
		text = strings.ReplaceAll(text, "--", "")
		factor, rest, isRoot := strings.Cut(text, "sqrt(")
		if !isRoot {
			sum = sum.Add(parsed(t, text))
			continue
		}
		under, denominator, _ := strings.Cut(rest, ")")
		root, err := parsed(t, under).Sqrt()
		if err != nil {
			t.Fatal(err)
		}
		switch factor = strings.TrimSuffix(factor, "*"); factor {
		case "", "-":
			factor += "1"
		}
		sum = sum.Add(root.Mul(parsed(t, factor+denominator)))
	}
	return sum
}

// parsed reads a fraction of any length.
func parsed(t rapid.TB, s string) Num {
	t.Helper()
	r, ok := newRat(s)
	if !ok {
		t.Fatalf("%q is no fraction", s)
	}
	return FromRat(r)
}
