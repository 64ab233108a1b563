package problems

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Problem is what a problem file says, checked. It is not changed after reading.
type Problem struct {
	Name        string // the file's name without folder and ending, or the name in the library
	Title       string
	Text        string // the scenario; may be empty
	Units       notation.Units
	Given       []Given // in file order
	Frame       statics.Frame
	Vary        []Variation // in file order
	Conventions notation.Conventions
	Find        []string // what is to be found, some of "reactions", "pins", "diagrams"; all of them where the file does not say
	Grade       int      // 1 (gentle) to 6 (hard); 0 where the file does not say
	Skills      []string // names from Skills
	Entries     []Entry  // the loads as written; statics.Load.Entry is an index into it
	Warnings    []string // what is legal but likely a mistake, a sentence each
}

// A Given is a name for a number.
type Given struct {
	Name  string
	Text  string // as written
	Value exact.Num
}

// A Variation is the values that a given number may take in variants of the problem.
type Variation struct {
	Name    string
	Text    string      // as written: "3..6 by 0.5", "[2, 3, 5]"
	Choices []exact.Num // at least two, all different
}

// Style is how texts about the problem are written: in its conventions and units.
func (p *Problem) Style(ascii bool) notation.Style {
	return notation.NewStyle(p.Conventions, p.Units, ascii)
}

// An Entry is one load as the file has it, for prose. A load over several members is one Entry.
type Entry struct {
	Kind  string   // "point", "couple", "uniform" or "ramp"
	Size  []string // the number as written; a ramp has two
	To    string   // the direction as written: "down", "210deg", "[3, -4]"; a couple "ccw" or "cw"
	On    []string // members as written there; "all" stands for itself
	Joint string
	At    string // position as written: "2.4", "1/2 length"
	From  string
	Until string
	Per   string // "length", "run" or "rise"; empty for a point load and a couple
}
