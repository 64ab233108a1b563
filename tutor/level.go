package tutor

import (
	"fmt"
	"strings"
)

// A Level is how much of a step the student must supply.
type Level int

// The levels, from the most help to the least, and the one that moves between them.
const (
	Read    Level = iota // every step is worked; nothing is asked
	Values               // free body and sum are shown, the value is asked
	Terms                // the size, arm and sign of each term are asked, then the value
	Plan                 // free body and sum are asked too
	Blank                // any true sum is taken, in any order, as an equation; then its value is asked
	Gradual              // for each step read, values or terms, as steps of its kind came right before; at last plan or blank
)

var levelNames = []string{"read", "values", "terms", "plan", "blank", "gradual"}

// OldLevels are names that levels had before, and what they are called now.
var OldLevels = map[string]string{"order": "plan", "fading": "gradual"}

// String is the level's name as it is typed.
func (v Level) String() string { return levelNames[v] }

// code is the level's name in records, which never changes.
func (v Level) code() string {
	return [...]string{"read", "values", "terms", "plan", "blank", "gradual"}[v]
}

// Levels lists the names of the levels in order.
func Levels() []string { return levelNames }

// ParseLevel reads the name of a level, or one that it had before.
func ParseLevel(name string) (Level, error) {
	if now, old := OldLevels[name]; old {
		name = now
	}
	for i, n := range levelNames {
		if n == name {
			return Level(i), nil
		}
	}
	return 0, fmt.Errorf("there is no level %q; the levels are %s", name, strings.Join(levelNames, ", "))
}
