package problems

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"unpin/statics/notation"
)

// quoted is the text in quotes, cut short when long.
func quoted(text string) string {
	if r := []rune(text); len(r) > 30 {
		text = string(r[:30]) + "…"
	}
	return `"` + notation.Visible(text) + `"`
}

// oneOf lists words for a sentence: "A, B or C"; of many only the first.
func oneOf(words []string) string { return listed(words, "or") }

// allOf lists words for a sentence: "A, B and C"; of many only the first.
func allOf(words []string) string { return listed(words, "and") }

func listed(words []string, last string) string {
	const most = 16
	switch n := len(words); {
	case n == 0:
		return "none"
	case n == 1:
		return words[0]
	case n > most:
		return strings.Join(words[:most], ", ") + fmt.Sprintf(" %s %d more", last, n-most)
	default:
		return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
	}
}

// onlyOnes tells which there are: "The joints are A and B.", "The only joint is A."
func onlyOnes(noun string, names []string) string {
	if len(names) == 1 {
		return "The only " + noun + " is " + names[0] + "."
	}
	return "The " + noun + "s are " + allOf(names) + "."
}

// near is the word of the list that a misspelt word is closest to, if it is close; else "".
func near(word string, list []string) string {
	best, found := 1+min(2, utf8.RuneCountInString(word)/3), ""
	for _, w := range list {
		if strings.EqualFold(w, word) {
			return w
		}
		if d := editDistance(strings.ToLower(word), strings.ToLower(w), best); d < best {
			best, found = d, w
		}
	}
	return found
}

// editDistance counts the letters to add, drop, change or exchange with a neighbour to turn a into b; it stops
// counting at the limit.
func editDistance(a, b string, limit int) int {
	s, t := []rune(a), []rune(b)
	if len(s)-len(t) >= limit || len(t)-len(s) >= limit {
		return limit
	}
	before, above, row := make([]int, len(t)+1), make([]int, len(t)+1), make([]int, len(t)+1)
	for j := range above {
		above[j] = j
	}
	for i := 1; i <= len(s); i++ {
		row[0] = i
		for j := 1; j <= len(t); j++ {
			change := above[j-1]
			if s[i-1] != t[j-1] {
				change++
			}
			row[j] = min(change, above[j]+1, row[j-1]+1)
			if i > 1 && j > 1 && s[i-1] == t[j-2] && s[i-2] == t[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return min(above[len(t)], limit)
}

// sentence is a clause with a capital and a full stop.
func sentence(clause string) string {
	if clause == "" {
		return ""
	}
	first, size := utf8.DecodeRuneInString(clause)
	return strings.ToUpper(string(first)) + ended(clause[size:])
}

// ended is a text with a full stop, unless it ends in one or in a question mark.
func ended(text string) string {
	if strings.HasSuffix(text, ".") || strings.HasSuffix(text, "?") {
		return text
	}
	return text + "."
}

// otherWords are words that people write in place of those of a problem file, with what these may be.
var otherWords = map[string][]string{
	"downward": {"down"}, "downwards": {"down"}, "vertical": {"up", "down", "rise"}, "↓": {"down"}, "-y": {"down"},
	"upward": {"up"}, "upwards": {"up"}, "↑": {"up"}, "+y": {"up"}, "y": {"up"},
	"leftward": {"left"}, "leftwards": {"left"}, "horizontal": {"left", "right", "run"}, "←": {"left"}, "-x": {"left"},
	"rightward": {"right"}, "rightwards": {"right"}, "→": {"right"}, "+x": {"right"}, "x": {"right"},
	"axial": {"along"}, "parallel": {"along"}, "perpendicular": {"normal"}, "transverse": {"normal"},
	"pinned": {"pin"}, "hinge": {"pin"}, "hinged": {"pin", "all"}, "simple": {"pin", "roller"},
	"clamp": {"fixed"}, "clamped": {"fixed"}, "encastre": {"fixed"}, "built-in": {"fixed"}, "rigid": {"fixed"},
	"rolling": {"roller"}, "rollers": {"roller"}, "slider": {"guide", "roller"}, "sliding": {"guide", "roller"},
	"anticlockwise": {"ccw"}, "anti-clockwise": {"ccw"}, "counterclockwise": {"ccw"}, "counter clockwise": {"ccw"}, "acw": {"ccw"},
	"↺": {"ccw"}, "↻": {"cw"}, "positive": {"ccw"}, "negative": {"cw"},
	"member": {"length"}, "slope": {"length"}, "projection": {"run", "rise"},
}

// meant tells which words of the list a wrong one may stand for: those that it is another word for, else the one that it
// is closest to. It is empty if there are none.
func meant(word string, list []string) string {
	var found []string
	for _, w := range otherWords[strings.ToLower(word)] {
		if slices.Contains(list, w) {
			found = append(found, w)
		}
	}
	if len(found) > 0 {
		return oneOf(found)
	}
	return near(word, list)
}
