package problems

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
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

// What namesAfter and lying find, as patterns.
var (
	beforeJoints = regexp.MustCompile(`(?i)\b(?:at|joints?|pins?|hinges?|supports?|rollers?|feet|foot|from|to|between|corners?|knees?|tips?|ends?|heads?|ridge|pulleys?|wheels?)(?: at)? (?-i:([A-Z][0-9']*(?:(?:, | and | or | to |, and )[A-Z][0-9']*)*))(?:[ .,;:)]|$)`)
	beforeWalks  = regexp.MustCompile(`(?i)\b(?:members?|beams?|bars?|legs?|rafters?|columns?|posts?|struts?|ties?|booms?|arms?|girders?|parts?) (?-i:((?:[A-Z][0-9']*){2,}(?:(?:, | and | or )(?:[A-Z][0-9']*){2,})*))(?:[ .,;:)]|$)`)
	aCapital     = regexp.MustCompile(`[A-Z][0-9']*`)
	lyingWords   = regexp.MustCompile(`(?i)\b(level|horizontal|vertical|upright) (rope|cable|chain|beam|member|bar|girder|post|column|mast|leg|tie|strut)\b`)
)

// firsts are the different names in the order in which they come.
func firsts(names []string) []string {
	var all []string
	for _, name := range names {
		if !slices.Contains(all, name) {
			all = append(all, name)
		}
	}
	return all
}

// TestNamesInTexts holds what is found in texts word by word against patterns, in texts of the words that matter.
func TestNamesInTexts(t *testing.T) {
	t.Parallel()
	words := slices.Concat(jointNaming.after, walkNaming.after, lieable, strings.Fields("level Horizontal VERTICAL upright the At A B C2 D' AB BC2 E'F Ab Box and or to at é _ x2"))
	between := []string{" ", " ", " ", " ", ", ", ", and ", ".", " and ", "-", ",", "  ", " to "}
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		text := ""
		for range rapid.IntRange(1, 12).Draw(t, "words") {
			text += rapid.SampledFrom(words).Draw(t, "word") + rapid.SampledFrom(between).Draw(t, "between")
		}
		text = strings.TrimSuffix(text, " ")
		for how, pattern := range map[*naming]*regexp.Regexp{&jointNaming: beforeJoints, &walkNaming: beforeWalks} {
			var want []string
			for _, match := range pattern.FindAllStringSubmatch(text, -1) {
				want = append(want, aCapital.FindAllString(match[1], -1)...)
			}
			if got := firsts(namesAfter(text, *how)); !slices.Equal(got, firsts(want)) {
				t.Fatalf("%q: %q, want %q", text, got, want)
			}
			found += len(want)
		}
		var got, want []string
		for _, said := range lying(text) {
			got = append(got, said.how+" "+said.what)
		}
		for _, match := range lyingWords.FindAllStringSubmatch(text, -1) {
			want = append(want, match[0])
		}
		if !slices.Equal(got, want) {
			t.Fatalf("%q: %q, want %q", text, got, want)
		}
		found += len(want)
	})
	if found == 0 {
		t.Error("no text names anything")
	}
}
