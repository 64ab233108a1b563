package screen

import (
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/tutor"
)

var update = flag.Bool("update", false, "rewrite the screens in testdata")

// divider parts what a test file asks for from the screen.
const divider = "\n----\n"

// TestScreens draws what each file in testdata asks for: its first line is "chooser", or a problem and a level, or "find" or "sketch" with a problem, a
// skill or "any" and a number, then the
// width and the height, perhaps "ascii" and "exam"; its second line is keys, parted by blanks. The screens were looked at one by
// one; a change to them must be looked at too.
func TestScreens(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob(filepath.Join("testdata", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatal("no screens in testdata")
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			asked, want, _ := strings.Cut(string(data), divider)
			got := screenOf(t, asked)
			if *update {
				if err := os.WriteFile(file, []byte(strings.TrimRight(asked, "\n")+divider+got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got != want {
				t.Errorf("%s shows otherwise:\n%s", file, got)
			}
		})
	}
}

// shelf names the problems that these screens have to choose from, so that a problem added to the library changes none.
var shelf = []string{
	"jetty-deck", "mill-bridge", "quay-gantry", "sawmill-portal", "riding-hall", "painters-trestle", "hillside-garage", "stable-hoist",
}

// fromShelf lists the problems of the shelf.
func fromShelf() []Entry {
	var list []Entry
	for _, name := range shelf {
		p, _ := problems.Library(name)
		list = append(list, Entry{Name: name, Problem: p})
	}
	return list
}

// screenOf is the screen that the head of a test file asks for, each line without the blanks at its end.
func screenOf(t *testing.T, asked string) string {
	head, keys, _ := strings.Cut(asked, "\n")
	words := strings.Fields(head)
	o := Options{Level: tutor.Values, ASCII: slices.Contains(words, "ascii"), Exam: slices.Contains(words, "exam")}
	words = slices.DeleteFunc(words, func(w string) bool { return w == "ascii" || w == "exam" })
	var m *Model
	if words[0] == "chooser" {
		o.Entries = fromShelf
		m = atChooser(o)
		words = words[1:]
	} else if words[0] == "find" || words[0] == "sketch" {
		n, _ := strconv.Atoi(words[3])
		p, _ := problems.Library(words[1])
		d, err := tutor.FindTheMistake(p, words[2], uint64(n))
		if words[0] == "sketch" {
			d, err = tutor.Sketch(p, uint64(n))
		}
		if err != nil {
			t.Fatal(err)
		}
		o.Drill = d
		m = New(o)
		words = words[4:]
	} else {
		level, err := tutor.ParseLevel(words[1])
		if err != nil {
			t.Fatal(err)
		}
		o.Lesson = lesson(t, words[0], level, o.Exam)
		m = New(o)
		words = words[2:]
	}
	w, _ := strconv.Atoi(words[0])
	h, _ := strconv.Atoi(words[1])
	size(m, w, h)
	press(m, strings.Fields(keys)...)
	if fault := checkView(m.View(), w, h, o.ASCII); fault != "" {
		t.Error(fault)
	}
	var b strings.Builder
	for _, l := range strings.Split(bare(m.View()), "\n") {
		b.WriteString(strings.TrimRight(l, " ") + "\n")
	}
	return b.String()
}
