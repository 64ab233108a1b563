package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics/figure/paper"
)

// webRoom is the room of figures on a page for a browser, in points.
var webRoom = room{wide: 520, tallest: 640}

// picture writes figure i with its number and title beneath. N, V and M of a frame stand side by side where there is room.
func (w *web) picture(i int) {
	b := w.d.list[i]
	sheet := w.sheets[i]
	switch kindOf(b.picture) {
	case besidePicture:
		if !w.inGroup("figures") {
			w.group("figures", `<div class="beside">`, "</div>")
		}
	case levelPicture:
		w.shut(groupOpening)
		sheet = w.levelled(sheet)
	default:
		w.shut(groupOpening)
	}
	w.figures++
	sheet.Title = oneLine(w.d.p.Title) + ": " + strings.TrimSuffix(b.text, ".")
	w.line("<figure>")
	w.Write(paper.SVG(sheet, b.words))
	w.line(fmt.Sprintf("<figcaption><b>Figure %d.</b> %s</figcaption>\n</figure>", w.figures, w.typeset(strings.TrimSuffix(b.text, "."), captionLetters(b))))
}

// levelled is the sheet of a beam made as wide as all beams of the article need to stand beneath one another.
func (w *web) levelled(s paper.Sheet) paper.Sheet {
	left, right := 0.0, 0.0
	for k, other := range w.sheets {
		if kindOf(w.d.list[k].picture) == levelPicture {
			left, right = max(left, other.Origin.X), max(right, other.Width-other.Origin.X)
		}
	}
	return s.Moved(left-s.Origin.X, left+right)
}
