package screen

import (
	"fmt"
	"strings"

	"unpin/statics/wording"
	"unpin/tutor"
)

// helpPage says what the keys do in a view, and what can be typed.
func helpPage(under view, w int) []line {
	var all []line
	put := func(key, text string) {
		rows := fold(text, max(w-18, 20), 0)
		for i, row := range rows {
			if i > 0 {
				key = ""
			}
			all = append(all, line{{fmt.Sprintf("%-16s  ", key), strongInk}, {row, plainInk}})
		}
	}
	of := under
	if of != choosing && of != drilling {
		of = working
	}
	for _, list := range [][]binding{bindings(of), anywhere} {
		for _, b := range list {
			if b.help != "" {
				put(b.shown, b.help)
			}
		}
	}
	all = append(all, nil)
	if under == choosing {
		all = append(all, folded("Type words to find problems: of a title, a text or a skill. With grade 3 or grade 3-5 only these grades are shown, with skill couple only what exercises it. Esc shows all again.", w, 0, plainInk)...)
		all = append(all, nil)
		put("level read", "every step is worked, to read")
		put("level values", "free body and sum are shown, the value is asked")
		put("level terms", "each force, arm and sign of a sum is asked, then the value")
		put("level plan", "free body and sum are chosen as well")
		put("level blank", "any true sum is chosen and written out, in any order")
		put("level gradual", "worked at first, and more is asked as it comes right")
		return append(append(all, nil), folded(wording.Caution, w, 0, plainInk)...)
	}
	if under == drilling {
		all = append(all, folded("Type the number of a choice, or where a value is asked for, the value.", w, 0, plainInk)...)
		all = append(all, nil)
		put("hint", "typed, points to the place, step by step")
		put("tell", "typed, says the answer and goes on")
		put("quit", "typed, stops")
		return append(append(all, nil), folded(wording.Caution, w, 0, plainInk)...)
	}
	all = append(all, folded("An answer is a number, a fraction or an expression, with a unit and a sense if you like: 9.5, 45/8, 0.5*6*4, 12000 N, 15 down.", w, 0, plainInk)...)
	all = append(all, nil)
	put("hint", "typed, gives a hint")
	put("example", "typed, shows a step of the same kind from another problem")
	put("tell", "typed, tells the value and goes on")
	put("back", "typed, returns to the question before")
	put("resume", "typed at the first question, takes up earlier work")
	put("level values", "typed, takes the problem up at that level: "+strings.Join(tutor.Levels(), ", "))
	put("let Cx left", "typed at the levels plan and blank, takes an unknown in that sense")
	put("task", "typed, shows the task again")
	put("new", "typed, begins the same frame with new numbers")
	put("restart", "typed, sets aside what was done here and begins anew")
	put("sheet, help, quit", "typed, do what they say")
	all = append(all, nil)
	all = append(all, folded("In the figure a dashed arrow is a force with an assumed sense; once its value is known the arrow is drawn whole and turns if the value is negative. What the other part receives stands in brackets. A ring marks the centre of a sum; what adds nothing to the sum is faint, and what is asked is set off. N, V and M are drawn as far as they are settled.", w, 0, plainInk)...)
	return append(append(all, nil), folded(wording.Caution, w, 0, plainInk)...)
}
