package tutor

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"unpin/statics/judging"
)

// String is the line as it is read, with its number.
func (l PageLine) String() string {
	if l.Number == 0 {
		return l.Text
	}
	return fmt.Sprintf("  (%d) %s", l.Number, l.Text)
}

// A choice is a closed list of answers, of which one or more are right.
type choice struct {
	says  string   // the question
	of    []string // the answers
	right []int    // their places, from zero
	why   string   // said of a right answer
	not   string   // said of a wrong one
}

// lines are the question and its answers by number.
func (c choice) lines() []string {
	all := []string{c.says}
	for i, text := range c.of {
		all = append(all, fmt.Sprintf("  %d: %s", i+1, text))
	}
	return all
}

// unit is what may be typed.
func (c choice) unit() string { return "1 to " + strconv.Itoa(len(c.of)) }

// read reads a number of the list, or the beginning of one of its answers.
func (c choice) read(line string) (drillRuling, error) {
	at, err := numberOf(line, len(c.of))
	if err != nil {
		if at = c.beginning(line); at < 0 {
			return drillRuling{}, err
		}
	}
	if slices.Contains(c.right, at) {
		return drillRuling{verdict: judging.Exact, says: c.why}, nil
	}
	return drillRuling{verdict: judging.Wrong, says: c.not}, nil
}

// beginning is the place of the one answer that is or begins as typed, or -1.
func (c choice) beginning(line string) int {
	word, found := strings.ToLower(strings.TrimSpace(line)), -1
	if at := slices.Index(c.of, word); at >= 0 {
		return at
	}
	for i, text := range c.of {
		if text = strings.ToLower(text); strings.HasPrefix(text, word) {
			if found >= 0 {
				return -1
			}
			found = i
		}
	}
	return found
}

// answer is the first right answer.
func (c choice) answer() string { return c.of[c.right[0]] }

// numberOf reads a number from 1 to n, and gives its place from zero.
func numberOf(line string, n int) (int, error) {
	at, err := strconv.Atoi(strings.Trim(strings.TrimSpace(line), "()."))
	if err != nil || at < 1 || at > n {
		return -1, outOfList(n)
	}
	return at - 1, nil
}

// outOfList is what is wrong with an answer that is none of so many.
type outOfList int

func (n outOfList) Error() string {
	return fmt.Sprintf("Type a number from 1 to %d, or hint, or tell.", int(n))
}

// ask is the question of a choice.
func (c choice) ask(name string) drillAsk {
	return drillAsk{name: name, unit: c.unit(), says: c.lines, read: c.read, hints: func() []string { return nil }, told: c.answer}
}
