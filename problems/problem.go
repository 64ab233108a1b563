package problems

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
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
	Settled     notation.Preferences // the conventions that the file itself settles
	Find        []string             // what is to be found, some of "reactions", "pins", "diagrams"; all of them where the file does not say
	Grade       int                  // 1 (gentle) to 6 (hard); 0 where the file does not say
	Skills      []string             // names from Skills
	Entries     []wording.Entry      // the loads as written; statics.Load.Entry is an index into it
	Warnings    []string             // what is legal but likely a mistake, a sentence each
	Where       []Condition          // what the numbers of variants keep to, in file order

	source      *source  // the file
	tree        *node    // what is in it
	numbers     []Number // those of the file that have a role
	title, text template // with the names of given numbers
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

// A Condition is a comparison of numbers that variants of a problem keep to.
type Condition struct {
	Text  string // as written: "h < w"
	Holds bool   // for the given numbers of this problem
}

// In is the problem in other conventions.
func (p *Problem) In(c notation.Conventions) *Problem {
	other := *p
	other.Conventions = c
	if p.title != nil || p.text != nil {
		other.fillTexts()
	}
	return &other
}

// Under is the problem in the conventions of a course, as far as its own file settles none.
func (p *Problem) Under(course notation.Preferences) *Problem {
	return p.In(p.Settled.Over(course.Over(p.Conventions)))
}

// Asking is the problem with other things to be found, which Solved.Asked takes.
func (p *Problem) Asking(find []string) *Problem {
	other := *p
	other.Find = find
	return &other
}

// Style is how texts about the problem are written: in its conventions and units.
func (p *Problem) Style(ascii bool) notation.Style {
	return notation.NewStyle(p.Conventions, p.Units, ascii)
}
