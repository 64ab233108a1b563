package qti

import (
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
)

// TestPoints plays three answers, worth 5, 2.5 and 2.5 points, by schemes whose points are counted by hand.
func TestPoints(t *testing.T) {
	t.Parallel()
	scheme := func(text string) *problems.Scheme {
		s, err := problems.ReadScheme("", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	q := libraryQuestion(t, "jetty-deck")
	q.Items, _ = q.Asked([]string{"RB", "Ay", "V(AB, 0)"}) // 20.5, 11.5, 11.5
	q.Weights = []exact.Num{exact.MustParse("0.5"), exact.MustParse("0.25"), exact.MustParse("0.25")}
	usual := scheme("{}")
	for name, c := range map[string]struct {
		scheme *problems.Scheme
		typed  [3]string
		want   string
	}{
		"all right":               {usual, [3]string{"20.5", "11.5", "11.5"}, "10"},
		"right by no scheme":      {nil, [3]string{"20.5", "-11.5", "11.5"}, "15/2"},
		"one sense":               {usual, [3]string{"-20.5", "11.5", "11.5"}, "15/2"},                                    // 2.5 + 2.5 + 2.5
		"two senses, once":        {usual, [3]string{"-20.5", "-11.5", "11.5"}, "15/2"},                                   // as one
		"two senses, each":        {scheme("once: []"), [3]string{"-20.5", "-11.5", "11.5"}, "13/2"},                      // 6.25, rounded half up
		"close":                   {usual, [3]string{"20.5", "11.72", "11.5"}, "9"},                                       // 8.75
		"close in steps of 0.25":  {scheme("round: 0.25"), [3]string{"20.5", "11.72", "11.5"}, "35/4"},                    // 8.75
		"wrong earns a tenth":     {scheme("verdicts: {right: 1, wrong: 0.1}"), [3]string{"777", "11.5", "11.5"}, "11/2"}, // 0.5 + 5
		"accepted besides":        {scheme("accept: {RB: [777]}"), [3]string{"777", "11.5", "11.5"}, "10"},
		"nothing typed in two":    {usual, [3]string{"20.5", "", ""}, "5"},
		"rounded to whole points": {scheme("round: 1"), [3]string{"", "11.5", ""}, "3"},
	} {
		q.Scheme = c.scheme
		for v := range Versions {
			_, item := packaged(t, single(q), Version(v), q)
			typed := map[string]string{}
			for i, id := range responses(item) {
				if c.typed[i] != "" {
					typed[id] = c.typed[i]
				}
			}
			if got := play(t, item, typed)[score]; got != c.want {
				t.Errorf("%s, in version %s: %v scores %s, want %s", name, Versions[v], c.typed, got, c.want)
			}
		}
	}
}
