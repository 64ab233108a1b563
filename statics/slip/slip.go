package slip

import (
	"slices"
	"strings"
	"sync"
)

// A Slip is one recognisable mistake.
type Slip struct {
	ID     string // a name in plain words, as load-left-off
	Group  Group
	About  Aspect
	Needs  Work   // what a student must do themselves to make it
	Source string // as the package comment names them
	Says   string // one sentence to the student, without a number: the principle, a colon, a question back to the goal
	// General marks a slip that another may describe better: where both make the same change, only the other is kept.
	General bool
	// Slight marks a slip by which very many values come about: it is only asked about, and only where nothing else fits.
	Slight bool
	// Aside marks a slip that describes a change in its own way, beside which a general one stands as well.
	Aside bool
	// InSteps marks a slip that hardly anyone makes at N, V or M, while it leads to very many values there: it is looked for
	// where forces are asked for, and not there.
	InSteps bool
	// Seldom marks a slip that few make at N, V or M: there a number of three figures is not enough to tell it.
	Seldom bool
	// OfZero marks a slip that says why zero was taken for a moment; of very many that lead to a typed zero it is told.
	OfZero bool
	find   func(s *setting) []change
}

// Principle is what a slip says before its question.
func (s *Slip) Principle() string {
	principle, _, _ := strings.Cut(s.Says, ": ")
	return principle
}

// Asks is the question in which what a slip says ends, without its mark.
func (s *Slip) Asks() string {
	_, goal, _ := strings.Cut(strings.TrimSuffix(s.Says, "?"), ": ")
	return goal
}

// A Group is a kind of slips.
type Group int

// The groups.
const (
	Body       Group = iota // choosing and isolating the body
	Connection              // what a support or connection can do
	PinPair                 // what passes through a pin
	Moment                  // moments and couples
	Component               // inclined forces
	Spread                  // distributed loads
	Algebra                 // solving, signs and units
	Internal                // N, V and M at a section
)

// String is the group's name.
func (g Group) String() string {
	return [...]string{"body", "connection", "pin pair", "moment", "component", "distributed load", "algebra", "section"}[g]
}

// An Aspect is what of a term, or of the answer, a slip is about.
type Aspect int

// The aspects.
const (
	Presence Aspect = iota // whether it belongs in the sum
	Size
	Arm
	Sense
	Line   // along which it acts
	Answer // none of the known terms, but how the answer was taken from them
)

// A Work is what of a student's own work a slip is made in. Where the sum stands on the page, printed or written and found
// right, the first two are done.
type Work int

// The kinds of work, in the order in which they come.
const (
	Choosing    Work = iota // the free body, the sum, and what goes into it
	Measuring               // a size, an arm, a component, a sense: read off the frame
	Copying                 // a number taken from the page: from the data, the sum, or an earlier result
	Multiplying             // the factors of one term
	Moving                  // terms taken across the equals sign
	Dividing                // by what the unknown is multiplied by
	Reporting               // the answer: its sign, its figures, its unit
)

// Remains reports whether such work is left where the sum stands on the page.
func (w Work) Remains() bool { return w >= Copying }

// catalogue lists all slips, by group.
var catalogue = gather()

// inOrder lists all slips, those that others may describe better last.
var inOrder = sync.OnceValue(func() []*Slip {
	return slices.SortedStableFunc(slices.Values(catalogue), func(a, b *Slip) int { return rank(a) - rank(b) })
})

func rank(s *Slip) int {
	if s.General {
		return 1
	}
	return 0
}

// Catalogue lists all slips, by group. The list is the caller's own, the slips are shared.
func Catalogue() []*Slip { return slices.Clone(catalogue) }

// ByID is the slip with an ID; nil where the catalogue has none.
func ByID(id string) *Slip {
	for _, s := range catalogue {
		if s.ID == id {
			return s
		}
	}
	return nil
}

func gather() []*Slip {
	var all []*Slip
	for _, group := range [][]Slip{
		bodySlips, connectionSlips, ropeSlips, pinSlips, momentSlips, componentSlips, spreadSlips, solvingSlips, algebraSlips, internalSlips,
	} {
		for i := range group {
			all = append(all, &group[i])
		}
	}
	return all
}
