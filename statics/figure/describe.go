package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// Describe says in sentences what the figure of a frame shows, for a reader who cannot see it: how the parts run, what
// joins and holds them, and the loads.
func Describe(a *statics.Assembly, o Options) []string {
	w := wording.New(a, o.Style).Spoken()
	var lines []string
	for i := range a.Parts {
		lines = append(lines, w.Part(i))
	}
	for _, c := range a.Frame.Connections {
		lines = append(lines, w.Connection(c))
	}
	for _, s := range a.Frame.Supports {
		lines = append(lines, w.Support(s))
	}
	return sentences(append(lines, w.Loads()...))
}

// DescribeBody says in sentences what acts on a free body, as FreeBody draws it.
func DescribeBody(a *statics.Assembly, body statics.FreeBody, known map[int]exact.Num, o Options) []string {
	w := wording.New(a, o.Style).Spoken()
	lines := append([]string{wording.Body(a, body) + " is cut free"}, w.LoadsOn(body)...)
	for _, i := range a.ForcesOn(body) {
		sign, _ := a.Facing(body, i)
		if sign == 0 {
			continue
		}
		if value, ok := known[i]; ok {
			lines = append(lines, w.OnBody(body, i, sign, &value))
		} else {
			lines = append(lines, w.OnBody(body, i, sign, nil))
		}
	}
	return sentences(lines)
}

func sentences(lines []string) []string {
	for i, l := range lines {
		lines[i] = wording.Sentence(l)
	}
	return lines
}
