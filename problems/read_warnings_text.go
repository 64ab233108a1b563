package problems

import (
	"regexp"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
)

// Words before capital letters that make joints of them: "at C", "between A and E", "the beam ABC".
var (
	beforeJoints = notation.Pattern(`(?i)\b(?:at|joints?|pins?|hinges?|supports?|rollers?|feet|foot|from|to|between|corners?|knees?|tips?|ends?|heads?|ridge|pulleys?|wheels?)(?: at)? (?-i:([A-Z][0-9']*(?:(?:, | and | or | to |, and )[A-Z][0-9']*)*))(?:[ .,;:)]|$)`)
	beforeWalks  = notation.Pattern(`(?i)\b(?:members?|beams?|bars?|legs?|rafters?|columns?|posts?|struts?|ties?|booms?|arms?|girders?|parts?) (?-i:((?:[A-Z][0-9']*){2,}(?:(?:, | and | or )(?:[A-Z][0-9']*){2,})*))(?:[ .,;:)]|$)`)
	aCapital     = notation.Pattern(`[A-Z][0-9']*`)
)

// neverJoints are capitals that in texts seldom name joints: internal forces, and a word.
var neverJoints = []string{"N", "V", "M", "I"}

// warnText warns of what a title or text says and the frame is not: a joint that is not there, a level or vertical rope or member where
// nothing is so.
func (r warner) warnText(n *node, field string) {
	var absent []string
	for _, p := range []*regexp.Regexp{beforeJoints(), beforeWalks()} {
		for _, found := range p.FindAllStringSubmatch(n.text, -1) {
			for _, name := range aCapital().FindAllString(found[1], -1) {
				if !r.named(name) && !slices.Contains(absent, name) {
					absent = append(absent, name)
				}
			}
		}
	}
	for _, name := range absent {
		r.warn("Line %d: The %s names %s, and no joint is called so. %s", r.lineOf(n, name), field, name, onlyOnes("joint", r.jointNames()))
	}
	for _, found := range lyingWords().FindAllStringSubmatch(n.text, -1) {
		if level := levelWords().MatchString(found[1]); !r.lies(level) {
			r.warn("Line %d: The %s speaks of a %s, and nothing in the frame is %s.", r.lineOf(n, found[1]), field, found[0], map[bool]string{true: "level", false: "vertical"}[level])
		}
	}
}

// Words for what lies along an axis.
var (
	lyingWords = notation.Pattern(`(?i)\b(level|horizontal|vertical|upright) (?:rope|cable|chain|beam|member|bar|girder|post|column|mast|leg|tie|strut)\b`)
	levelWords = notation.Pattern(`(?i)^(level|horizontal)$`)
)

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
