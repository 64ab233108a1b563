package worksheet

import (
	"fmt"
	"strings"
)

// table writes table i of the document. It scrolls by itself where the window is too narrow, also by keys.
func (w *web) table(i int, t table) {
	w.shut(groupOpening)
	if t.hasBoxes() {
		t = t.withoutEmpty()
	}
	label := w.headingOver(i)
	w.line(fmt.Sprintf(`<div class="scroll" role="region" tabindex="0" aria-labelledby="%s">`, label))
	w.line(fmt.Sprintf(`<table aria-labelledby="%s">`, label))
	if t.alike != nil {
		w.WriteString("<colgroup>")
		for _, wide := range t.widths(manySigns) {
			w.WriteString(fmt.Sprintf(`<col style="width: %dch"/>`, wide+columnGap))
		}
		w.line("</colgroup>")
	}
	w.WriteString("<thead><tr>")
	for k, head := range printedHeads(t.head) {
		quantity, unit, ok := strings.Cut(head, " in ")
		text := w.typeset(quantity, mathLetters)
		if ok { // in N in N the unit is upright
			text += " in " + w.typeset(unit, "")
		}
		if head == "" && t.heard != nil {
			text = `<span class="heard">` + escape(t.heard[k]) + "</span>"
		}
		w.WriteString(`<th scope="col"` + aligned(t.align[k]) + ">" + text + "</th>")
	}
	w.line("</tr></thead>\n<tbody>")
	for _, row := range t.rows {
		w.WriteString("<tr>")
		for k, cell := range row {
			if cell == box {
				w.WriteString(`<td class="box"></td>`)
				continue
			}
			text := w.typeset(cell, t.lettersOf(k))
			if runes(cell) <= shortCell && !blankRuns().MatchString(cell) {
				text = strings.ReplaceAll(text, " ", string(bound))
			}
			if k == 0 {
				w.WriteString(`<th scope="row"` + aligned(t.align[k]) + ">" + text + "</th>")
				continue
			}
			w.WriteString("<td" + aligned(t.align[k]) + ">" + text + "</td>")
		}
		w.line("</tr>")
	}
	w.line("</tbody></table></div>")
}

// manySigns is more than any row has: the columns of a page are not pressed.
const manySigns = 10000

// shortCell is the longest text of a cell that stays on one line.
const shortCell = 20

// aligned is how a column stands, as an attribute.
func aligned(side byte) string {
	if side == 'r' {
		return ` class="right"`
	}
	return ""
}

// headingOver is the place of the heading that passage i stands beneath.
func (w *web) headingOver(i int) string {
	for ; i > 0; i-- {
		switch b := w.d.list[i]; b.kind {
		case subheadPassage:
			return w.blockID(i)
		case sectionPassage:
			return w.id(b.text)
		}
	}
	return articleID(w.number)
}
