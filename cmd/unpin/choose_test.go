package main

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
)

// Rows: what is typed at the list of problems, the problem it leads to, and how often it is asked.
func TestChooseByLine(t *testing.T) {
	t.Parallel()
	names := problems.Names()
	rows := []struct {
		typed, want string
		asked       int
	}{
		{"1\n", names[0], 1},
		{"3\nnot read here\n", names[2], 1},
		{names[4] + "\n", names[4], 1},
		{" " + strings.ToUpper(names[1]) + " \n", names[1], 1},
		{"0\n999\nno-such\n\n2\n", names[1], 5},
		{"2", names[1], 1}, // no end of the line
		{"", "", 1},
		{"nonsense", "", 1},
		{"quit\n", "", 1},
	}
	for _, r := range rows {
		var out strings.Builder
		got, err := choose(bufio.NewReader(strings.NewReader(r.typed)), &out, t.TempDir())
		if asked := strings.Count(out.String(), "? problem [number, name or words]\n"); err != nil || got.word != r.want || asked != r.asked {
			t.Errorf("%q leads to %q after %d questions, want %q after %d: %v", r.typed, got.word, asked, r.want, r.asked, err)
		}
		for _, name := range names {
			if !strings.Contains(out.String(), ": "+name+": ") {
				t.Errorf("%s is not in the list", name)
			}
		}
	}
}

// Rows: what is typed at the list, and what is said of it before the next question: words narrow the list, an empty line shows
// all again, and the numbers stay those of the whole list.
func TestChooseNarrowed(t *testing.T) {
	t.Parallel()
	all := len(problems.Names())
	var said strings.Builder
	typed := "hillside\ngrade 6 skill two-force\n\nno such words\n\n10\n"
	if got, err := choose(bufio.NewReader(strings.NewReader(typed)), &said, t.TempDir()); err != nil || got.word != problems.Names()[9] {
		t.Fatalf("it leads to %q: %v", got.word, err)
	}
	answers := strings.Split(said.String(), "? problem [number, name or words]\n")
	if len(answers) != 7 {
		t.Fatalf("it is asked %d times", len(answers)-1)
	}
	whole, hill, six, again, none, hint := answers[0], answers[1], answers[2], answers[3], answers[4], answers[5]
	number := 1 + slices.Index(problems.Names(), "hillside-garage")
	if want := fmt.Sprintf("%d: hillside-garage: Hillside garage with feet at two levels\n1 of %d shown; an empty line shows all again.\n", number, all); hill != want {
		t.Errorf("hillside lists\n%s\nnot\n%s", hill, want)
	}
	if !strings.Contains(six, ": stable-hoist: ") || !strings.Contains(six, ": boatyard-crane: ") || strings.Contains(six, ": jetty-deck: ") {
		t.Errorf("grade and skill list\n%s", six)
	}
	if again != whole || strings.Count(whole, "\n") != all {
		t.Errorf("an empty line lists\n%s", again)
	}
	if none != "No problem holds all of that.\n" || !strings.HasPrefix(hint, "Type a number from 1 to ") {
		t.Errorf("of words that nothing holds it is said %q, and of an empty line then %q", none, hint)
	}
}

// Rows: what is typed at the list of a set's problems, the problem it leads to, or none, and how often it is asked.
func TestChooseTask(t *testing.T) {
	t.Parallel()
	set, err := problems.ReadSet("w.yaml", []byte("id: w1\ntitle: \"Week 1\\t1\"\nseed: 5\nproblems: [{problem: jetty-deck}, {problem: mill-bridge}]\n"), problems.Beside("."))
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range []struct {
		typed, want string
		asked       int
	}{
		{"2\nnot read\n", "mill-bridge", 1},
		{" JETTY-DECK\n", "jetty-deck", 1},
		{"3\n0\nriding-hall\n\n1", "jetty-deck", 5},
		{"quit\n", "", 1},
		{"", "", 1},
		{"nonsense", "", 1},
	} {
		var out strings.Builder
		task, err := chooseTask(set, bufio.NewReader(strings.NewReader(r.typed)), &out)
		got := ""
		if task != nil {
			got = task.Name
		}
		if asked := strings.Count(out.String(), "? problem [number, name or words]\n"); err != nil || got != r.want || asked != r.asked {
			t.Errorf("%q leads to %q after %d questions, want %q after %d: %v", r.typed, got, asked, r.want, r.asked, err)
		}
		if !strings.Contains(out.String(), "\n2: mill-bridge: ") || strings.Contains(out.String(), "\t") {
			t.Errorf("the list is %q", out.String())
		}
	}
}

// The list by line has the problems of the folder's sets behind those of the library, by set and name; a broken set does not end it.
func TestChooseFromFolder(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	for name, text := range map[string]string{
		"week.yaml":   "id: w5\ntitle: Week 5\nask: {moments: cw}\nproblems: [{problem: jetty-deck}, {problem: mill-bridge}]\n",
		"broken.yaml": "id: w6\nproblems: [{problem: nowhere}]\n",
	} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	var out strings.Builder
	got, err := choose(bufio.NewReader(strings.NewReader("w5/Mill-Bridge\n")), &out, folder)
	if err != nil || got.word != filepath.Join(folder, "week.yaml") || got.task == nil || got.task.Name != "mill-bridge" || got.task.Problem.Conventions.Word("moments") != "cw" {
		t.Errorf("it leads to %+v: %v", got, err)
	}
	if want := fmt.Sprintf("%d: w5/mill-bridge: ", len(problems.Names())+2); !strings.Contains(out.String(), want) || strings.Contains(out.String(), "nowhere") {
		t.Errorf("%q is not in the list, or more is:\n%s", want, out.String())
	}
}
