package problems

import (
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/statics"
)

// librarySize is the number of problems, fixed so that none is lost unseen.
const librarySize = 48

// solvedLibrary solves every problem of the library.
func solvedLibrary(t *testing.T) []Solved {
	t.Helper()
	var all []Solved
	for _, name := range Names() {
		p, ok := Library(name)
		if !ok || p.Name != name {
			t.Fatalf("%s is not found", name)
		}
		s, err := statics.Solve(p.Frame)
		if err != nil || s.Count.Determinacy() != statics.Determinate {
			t.Fatalf("%s is not determinate (%v)", name, err)
		}
		all = append(all, Solved{p, s})
	}
	return all
}

// TestLibrary checks that every embedded file is read without warning and can be solved, that what a chooser shows is
// there, and that each grade from 1 to 6 has the eight numbers that are due to it, from 01 to 48.
func TestLibrary(t *testing.T) {
	entries, err := files.ReadDir("library")
	if err != nil {
		t.Fatal(err)
	}
	if len(entries) != librarySize || len(Names()) != librarySize {
		t.Fatalf("%d files and %d problems, want %d of each", len(entries), len(Names()), librarySize)
	}
	units := map[string]bool{}
	for i, p := range solvedLibrary(t) {
		place, err := strconv.Atoi(entries[i].Name()[:2])
		if err != nil || place < 1 || place > 48 {
			t.Errorf("%s has no number from 01 to 48", entries[i].Name())
		}
		if p.Title == "" || p.Text == "" || len(p.Skills) == 0 {
			t.Errorf("%s lacks title, text or skills", p.Name)
		}
		if want := 1 + (place-1)/8; p.Grade != want {
			t.Errorf("%s is of grade %d, and at its number %d is due", p.Name, p.Grade, want)
		}
		for _, w := range p.Warnings {
			t.Errorf("%s: %s", p.Name, w)
		}
		units[p.Units.String()] = true
	}
	for _, want := range []string{"kN m", "N mm", "kip ft", "lb ft", "lb in", "P L"} {
		if !units[want] {
			t.Errorf("no problem is in %s", want)
		}
	}
}

// TestLibraryVary checks that what is given is one of the values that variants may take.
func TestLibraryVary(t *testing.T) {
	for _, p := range solvedLibrary(t) {
		for _, v := range p.Vary {
			i := slices.IndexFunc(p.Given, func(g Given) bool { return g.Name == v.Name })
			if i < 0 || !slices.ContainsFunc(v.Choices, p.Given[i].Value.Equal) {
				t.Errorf("%s: %s as given is not among %s", p.Name, v.Name, v.Text)
			}
		}
	}
}

// notExercised lists the skills that no problem of the library claims, with the reason.
var notExercised = map[string]string{
	"determinacy": "a lesson needs a frame that is determinate, so there is nothing to tell apart",
}

// TestLibrarySkills checks that the problems claim all skills between them, each once, and that a skill that can be seen
// in the frame is there.
func TestLibrarySkills(t *testing.T) {
	claims := map[string]int{}
	for _, p := range solvedLibrary(t) {
		if sorted := slices.Sorted(slices.Values(p.Skills)); len(slices.Compact(sorted)) < len(p.Skills) {
			t.Errorf("%s claims a skill twice", p.Name)
		}
		for _, skill := range p.Skills {
			claims[skill]++
			if shows := skillFeatures[skill]; shows != nil && !shows(p) {
				t.Errorf("%s claims %s, which its frame does not ask for", p.Name, skill)
			}
		}
	}
	for _, skill := range skillNames() {
		if _, excused := notExercised[skill]; excused != (claims[skill] == 0) {
			t.Errorf("%d problems claim %s", claims[skill], skill)
		}
	}
}

// TestLibraryFeatures checks that the problems show between them all that a frame can have.
func TestLibraryFeatures(t *testing.T) {
	t.Parallel()
	for _, f := range features {
		if !slices.ContainsFunc(solvedLibrary(t), f.in) {
			t.Errorf("no problem has %s", f.name)
		}
	}
}

// TestLibrarySample: the sample that costly tests go over lacks none of the features.
func TestLibrarySample(t *testing.T) {
	t.Parallel()
	text, err := os.ReadFile("librarytest/sample.txt")
	if err != nil {
		t.Fatal(err)
	}
	sample := slices.DeleteFunc(solvedLibrary(t), func(p Solved) bool { return !slices.Contains(strings.Fields(string(text)), p.Name) })
	for _, f := range features {
		if !slices.ContainsFunc(sample, f.in) {
			t.Errorf("no problem of the sample has %s", f.name)
		}
	}
}

// TestLibraryTidy holds every problem against the rules for its numbers.
func TestLibraryTidy(t *testing.T) {
	t.Parallel()
	for _, p := range solvedLibrary(t) {
		for _, x := range p.Shortcomings() {
			t.Errorf("%s: %s; %s, for %s", p.Name, x.Detail, x.Rule.Says, x.Rule.Why)
		}
	}
}
