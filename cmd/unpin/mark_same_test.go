package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/tutor/marking"
)

// TestSameJudge types a value with the same values before it into a lesson and into an exam, hands it in by itself as lines, and in a
// class as a table: all four say the same of it. A paper shows no sums, so that another sum than the lesson's may explain by rounding what is
// close or wrong in the lesson; that is counted.
func TestSameJudge(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(16, 6))
	tried, elsewhere := 0, 0
	for _, name := range librarytest.Names() {
		truths := forcesOf(t, name)
		asked := askedFirst(t, name, truths)
		k := r.IntN(len(asked))
		var before []string
		for _, n := range asked[:k] {
			before = append(before, inThree(truths[n]))
		}
		value := alteredText(r, truths[asked[k]])
		lesson := verdictInLesson(t, name, append(before, value))
		alone, class := verdictsInMarks(t, name, asked[:k+1], append(before, value))
		if want := asked[k] + " typed " + value + ": " + marking.Words(alone); !strings.HasPrefix(verdictInExam(t, name, asked[k], append(before, value)), want) {
			t.Errorf("an exam does not say %q but %q", want, verdictInExam(t, name, asked[k], append(before, value)))
		}
		tried++
		switch {
		case alone != class:
			t.Errorf("%s: %s = %s: %s by itself, %s in a class", name, asked[k], value, alone, class)
		case lesson == "not yet" && alone == "rounded":
			elsewhere++
		case lesson != lessonsWord[alone]:
			t.Errorf("%s: %s = %s after %v: a lesson says %s, marks %s", name, asked[k], value, before, lesson, alone)
		}
	}
	if tried < 20 || 10*elsewhere > tried {
		t.Errorf("of %d values %d are rounded by another sum than a lesson's", tried, elsewhere)
	}
	t.Log(tried, "values,", elsewhere, "rounded by another sum")
}

// lessonsWord is how a lesson's verdict line begins for a verdict in marks.
var lessonsWord = map[string]string{"right": "right", "rounded": "right (rounded)", "close": "not yet", "sense": "not yet", "slip": "not yet", "wrong": "not yet"}

// said is what a command writes.
func said(t *testing.T, input string, words ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(words, strings.NewReader(input), &out, &errs); code != 0 {
		t.Fatalf("%v: exit %d: %s", words, code, errs.String())
	}
	return out.String()
}

// forcesOf are the true forces of a problem, but those that are no fractions.
func forcesOf(t *testing.T, name string) map[string]*big.Rat {
	var solved struct {
		Forces []struct{ Name, Value string }
	}
	if err := json.Unmarshal([]byte(said(t, "", "solve", name, "--as", "json")), &solved); err != nil {
		t.Fatal(err)
	}
	all := map[string]*big.Rat{}
	for _, f := range solved.Forces {
		if v, ok := new(big.Rat).SetString(f.Value); ok {
			all[f.Name] = v
		}
	}
	return all
}

// askedFirst are the forces that a lesson asks for, in its order, as far as they are fractions.
func askedFirst(t *testing.T, name string, truths map[string]*big.Rat) []string {
	var all []string
	for _, line := range strings.Split(said(t, strings.Repeat("tell\n", 60), "practise", name, "--plain", "--level", "values"), "\n") {
		rest, ok := strings.CutPrefix(line, "? ")
		if !ok {
			continue
		}
		n, _, _ := strings.Cut(rest, " [")
		if truths[n] == nil {
			break
		}
		if len(all) == 0 || all[len(all)-1] != n {
			all = append(all, n)
		}
	}
	if len(all) == 0 {
		t.Fatalf("%s asks for no force", name)
	}
	return all
}

func inThree(v *big.Rat) string {
	f, _ := v.Float64()
	text := fmt.Sprintf("%.3g", f)
	if strings.Contains(text, "e") {
		return fmt.Sprintf("%.0f", f)
	}
	return text
}

// alteredText is a value near a true one, or far from it.
func alteredText(r *rand.Rand, truth *big.Rat) string {
	by := []string{"1", "-1", "1.004", "0.985", "0.5", "1.3"}[r.IntN(6)]
	k, _ := new(big.Rat).SetString(by)
	v := new(big.Rat).Mul(truth, k)
	if truth.Sign() == 0 || r.IntN(6) == 0 {
		v.Add(v, big.NewRat(int64(1+r.IntN(9)), 1))
	}
	return inThree(v)
}

// verdictInLesson is how the verdict on the last of some answers begins.
func verdictInLesson(t *testing.T, name string, answers []string) string {
	var last string
	for _, line := range strings.Split(said(t, strings.Join(answers, "\n")+"\nquit\n", "practise", name, "--plain", "--level", "values"), "\n") {
		for _, word := range []string{"right (rounded)", "right", "not yet"} {
			if strings.HasPrefix(line, word) {
				last = word
				break
			}
		}
	}
	return last
}

// verdictInExam is the line of the last of some answers at the end of an exam.
func verdictInExam(t *testing.T, name, quantity string, answers []string) string {
	said := said(t, strings.Join(answers, "\n")+"\nhand in\nhand in\n", "practise", name, "--plain", "--level", "values", "--exam")
	for _, line := range strings.Split(said, "\n") {
		if strings.HasPrefix(line, quantity+" typed ") {
			return line
		}
	}
	return "nothing of " + quantity
}

// verdictsInMarks are the verdicts on the last of some answers, by itself and in a class.
func verdictsInMarks(t *testing.T, name string, names, answers []string) (alone, class string) {
	lines, table := "", "student,problem,quantity,value\n"
	for i, n := range names {
		lines += n + " = " + answers[i] + "\n"
		table += fmt.Sprintf("s1,%s,%s,%s\ns2,%s,%s,%s\n", name, n, answers[i], name, n, answers[len(answers)-1-i])
	}
	type paper struct {
		Student string
		Answers []struct{ Name, Verdict string }
	}
	of := func(p paper) string {
		for _, a := range p.Answers {
			if a.Name == names[len(names)-1] {
				return a.Verdict
			}
		}
		return ""
	}
	var one paper
	var all []paper
	if err := json.Unmarshal([]byte(said(t, lines, "mark", name, "-", "--as", "json")), &one); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal([]byte(said(t, table, "mark", name, "-", "--as", "json")), &all); err != nil {
		t.Fatal(err)
	}
	return of(one), of(all[0])
}
