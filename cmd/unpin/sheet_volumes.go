package main

import (
	"fmt"
	"slices"

	"unpin/problems/variant"
)

// A PDF is in memory until its end, about half a megabyte for each problem of each student: how many problems of students one file
// of several has, and how many one file alone can have.
const (
	volumeTasks   = 600
	mostOfOneFile = 4000
)

// volumes parts handouts into those of one file each; only PDF needs it.
func (s *sheeting) volumes(all []variant.Handout) [][]variant.Handout {
	if len(all) == 0 || s.format != "pdf" {
		return [][]variant.Handout{all}[:min(1, len(all))]
	}
	return slices.Collect(slices.Chunk(all, max(1, volumeTasks/len(s.tasks))))
}

// volumeNames are the names of files: sheets.pdf, or sheets-1.pdf, sheets-2.pdf and so on.
func volumeNames(name, ending string, n int) []string {
	if n == 1 {
		return []string{name + ending}
	}
	names := make([]string, n)
	for i := range names {
		names[i] = fmt.Sprintf("%s-%d%s", name, i+1, ending)
	}
	return names
}
