package figure_test

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/figuretest"
)

// TestWords says of frames what each section of testdata/scenes/words.txt asks for: after the name of the frame nothing, for
// the frame itself, or body BC, solved BC, sum 3,
// kept BC 2.4 after start, N, V or M.
func TestWords(t *testing.T) {
	t.Parallel()
	const file = "testdata/scenes/words.txt"
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	text := map[string]string{}
	for _, m := range regexp.MustCompile("(?m)^== (.*)$").FindAllStringSubmatch(string(data), -1) {
		frame, of, _ := strings.Cut(m[1], " ")
		d, _, _ := figuretest.Load(t, "testdata/"+frame+".txt")
		names = append(names, m[1])
		text[m[1]] = strings.Join(words(t, d, strings.Fields(of)), "\n")
	}
	figuretest.Golden(t, file, *update, names, text)
}

// words are the sentences about a scene.
func words(t *testing.T, d *figuretest.Drawing, of []string) []string {
	o := figure.Options{Style: d.Style}
	switch {
	case len(of) == 0:
		return figure.Describe(d.Cut(t), o)
	case of[0] == "body":
		return figure.DescribeBody(d.Cut(t), d.Body(t, of[1]), nil, o)
	case of[0] == "solved":
		return figure.DescribeBody(d.Cut(t), d.Body(t, of[1]), d.Values(t), o)
	case of[0] == "kept":
		return figure.DescribeKept(d.Section(t, of[1:]), d.Values(t), o)
	case of[0] == "sum":
		s := d.Solution(t)
		return figure.DescribeSum(s.Assembly, s.Plan[figuretest.Atoi(of[1])-1].Sums[0], d.Before(t, figuretest.Atoi(of[1])), o)
	}
	return figure.DescribeDiagram(d.Solution(t), figuretest.ForceOf(of[0]), o)
}
