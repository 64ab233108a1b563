package screen

import "unpin/statics/figure"

// An ink is what a text or a mark means to the reader.
type ink uint8

// The inks.
const (
	plainInk ink = iota
	titleInk
	noteInk  // a reason, a label: in the normal ink, since faint text is hard to read; its place sets it off
	fadedInk // of a figure, what has no part in the question
	rightInk
	notYetInk
	hintInk
	valueInk // a value found
	askedInk // what is asked
	loadInk
	knownInk
	chosenInk
	cursorInk
	strongInk
	inks
)

// A theme says how each ink is dressed: the codes of Select Graphic Rendition of ECMA-48 section 8.3.117, or none.
type theme [inks]string

func (t theme) code(k ink) string { return t[k] }

// themeFor is the theme with colours, or with bold, faint, underlined and reversed text only.
func themeFor(colour bool) theme {
	t := theme{
		titleInk: "1", fadedInk: "2", rightInk: "1", notYetInk: "1", hintInk: "4", valueInk: "1", askedInk: "1;4",
		chosenInk: "7", cursorInk: "7", strongInk: "1",
	}
	if colour { // of the eight, those that are read on a light ground and on a dark one; what is asked has one to itself, and its line as without
		t[rightInk], t[notYetInk], t[hintInk] = "1;32", "1;31", "4;36"
		t[valueInk], t[askedInk], t[loadInk], t[knownInk] = "1;32", "1;4;35", "31", "32"
	}
	return t
}

// inkOf is the ink of a mark in a figure.
func inkOf(l figure.Look) ink {
	switch {
	case l.Emphasis == figure.Faded:
		return fadedInk
	case l.Emphasis == figure.Lit:
		return askedInk
	}
	switch l.Role {
	case figure.LoadMark, figure.ResultantMark:
		return loadInk
	case figure.KnownForce, figure.DiagramMark:
		return knownInk
	case figure.ReversedForce, figure.DimensionMark, figure.GroundMark, figure.DiagramHatch:
		return fadedInk
	case figure.MemberLine, figure.NameMark, figure.CentreMark:
		return strongInk
	}
	return plainInk
}
