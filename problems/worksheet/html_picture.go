package worksheet

import (
	"fmt"
	"strings"
)

// How small a figure may become, as a share of its own size: its letters of 9 points are 10 pixels then, on a screen of 96 to the inch.
// From the second width on, in points, it is wider even so than the narrowest windows, which are 320 pixels with their margins.
const (
	leastShare  = 0.85
	narrowWidth = 216
)

// legible writes an image so wide that shrinks with the window as far as its letters can be read, and scrolls from there on, also by keys.
func (w *web) legible(width float64, figure int, image []byte) {
	least := width * leastShare
	if least <= narrowWidth {
		w.Write(image)
		return
	}
	w.line(fmt.Sprintf(`<div class="scroll" role="group" tabindex="0" aria-label="Figure %d" style="--least: %.0fpt">`, figure, least))
	w.Write(image)
	w.line("</div>")
}

// picture writes figure i with its number and title beneath. N, V and M of a frame stand side by side where there is room.
func (w *web) picture(i int) {
	b := w.d.list[i]
	if b.pictureKind() != besidePicture {
		w.shut(groupOpening)
	} else if !w.inGroup("figures") {
		w.group("figures", `<div class="beside">`, "</div>")
	}
	w.figures++
	w.line("<figure>")
	w.legible(w.gallery.sheet(i).Width, w.figures, w.gallery.image(i))
	w.line(fmt.Sprintf("<figcaption><b>Figure %d.</b> %s</figcaption>\n</figure>", w.figures, w.typeset(strings.TrimSuffix(b.text, "."), captionLetters(b))))
}
