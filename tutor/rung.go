package tutor

import (
	"fmt"
	"strings"
)

// A Rung is how much of a step the student must supply.
type Rung int

// The rungs, from the most help to the least, and the one that moves between them.
const (
	Read   Rung = iota // every step is worked; nothing is asked
	Values             // free body and sum are shown, the value is asked
	Terms              // the size, arm and sign of each term are asked, then the value
	Order              // free body and sum are asked too
	Blank              // any true sum is taken, in any order, as an equation; then its value is asked
	Fading             // read, values or terms for each step by itself, as steps of its kind came right before
)

var rungNames = []string{"read", "values", "terms", "plan", "blank", "gradual"}

// OldLevels are names that levels had before, and what they are called now.
var OldLevels = map[string]string{"order": "plan", "fading": "gradual"}

// String is the rung's name as it is typed.
func (r Rung) String() string { return rungNames[r] }

// code is the rung's name in records, which never changes.
func (r Rung) code() string {
	return [...]string{"read", "values", "terms", "plan", "blank", "gradual"}[r]
}

// Rungs lists the names of the rungs in order.
func Rungs() []string { return rungNames }

// ParseRung reads a rung's name, which to people is a level; also one that it had before.
func ParseRung(name string) (Rung, error) {
	if now, old := OldLevels[name]; old {
		name = now
	}
	for i, n := range rungNames {
		if n == name {
			return Rung(i), nil
		}
	}
	return 0, fmt.Errorf("there is no level %q; the levels are %s", name, strings.Join(rungNames, ", "))
}
