package problems

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// A Fault is one thing wrong with a problem file.
type Fault struct {
	Line, Column int    // both from 1; the column counts characters
	Excerpt      string // the line, or the stretch of it around the column, and a line of carets beneath; empty if there is nothing to show
	Problem      string // what is wrong, a clause without a full stop
	Remedy       string // what would be right, a sentence
}

// Faults is the error of a file that cannot be used: everything wrong with it, in the order of its lines.
type Faults struct {
	File string // as the caller named it
	List []Fault
	More int // faults beyond those listed
}

// maxFaults bounds the faults that are kept, so that a file of another kind does not fill the screen.
const maxFaults = 100

// shownAlike is how many faults of the same words are shown; of further ones only the lines are told.
const shownAlike = 3

// Error is a block of lines for each fault: place and problem, excerpt, remedy. One mistake made in a hundred places is shown in
// three of them.
func (f *Faults) Error() string {
	var blocks []string
	name := notation.Visible(f.File)
	lines := map[string][]int{} // by problem
	for _, fault := range f.List {
		if lines[fault.Problem] = append(lines[fault.Problem], fault.Line); len(lines[fault.Problem]) <= shownAlike {
			blocks = append(blocks, name+fault.block())
		}
	}
	for _, fault := range f.List {
		if more := lines[fault.Problem]; len(more) > shownAlike {
			blocks = append(blocks, fmt.Sprintf("%s: %s: %d more of this, %s", name, fault.Problem, len(more)-shownAlike, inLines(more[shownAlike:])))
			delete(lines, fault.Problem)
		}
	}
	if f.More > 0 {
		blocks = append(blocks, fmt.Sprintf("%s: and %d more faults", name, f.More))
	}
	return strings.Join(blocks, "\n")
}

// inLines tells the lines of a sorted list.
func inLines(list []int) string {
	first, last := list[0], list[len(list)-1]
	if first == last {
		return fmt.Sprintf("in line %d", first)
	}
	return fmt.Sprintf("in lines %d to %d", first, last)
}

// block is the fault's text after the file name.
func (f Fault) block() string {
	lines := []string{fmt.Sprintf(":%d:%d: %s", f.Line, f.Column, f.Problem)}
	if f.Excerpt != "" {
		for line := range strings.SplitSeq(f.Excerpt, "\n") {
			lines = append(lines, "    "+line)
		}
	}
	if f.Remedy != "" {
		lines = append(lines, "  "+f.Remedy)
	}
	return strings.Join(lines, "\n")
}

// add notes a fault, or counts it once the list is full.
func (f *Faults) add(fault Fault) {
	if slices.Contains(f.List, fault) {
		return
	}
	if len(f.List) == maxFaults {
		f.More++
		return
	}
	f.List = append(f.List, fault)
}

// err is f as an error with its faults in order, or nil if there are none.
func (f *Faults) err() error {
	if len(f.List) == 0 {
		return nil
	}
	slices.SortStableFunc(f.List, func(a, b Fault) int {
		return cmp.Or(a.Line-b.Line, a.Column-b.Column)
	})
	return f
}
