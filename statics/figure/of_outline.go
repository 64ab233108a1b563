package figure

import (
	"unpin/statics"
	"unpin/statics/wording"
)

// OfOutline is the scene of one body cut free, to draw on: its members, pins and names, without anything that acts on it.
func OfOutline(a *statics.Assembly, body int, o Options) Scene {
	c := newCutBody(a, statics.FreeBody{body}, nil, o)
	c.Title = wording.Sentence(wording.Body(a, statics.FreeBody{body}))
	for i := range c.Strokes {
		c.Strokes[i].Slope = Slope{}
	}
	c.pins()
	c.finish()
	c.names(c.joints())
	return c.Scene
}

// DescribeOutline says in sentences what OfOutline draws.
func DescribeOutline(a *statics.Assembly, body int, o Options) []string {
	w := wording.New(a, o.Style).Spoken()
	if a.IsPin(body) {
		return sentences([]string{wording.Body(a, statics.FreeBody{body})})
	}
	return sentences([]string{w.Part(body) + ", without what acts on it"})
}
