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

// Error is a block of lines for each fault: place and problem, excerpt, remedy.
func (f *Faults) Error() string {
	blocks := make([]string, 0, len(f.List)+1)
	name := notation.Visible(f.File)
	for _, fault := range f.List {
		blocks = append(blocks, name+fault.block())
	}
	if f.More > 0 {
		blocks = append(blocks, fmt.Sprintf("%s: and %d more faults", name, f.More))
	}
	return strings.Join(blocks, "\n")
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
