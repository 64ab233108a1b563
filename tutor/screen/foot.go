package screen

import (
	"slices"
	"strings"
)

// A keyWord is a key and what it does now.
type keyWord struct {
	key, word string
	last      bool // the screen says so elsewhere too
}

// helpLine is what the keys do now. Where not all of it fits in w cells, the first that fit are told, closer together;
// what the screen tells elsewhere comes only where there is room left.
func (m *Model) helpLine(w int) line {
	all := m.keyWords()
	if fit := fitWords(all, w, 3); len(fit) == len(all) {
		return wordsLine(fit, 3)
	}
	return wordsLine(fitWords(all, w, 2), 2)
}

// keyWords lists the keys of the help line that do something now.
func (m *Model) keyWords() []keyWord {
	var all []keyWord
	for _, b := range append(slices.Clone(bindings(m.view)), anywhere...) {
		if b.word != "" && !b.off(m) {
			word := m.wordNow(b)
			all = append(all, keyWord{b.shown, word, b.last && word == b.word})
		}
	}
	return all
}

// fitWords picks the words that fit in w cells, so many blanks between two, in their order.
func fitWords(all []keyWord, w, gap int) []keyWord {
	chosen := make([]bool, len(all))
	used := -gap
	for _, last := range []bool{false, true} {
		for i, k := range all {
			n := gap + columns(k.key) + 1 + columns(k.word)
			if k.last == last && used+n <= w {
				chosen[i] = true
				used += n
			}
		}
	}
	var fit []keyWord
	for i, k := range all {
		if chosen[i] {
			fit = append(fit, k)
		}
	}
	return fit
}

// wordsLine writes the words with so many blanks between two.
func wordsLine(words []keyWord, gap int) line {
	var l line
	for i, k := range words {
		if i > 0 {
			l = append(l, span{strings.Repeat(" ", gap), plainInk})
		}
		l = append(l, span{k.key, strongInk}, span{" " + k.word, noteInk})
	}
	return l
}
