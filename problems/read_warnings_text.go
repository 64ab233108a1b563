package problems

import (
	"regexp"
	"slices"
	"strings"

	"unpin/statics"
)

// neverJoints are capitals that in texts seldom name joints: internal forces, and a word.
var neverJoints = []string{"N", "V", "M", "I"}

// warnText warns of what a title or text says and the frame is not: a joint that is not there, a level or vertical rope or member where
// nothing is so.
func (r warner) warnText(n *node, field string) {
	var absent []string
	for _, name := range append(namesAfter(n.text, jointNaming), namesAfter(n.text, walkNaming)...) {
		if !r.named(name) && !slices.Contains(absent, name) {
			absent = append(absent, name)
		}
	}
	for _, name := range absent {
		r.warn("Line %d: The %s names %s, and no joint is called so. %s", r.lineOf(n, name), field, name, onlyOnes("joint", r.jointNames()))
	}
	for _, said := range lying(n.text) {
		if !r.lies(said.level) {
			r.warn("Line %d: The %s speaks of a %s, and nothing in the frame is %s.", r.lineOf(n, said.how), field, said.how+" "+said.what, map[bool]string{true: "level", false: "vertical"}[said.level])
		}
	}
}

// lies reports whether any member, force or rope is level, or else vertical.
func (r warner) lies(level bool) bool {
	along := func(v statics.Vector) bool {
		return !v.IsZero() && (level && v.Y.IsZero() || !level && v.X.IsZero())
	}
	f := r.frame()
	for m := range f.Members {
		if along(f.Span(m)) {
			return true
		}
	}
	return slices.ContainsFunc(f.Loads, func(l statics.Load) bool {
		return l.Kind != statics.SpreadLoad && (along(l.Along) || along(l.Second))
	})
}

// lineOf is the line on which a word stands in a text, or that on which the text begins.
func (r warner) lineOf(n *node, word string) int {
	whole := regexp.MustCompile(`(^|[^a-z])` + regexp.QuoteMeta(word) + `([^a-z]|$)`)
	for i, line := range strings.Split(r.problem.source.text, "\n") {
		if i+1 >= n.at.line && whole.MatchString(line) {
			return i + 1
		}
	}
	return n.at.line
}

// named reports whether a name is that of a joint or of a number, or is of those that never are joints.
func (r warner) named(name string) bool {
	_, given := r.numbers[name]
	return given || slices.Contains(neverJoints, name) || slices.Contains(r.jointNames(), name)
}
