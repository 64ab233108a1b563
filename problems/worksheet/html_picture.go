package worksheet

import (
	"fmt"
	"strings"
)

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
	w.Write(w.gallery.image(i))
	w.line(fmt.Sprintf("<figcaption><b>Figure %d.</b> %s</figcaption>\n</figure>", w.figures, w.typeset(strings.TrimSuffix(b.text, "."), captionLetters(b))))
}
