package main

import (
	"slices"
	"testing"

	"unpin/problems/worksheet"
	"unpin/tutor"
)

// TestLevelsOfSheets: the levels of sheets are called and ordered as those of lessons are.
func TestLevelsOfSheets(t *testing.T) {
	last := -1
	for _, name := range worksheet.Levels {
		at := slices.Index(tutor.Levels(), name)
		if at <= last {
			t.Errorf("the level %s of sheets stands at %d among those of lessons, after %d", name, at, last)
		}
		last = at
	}
}
