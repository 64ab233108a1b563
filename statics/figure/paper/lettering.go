package paper

import (
	"strings"

	"unpin/statics/figure"
)

// Type on paper: the size of all labels in points, and the rest as shares of the size.
const (
	typeSize   = 9.0
	indexSize  = 0.75 // of an index
	indexDrop  = 0.22 // how far it stands below the baseline
	capHeight  = 0.73 // of a capital above the baseline
	descent    = 0.24 // of a letter such as p, or an index, below it
	boldSpread = 1.14 // how much wider bold type is than regular, at most
)

// asciiWidths are in thousandths of the size, from the blank on: of DejaVu Sans 2.37. Other faces that a viewer may put in
// its place are about as wide or narrower.
var asciiWidths = [...]int{
	318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,
	636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
	1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787,
	603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
	500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,
	635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
}

// otherWidths are those of the signs beyond ASCII that labels have. Any other counts as widest.
var otherWidths = map[rune]int{'·': 318, '°': 500, '√': 637, 'Σ': 632, '²': 401, '³': 401, '\u00a0': 318, '−': 838}

const widest = 1000

// runeWidth is the width of a sign as a share of the size.
func runeWidth(r rune) float64 {
	if i := int(r) - ' '; i >= 0 && i < len(asciiWidths) {
		return float64(asciiWidths[i]) / 1000
	}
	if w, ok := otherWidths[r]; ok {
		return float64(w) / 1000
	}
	return widest / 1000.0
}

// A Run is a piece of a text in one kind of type.
type Run struct {
	Text   string
	Italic bool // the letter of a force
	Index  bool // small and low, after such a letter
	Bold   bool
	Under  bool // underlined: a number that the drawing is not to scale with
}

// Width is how wide a run stands in type of that size, at most.
func (r Run) Width(size float64) float64 {
	if r.Index {
		size *= indexSize
	}
	if r.Bold {
		size *= boldSpread
	}
	w := 0.0
	for _, char := range r.Text {
		w += runeWidth(char)
	}
	return w * size
}

// lineWidth is how wide runs stand side by side.
func lineWidth(runs []Run, size float64) float64 {
	w := 0.0
	for _, r := range runs {
		w += r.Width(size)
	}
	return w
}

// indexParts are the two parts of an index: the letter of an axis, which stands for a number and is italic, and the name of a
// joint, part or member, which is upright (ISO 80000-1, 7.1; from memory).
func indexParts(k figure.Symbolic) (axis, name string) {
	if first, _, _ := strings.Cut(k.Index, "."); first == "x" || first == "y" {
		return first, k.Index[1:]
	}
	return "", k.Index
}

// typeset is a label in type. A force's name at its beginning is set as a symbol; what is lit, and a joint's name, is bold.
func typeset(s *figure.Scene, text string, look figure.Look) []Run {
	var runs []Run
	first := text
	if end := strings.IndexAny(text, " ,"); end >= 0 {
		first = text[:end]
	}
	if name, ok := s.Names[first]; ok && look.Role != figure.NameMark { // a joint may have the name of a force
		runs = append(runs, Run{Text: name.Letter, Italic: true})
		axis, part := indexParts(name)
		if axis != "" {
			runs = append(runs, Run{Text: axis, Index: true, Italic: true})
		}
		if part != "" {
			runs = append(runs, Run{Text: part, Index: true})
		}
		text = text[len(first):]
	}
	letters := s.Letters
	if look.Role == figure.NameMark {
		letters = ""
	}
	runs = append(runs, slanted(text, letters)...)
	for i := range runs {
		runs[i].Bold = look.Emphasis == figure.Lit || look.Role == figure.NameMark
	}
	return runs
}

// slanted is a text whose words of nothing but these letters are italic, for they stand for quantities: the P and L of 5/2 P
// and PL/4 (ISO 80000-1; from memory).
func slanted(text, letters string) []Run {
	var runs []Run
	add := func(part string, italic bool) {
		if part != "" {
			runs = append(runs, Run{Text: part, Italic: italic})
		}
	}
	isLetter := func(r rune) bool { return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' }
	plain, rest := "", text
	for rest != "" && letters != "" {
		start := strings.IndexFunc(rest, isLetter)
		if start < 0 {
			break
		}
		word := rest[start:]
		if end := strings.IndexFunc(word, func(r rune) bool { return !isLetter(r) }); end >= 0 {
			word = word[:end]
		}
		plain += rest[:start]
		if rest = rest[start+len(word):]; strings.Trim(word, letters) != "" {
			plain += word
			continue
		}
		add(plain, false)
		add(word, true)
		plain = ""
	}
	add(plain+rest, false)
	return runs
}
