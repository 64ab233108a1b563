package problems

import (
	"strings"
	"testing"
)

// TestTextWarnings reads texts that say what the frame is not, and texts that only seem to.
func TestTextWarnings(t *testing.T) {
	t.Parallel()
	const frame = "joints: {A: [0, 0], B: [4, 3], C2: [8, 6]}\nmembers: [AB, BC2]\nunits: kN m\nsupports: {A: fixed}\n" +
		"given: {P: 6}\nloads: [{point: P, to: [3, 4], joint: B}]\n"
	for text, want := range map[string]string{
		"A beam from A to C2 is pushed at B.":                    "",
		"A beam AB carries P at B. A wall stands on the left.":   "",
		"Find N, V and M. At M the moment is largest.":           "",
		"Two forces pull: P and Q. A Load is hung up.":           "",
		"The beam AB2 is held at A.":                             "The text names B2, and no joint is called so. The joints are A, B and C2.",
		"A load hangs at D, B and E.":                            "names D,|names E,",
		"Find the forces of the bar BDC2 and between A and F.":   "names D,|names F,",
		"A vertical post carries it.":                            "speaks of a vertical post, and nothing in the frame is vertical.",
		"A level rope pulls at B.":                               "speaks of a level rope, and nothing in the frame is level.",
		"The level of the water is at B; vertical force is none": "",
	} {
		p, err := Read("t.yaml", []byte("title: T\ntext: >\n  Some words.\n  "+text+"\n"+frame))
		if err != nil {
			t.Fatal(err)
		}
		got := strings.Join(p.Warnings, "|")
		for _, part := range strings.Split(want, "|") {
			if !strings.Contains(got, part) || (want == "") != (got == "") {
				t.Errorf("%s\n%q, want %q", text, got, want)
			}
		}
		if want != "" && !strings.HasPrefix(got, "Line 4: ") {
			t.Errorf("%s\n%q, which is not line 4", text, got)
		}
	}
}

// TestOwnAmongChoices warns of a given number that may not be what it is.
func TestOwnAmongChoices(t *testing.T) {
	t.Parallel()
	const file = "title: T\nunits: kN m\ngiven: {h: 3}\njoints: {A: [0, 0], B: [h, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n" +
		"loads: [{point: 6, to: down, joint: B}]\nvary: {h: %}\n"
	for choices, want := range map[string]string{
		"[2, 3]": "", "2..4 by 1/2": "", "[2, 4]": "Line 8: h is 3 under given, which is not among its values under vary; one of them should be the problem's own.",
	} {
		p, err := Read("t.yaml", []byte(strings.Replace(file, "%", choices, 1)))
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(p.Warnings, "|"); got != want {
			t.Errorf("%s: %q, want %q", choices, got, want)
		}
	}
}
