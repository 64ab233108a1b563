package host

import (
	"fmt"

	"unpin/statics/wording"
)

// steps are the questions of the problems that were worked since the host started, with how many came right at the first try.
type steps struct{ list []stepCount }

func (s *steps) look(b *board) { s.list = b.host.activity.steps() }

func (s *steps) chooses() bool { return false }

func (s *steps) note(*board) string { return "" }

func (s *steps) head(*board) []string {
	return []string{"First tries: right without a wrong try before, of all that were settled", "", fmt.Sprintf("   %-24s %-24s %s", "problem", "question", "right")}
}

func (s *steps) rows(b *board) []string {
	var lines []string
	for _, one := range s.list {
		bar := ""
		for range min(20, max(b.w-66, 0)) * one.Right / max(one.Of, 1) {
			bar += "#"
		}
		lines = append(lines, fmt.Sprintf("   %-24s %-24s %3d of %-4d %s", short(one.problem, 24), short(one.question, 24), one.Right, one.Of, bar))
	}
	if len(lines) == 0 {
		lines = []string{"   Nothing is settled yet: " + wording.Counted(0, "answer") + "."}
	}
	return lines
}

func (s *steps) press(*board, string) {}

func (s *steps) keys() string { return "up, down read  esc back  w word to all  ctrl+c leave" }
