package worksheet

import (
	"fmt"

	"unpin/statics"
	"unpin/statics/notation"
)

// shortcut is the solution that uses two-force members at once, with a word on them, where the problem asks for it and
// there are any; else nil.
func (w working) shortcut() *statics.Solution {
	if w.p.Conventions.TwoForce != notation.TwoForceShortcut {
		return nil
	}
	short := w.WithPulls()
	if short == nil {
		return nil
	}
	var pulls []string
	for _, f := range short.Forces {
		if f.Kind == statics.MemberPull {
			pulls = append(pulls, f.Name)
		}
	}
	text := "Two-force members are used at once: each is held at two pins only and carries no load, so it passes one force along the line from pin to pin. %s, tension positive, stand%s for their pin forces; these follow as components and are among the results."
	s := ""
	if len(pulls) == 1 {
		s = "s"
	}
	w.prose(fmt.Sprintf(text, notation.List(pulls), s))
	w.blank()
	return short
}
