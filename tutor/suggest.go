package tutor

import (
	"slices"
	"strings"

	"unpin/problems"
)

// suggestions are two things to do next: what was not right here once more, then the weakest kind of step or the next
// level, and another problem.
func (l ending) suggestions(s Summary) []string {
	var all []string
	if l.Again() != nil {
		all = append(all, "Do the steps that were shown to you once more, with other numbers.")
	}
	if len(s.Mistakes) > 0 || len(s.Help) > 0 || len(s.Marks) > 0 && s.First < s.Of {
		all = append(all, "Do this frame again with new numbers.")
	} else if harder, ok := l.harder(); ok {
		all = append(all, "Take this frame at the level "+harder.String()+".")
	}
	if p := l.about.following(); p != nil {
		text := "Go on with " + p.Name + " (" + p.Title + ")"
		if weak, ok := weakest(s.Skills); ok {
			text += ", and watch " + withArticle(weak)
		}
		all = append(all, text+".")
	}
	return all[:min(len(all), 2)]
}

// harder is the level that asks for more.
func (l ending) harder() (Level, bool) {
	v := l.about.levels.level
	return v + 1, v < Blank && !l.sheet.exam
}

// weakest is the kind of step of which the fewest in a hundred came right, if any did not.
func weakest(skills []Skill) (kind string, ok bool) {
	least := Skill{}
	for _, s := range skills {
		if s.Right < s.Of && (!ok || s.Right*least.Of < least.Right*s.Of) {
			least, ok = s, true
		}
	}
	return least.Kind, ok
}

// withArticle is a kind of step as it stands in a sentence: names of quantities go without an article.
func withArticle(kind string) string {
	if strings.HasPrefix(kind, "N, ") {
		return kind
	}
	return "the " + kind
}

// following is the problem that follows in the library; after one that is not in it, the first.
func (m *matter) following() *problems.Problem {
	names := problems.Names()
	i := slices.Index(names, m.problem.Name) + 1
	if i >= len(names) {
		return nil
	}
	p, _ := problems.Library(names[i])
	return p
}
