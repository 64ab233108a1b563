package worksheet

import "strings"

// item writes an item of a list. One whose label is blank and as long as that before goes on with the item before; one whose
// label is blank otherwise stands by itself.
func (w *web) item(label, text string) {
	name := strings.TrimSuffix(strings.TrimSpace(label), ":")
	before := w.last
	switch {
	case name == "" && before != "" && len(label) == len(before):
		w.again(text)
	case name == "":
		w.shut(groupOpening)
		w.line("<p>" + text + "</p>")
		return
	case isCount(name):
		if w.inGroup("numbers") {
			w.line("</li><li>" + text)
		} else {
			w.group("numbers", "<ol><li>"+text, "</li></ol>")
		}
	default:
		entry := "<dt>" + w.typeset(name, "") + "</dt><dd>" + text
		if w.inGroup("labels") {
			w.line("</dd>" + entry)
		} else {
			w.group("labels", "<dl>"+entry, "</dd></dl>")
		}
	}
	w.last = label
}

// again goes on with the entry before.
func (w *web) again(text string) {
	if w.open[len(w.open)-1].name == "labels" {
		w.line("</dd><dd>" + text)
		return
	}
	w.line("<br/>" + text)
}

// isCount reports whether a label is a number with a full stop.
func isCount(label string) bool {
	digits, stop := strings.CutSuffix(label, ".")
	return stop && digits != "" && strings.Trim(digits, "0123456789") == ""
}
