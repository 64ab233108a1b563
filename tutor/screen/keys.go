package screen

import (
	tea "github.com/charmbracelet/bubbletea"
)

// A binding is what some keys do in a view. The help line and the help page are written from the bindings, so that a key
// that does nothing now is not in the line.
type binding struct {
	keys  []string // as bubbletea spells them
	shown string   // as people read them
	word  string   // for the help line; empty where it stands on the help page only
	last  bool     // the screen says so elsewhere: in the help line only where there is room for all else
	help  string   // for the help page
	able  func(*Model) bool
	do    func(*Model) tea.Cmd
}

// off reports whether the binding does nothing now.
func (b binding) off(m *Model) bool { return b.able != nil && !b.able(m) }

// bindings are the bindings of a view.
func bindings(v view) []binding {
	switch v {
	case choosing:
		return chooserKeys
	case working:
		return lessonKeys
	case drawing:
		return figureKeys
	case tasking:
		return taskKeys
	case opening:
		return openingKeys
	case closing:
		return closingKeys
	case drilling:
		return drillKeys
	}
	return readerKeys
}

// What a key does, to the program or to one of its views.
func does(do func(*Model)) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { do(m); return nil }
}
func opens(v view) func(*Model) tea.Cmd { return func(m *Model) tea.Cmd { return m.open(v) } }
func inChooser(do func(*chooser)) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { do(&m.chooser); return nil }
}
func inCourse(do func(*course)) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { do(m.course); return nil }
}
func inReader(do func(*reader)) func(*Model) tea.Cmd {
	return func(m *Model) tea.Cmd { do(&m.reader); return nil }
}

// anywhere are the bindings that hold in every view.
var anywhere = []binding{
	{keys: []string{"ctrl+c"}, shown: "ctrl+c", word: "leave", last: true, help: "leaves; what was done is kept", do: func(*Model) tea.Cmd { return tea.Quit }},
	{keys: []string{"ctrl+z"}, shown: "ctrl+z", help: "puts the program aside; fg brings it back", do: func(*Model) tea.Cmd { return tea.Suspend }},
}

var chooserKeys, lessonKeys, openingKeys, closingKeys, taskKeys, figureKeys, readerKeys []binding

func init() { // here, since what keys do leads back to the tables
	usable := func(m *Model) bool { return m.chooser.usable() }
	acts := func(m *Model) bool { return m.chooser.acts() }
	levelled := func(m *Model) bool { return m.chooser.free() }
	free := func(m *Model) bool { return m.o.Sitting == nil }
	several := func(m *Model) bool { return m.course.several(m.course.places(m.w, m.h)) }
	renewable := func(m *Model) bool { return free(m) && (!m.course.l.Exam() || m.course.done()) }
	earlier := func(m *Model) bool { return m.course.l.Earlier() > 0 }
	mendable := func(m *Model) bool { return m.course.mendable() }
	canHint := func(m *Model) bool { return m.course.canHint() }
	scrolls := func(m *Model) bool { return m.reader.scrolls() }
	chooserKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "work on it", help: "begins the problem, or goes on where you left it", able: acts, do: (*Model).begin},
		{keys: []string{"up", "ctrl+p"}, shown: "up, down", word: "choose", help: "moves to another problem", do: inChooser(func(c *chooser) { c.move(-1) })},
		{keys: []string{"down"}, do: inChooser(func(c *chooser) { c.move(1) })},
		{keys: []string{"pgup"}, do: inChooser(func(c *chooser) { c.move(-8) })},
		{keys: []string{"pgdown"}, do: inChooser(func(c *chooser) { c.move(8) })},
		{keys: []string{"right"}, shown: "left, right", word: "level", help: "changes how much of each step is left to you", able: levelled, do: inChooser(func(c *chooser) { c.changeLevel(1) })},
		{keys: []string{"left"}, able: levelled, do: inChooser(func(c *chooser) { c.changeLevel(-1) })},
		{keys: []string{"tab"}, shown: "tab", word: "task", help: "shows the whole task, with the frame", able: usable, do: opens(tasking)},
		{keys: []string{"esc"}, shown: "esc", help: "shows all problems again", do: leavePaper},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", help: "shows this page", do: opens(helping)},
	}
	lessonKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "answer", last: true, help: "gives the answer typed; at a worked step, reads on", do: (*Model).answer},
		{keys: []string{"tab"}, shown: "tab", word: "figure or sheet", help: "changes between the figure, the diagram and the sheet, where there is room for one", able: several,
			do: does(func(m *Model) { m.course.swap(m.course.places(m.w, m.h)) })},
		{keys: []string{"ctrl+t"}, shown: "ctrl+t", word: "hint", help: "gives a hint: points, then teaches, then says what to write", able: canHint, do: func(m *Model) tea.Cmd { return m.typed("hint") }},
		{keys: []string{"ctrl+x"}, shown: "ctrl+x", word: "task", help: "shows the task again, with the frame as given", do: opens(tasking)},
		{keys: []string{"ctrl+f"}, shown: "ctrl+f", word: "figure", help: "shows the figure on the whole screen; left and right go through the frame as given, all parts apart, the whole, the free body and the sum in hand, and N, V and M so far", do: opens(drawing)},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", help: "shows this page", do: opens(helping)},
		{keys: []string{"esc"}, shown: "esc", word: "back", help: "empties the line, comes back from looking, or returns to the problems", do: (*Model).leave},
		{keys: []string{"ctrl+r"}, shown: "ctrl+r", word: "whole sheet", help: "shows the sheet on the whole screen, to reread", do: opens(reading)},
		{keys: []string{"ctrl+g"}, shown: "ctrl+g", word: "turn figure", help: "changes between the free body and the frame as given; where all parts are wanted and have no room, goes through them one by one", do: inCourse(func(c *course) { c.turnFigure() })},
		{keys: []string{"ctrl+p"}, shown: "ctrl+p, ctrl+n", word: "look back", help: "looks at the step before, and after; the question stays", do: inCourse(func(c *course) { c.look(-1) })},
		{keys: []string{"ctrl+n"}, do: inCourse(func(c *course) { c.look(1) })},
		{keys: []string{"ctrl+y"}, shown: "ctrl+y", help: "begins the same frame with new numbers; what was done is kept", able: renewable, do: does((*Model).renew)},
		{keys: []string{"ctrl+o"}, shown: "ctrl+o", help: "shows all that was said last", do: opens(telling)},
		{keys: []string{"ctrl+l"}, shown: "ctrl+l", help: "brings back the line that was not right, to be mended", able: mendable, do: inCourse((*course).mend)},
		{keys: []string{"pgup", "up"}, shown: "up, down", help: "scrolls the sheet", do: inCourse(func(c *course) { c.scrollSheet(1) })},
		{keys: []string{"pgdown", "down"}, do: inCourse(func(c *course) { c.scrollSheet(-1) })},
	}
	up := binding{keys: []string{"up"}, shown: "up, down", word: "scroll", able: scrolls, do: inReader(func(r *reader) { r.scrollBy(-1) })}
	down := binding{keys: []string{"down"}, do: inReader(func(r *reader) { r.scrollBy(1) })}
	back := binding{keys: []string{"pgup"}, do: inReader(func(r *reader) { r.pages(-1) })}
	on := binding{keys: []string{"pgdown"}, do: inReader(func(r *reader) { r.pages(1) })}
	parted := func(m *Model) bool { return m.reader.parted() }
	swap := binding{keys: []string{"tab"}, shown: "tab", word: "figure", able: parted, do: inReader((*reader).swap)}
	taskKeys = []binding{
		swap,
		{keys: []string{"esc", "enter", "q", "ctrl+x"}, shown: "esc", word: "back", do: does((*Model).close)},
		up, down, back, on,
	}
	openingKeys = []binding{
		{keys: []string{"enter", " "}, shown: "enter", word: "begin", do: does(func(m *Model) { m.goOn(true) })},
		{keys: []string{"ctrl+n"}, shown: "ctrl+n", word: "start over", able: earlier, do: does(func(m *Model) { m.goOn(false) })},
		swap, up, down, back, on,
		{keys: []string{"?", "f1"}, shown: "?", word: "help", do: opens(helping)},
		{keys: []string{"esc"}, shown: "esc", word: "problems", do: (*Model).toChooser},
	}
	closingKeys = []binding{
		{keys: []string{"enter"}, shown: "enter", word: "answer", do: (*Model).leadOn},
		{keys: []string{"n", "ctrl+y"}, shown: "n", word: "new numbers", able: free, do: does((*Model).renew)},
		up, down, back, on,
		{keys: []string{"ctrl+f"}, shown: "ctrl+f", word: "figures", do: opens(drawing)},
		{keys: []string{"ctrl+r"}, shown: "ctrl+r", word: "sheet", do: opens(reading)},
		{keys: []string{"ctrl+x"}, shown: "ctrl+x", word: "task", do: opens(tasking)},
		{keys: []string{"?", "f1"}, shown: "?", word: "help", do: opens(helping)},
		{keys: []string{"esc", "q"}, shown: "esc", word: "back to the lesson", do: does((*Model).close)},
	}
	figureKeys = []binding{
		{keys: []string{"esc", "enter", "q", "ctrl+f"}, shown: "esc", word: "back", do: does((*Model).close)},
		{keys: []string{"right", "tab", "down", " ", "l", "j"}, shown: "left, right", word: "other figures", do: inCourse(func(c *course) { c.changeScene(1) })},
		{keys: []string{"left", "shift+tab", "up", "h", "k"}, do: inCourse(func(c *course) { c.changeScene(-1) })},
	}
	readerKeys = []binding{
		{keys: []string{"esc", "enter", "q", "ctrl+r", "ctrl+o", "?", "f1"}, shown: "esc", word: "back", do: does((*Model).close)},
		{keys: []string{"up", "k"}, shown: "up, down", word: "scroll", able: scrolls, do: inReader(func(r *reader) { r.scrollBy(-1) })},
		{keys: []string{"down", "j"}, do: inReader(func(r *reader) { r.scrollBy(1) })},
		{keys: []string{"pgup", "b"}, shown: "pgup, pgdn", word: "by pages", able: scrolls, do: inReader(func(r *reader) { r.pages(-1) })},
		{keys: []string{"pgdown", " "}, do: inReader(func(r *reader) { r.pages(1) })},
		{keys: []string{"home", "g"}, do: inReader(func(r *reader) { r.scrollBy(-1 << 20) })},
		{keys: []string{"end", "G"}, do: inReader(func(r *reader) { r.scrollBy(1 << 20) })},
	}
}

// wordNow is the word of a binding, which for some of the lesson depends on what is in hand.
func (m *Model) wordNow(b binding) string {
	switch {
	case m.view == choosing && b.word == "work on it" && !m.chooser.usable():
		return "do it"
	case b.word == "figure" && m.reader.alone:
		return "text"
	case m.view == drilling && b.word == "answer" && m.drill.done():
		return map[bool]string{true: "the next piece", false: "to the problems"}[len(m.portion) > 0]
	case m.view == drilling && b.word == "figure or text":
		return map[bool]string{true: "text", false: "figure"}[m.drill.onFigure]
	case m.view == opening && b.word == "begin" && m.course.l.Earlier() > 0:
		return "go on where you left it"
	case m.view != working && m.view != closing:
	case b.shown == "enter" && b.word == "answer":
		return m.course.enterWord(m.o.Clock())
	case b.shown == "tab" && m.view == working:
		return m.course.paneWord(m.course.places(m.w, m.h))
	}
	return b.word
}
