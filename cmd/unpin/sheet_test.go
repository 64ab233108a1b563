package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/problems"
	"unpin/problems/variant"
)

// Names of files differ whatever ids are, also where capitals do not count, and none is hidden or leaves its folder.
func TestFileNames(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		piece := rapid.SampledFrom([]string{"s1", "S1", "-2", "/", "..", "\\", "CON", "nul", "com1", " ", "=", "é", "\u202e", ":", "*"})
		var all []variant.Handout
		for _, id := range rapid.SliceOfNDistinct(rapid.Map(rapid.SliceOfN(piece, 1, 4), func(p []string) string { return strings.Join(p, "") }), 1, 12, rapid.ID).Draw(t, "ids") {
			all = append(all, variant.Handout{Student: variant.Student{ID: id, Attempt: rapid.IntRange(1, 2).Draw(t, "attempt")}})
		}
		seen := map[string]bool{}
		for i, name := range fileNames(all) {
			if low := strings.ToLower(name); seen[low] || strings.ContainsAny(name, "/\\: *\u202e") || strings.HasPrefix(name, ".") || strings.HasPrefix(name, "-") ||
				slices.Contains([]string{"con", "nul", "com1"}, low) {
				t.Fatalf("%q has the file %q", all[i].Student.ID, name)
			}
			seen[strings.ToLower(name)] = true
		}
	})
}

// Volumes hold all handouts in their order, none of them more than memory is for.
func TestVolumes(t *testing.T) {
	t.Parallel()
	for n, want := range map[int]string{0: "", 1: "1", 100: "100", 101: "100 1", 250: "100 100 50"} {
		s := sheeting{format: "pdf", tasks: make([]problems.Task, 6)}
		all := make([]variant.Handout, n)
		for i := range all {
			all[i].Student.ID = fmt.Sprint(i)
		}
		var sizes []string
		var back []variant.Handout
		for _, v := range s.volumes(all) {
			sizes, back = append(sizes, fmt.Sprint(len(v))), append(back, v...)
		}
		names := volumeNames("sheets", ".pdf", len(sizes))
		if got := strings.Join(sizes, " "); got != want || len(names) != len(sizes) {
			t.Errorf("%d papers in parts of %s, want %s, as %v", n, got, want, names)
		}
		if !slices.EqualFunc(all, back, func(a, b variant.Handout) bool { return a.Student == b.Student }) {
			t.Errorf("of %d papers %d are in parts", n, len(back))
		}
	}
}
