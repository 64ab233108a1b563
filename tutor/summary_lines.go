package tutor

import (
	"fmt"
	"strings"

	"unpin/statics/wording"
)

// A Passage is a heading of a summary with its lines.
type Passage struct {
	Title string
	Label string // of each line where it stands by itself
	Lines []string
}

// Passages are a summary as one reads it; those with nothing to say are left out.
func (s Summary) Passages() []Passage {
	all := []Passage{
		{"Results", "Result", s.Results}, {"Check", "Check", s.Checks}, {"Answers", "Answer", s.answers()},
		{"Mistakes", "Mistake", s.mistakes()}, {"Skills", "Skill", s.skills()}, {"What to do next", "Next", s.Next},
	}
	var said []Passage
	for _, p := range all {
		if len(p.Lines) > 0 {
			said = append(said, p)
		}
	}
	return said
}

// answers say how many came right at the first try, and what was asked for; of an exam, the marks.
func (s Summary) answers() []string {
	if s.Of == 0 {
		return nil
	}
	if len(s.Marks) > 0 {
		return s.Marks
	}
	lines := []string{fmt.Sprintf("First try and without help: %d of %d.", s.First, s.Of)}
	if len(s.Help) > 0 {
		lines = append(lines, "Help: "+strings.Join(s.Help, ", ")+".")
	}
	return lines
}

// mistakes say of each what it was and what would have caught it, the same advice once.
func (s Summary) mistakes() []string {
	var lines []string
	advised := map[string]bool{}
	for _, m := range s.Mistakes {
		kind := m.Kind
		if kind == "" {
			kind = wording.Counted(m.Wrong, "wrong answer")
		}
		line := m.Question + " (" + m.Where + "): " + kind + "."
		for _, says := range []string{m.Caught, m.Check} {
			if says != "" && !advised[says] {
				advised[says], line = true, line+" "+says
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// skills tell plain counts.
func (s Summary) skills() []string {
	var lines []string
	for _, k := range s.Skills {
		lines = append(lines, wording.Capital(fmt.Sprintf("%s: %d of %d right at the first try and without help.", k.Kind, k.Right, k.Of)))
	}
	return lines
}
