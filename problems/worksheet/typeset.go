package worksheet

import (
	"maps"
	"regexp"
	"strings"
	"unicode/utf8"

	"unpin/statics"
	"unpin/statics/notation"
)

// A typeRun is a piece of a line in one kind of type.
type typeRun struct {
	text  string
	style string // "", "B", "I" or "BI"
	index bool   // small and low
}

// A typesetter knows the names of forces, and of sums, as print sets them: a letter and its index.
type typesetter map[string][2]string

// typesetter knows the names of all forces that the document writes so far.
func (d *document) typesetter() typesetter {
	names := typesetter{"ΣFx": {"ΣF", "x"}, "ΣFy": {"ΣF", "y"}, "ΣF": {"ΣF", ""}, "ΣM": {"ΣM", ""}}
	for _, a := range append([]*statics.Assembly{d.Assembly}, d.others...) {
		for _, f := range a.Forces {
			letter, index := notation.Symbol(f, a.Frame.Joints[f.Joint].Name)
			names[f.Name] = [2]string{letter, index}
		}
	}
	if d.p.Units.Letters() {
		d.addLetters(names)
	}
	return names
}

// preposition is a sentence that begins with By and goes on in words.
var preposition = regexp.MustCompile(`(^|[.:;!?] )By \p{Ll}`)

// inWords are the names that a text of a problem's author may mean: where a sentence begins with By and goes on in words, that is
// no force at B.
func (names typesetter) inWords(text string) typesetter {
	if !preposition.MatchString(text) {
		return names
	}
	some := maps.Clone(names)
	delete(some, "By")
	return some
}

// addLetters adds the letters in which a problem has its results, P and L, but for those that a joint is called by.
func (d *document) addLetters(names typesetter) {
	joints := map[string]bool{}
	for _, j := range d.Frame.Joints {
		joints[j.Name] = true
	}
	for _, unit := range d.unitNames() {
		for word := range strings.FieldsFuncSeq(unit, func(r rune) bool { return !isLetter(r) }) {
			if !joints[word] {
				names[word] = [2]string{word, ""}
			}
		}
	}
}

// printable is a text with all replaced that the font cannot have: what is no Unicode, what lies beyond its first plane,
// and what is not seen but steers what shows the text.
func printable(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == utf8.RuneError || r > 0xffff:
			return '\ufffd'
		case notation.Hidden(r):
			return ' '
		}
		return r
	}, text)
}

// isLetter reports whether a byte of a word goes on with a name: names are of ASCII but for the Σ before them.
func isLetter(r rune) bool {
	return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '\'' || r == '_' || r == '.' || r == '+'
}

// runsOf parts a word into runs: names of forces become symbols, and the letters that stand for numbers are italic.
func (names typesetter) runsOf(word, style, letters string) []typeRun {
	var runs []typeRun
	plain := func(text string) {
		if text != "" {
			runs = append(runs, typeRun{text: text, style: style})
		}
	}
	rest := word
	for rest != "" {
		before, name, after := names.nextName(rest, letters)
		plain(before)
		if name == "" {
			break
		}
		if parts, ok := names[name]; ok {
			letter, summed := strings.CutPrefix(parts[0], "Σ")
			if summed {
				plain("Σ")
			}
			runs = append(runs, typeRun{text: letter, style: slanted(style)})
			runs = append(runs, indexRuns(parts[1], style)...)
		} else {
			runs = append(runs, typeRun{text: name, style: slanted(style)})
		}
		rest = after
	}
	return runs
}

// indexRuns are the runs of an index: the letter of an axis is italic, as it stands for a number; the names of joints, parts
// and members are upright (ISO 80000-1; from memory).
func indexRuns(index, style string) []typeRun {
	axis, rest := "", index
	if first, _, _ := strings.Cut(index, "."); first == "x" || first == "y" {
		axis, rest = first, index[1:]
	}
	var runs []typeRun
	if axis != "" {
		runs = append(runs, typeRun{text: axis, style: slanted(style), index: true})
	}
	if rest != "" {
		runs = append(runs, typeRun{text: rest, style: style, index: true})
	}
	return runs
}

// slanted is the style of a symbol's letter: italic in bold type too, as everywhere (ISO 80000-1; from memory).
func slanted(style string) string {
	return style + "I"
}

// mathLetters are the letters that stand for numbers in mathematics.
const mathLetters = "NVMx"

// nextName finds the first symbol in a text, a name or one of the letters. It is empty if there is none; then all the text
// stands before.
func (names typesetter) nextName(text, letters string) (before, name, after string) {
	inside := false // in the middle of a word
	var last rune
	for i, r := range text {
		begins := !inside && (r >= 'A' && r <= 'Z' || r == 'Σ')
		if begins {
			if name := names.nameAt(text[i:]); name != "" {
				return text[:i], name, text[i+len(name):]
			}
		}
		if strings.ContainsRune(letters, r) && (!inside || last == 'd') && !goesOn(text[i+1:]) {
			return text[:i], string(r), text[i+1:]
		}
		last = r
		inside = r == 'Σ' || isLetter(r) && (r < '0' || r > '9') && r != '.' && r != '+'
	}
	return text, "", ""
}

// goesOn reports whether a text begins with a letter of a name.
func goesOn(text string) bool {
	r, _ := utf8.DecodeRuneInString(text)
	return text != "" && isLetter(r) && r != '.' && r != '+'
}

// nameAt is the longest name of a force or sum with which a text begins, if a name ends there.
func (names typesetter) nameAt(text string) string {
	end := 0
	for i, r := range text {
		if i > 0 && !isLetter(r) {
			break
		}
		end = i + utf8.RuneLen(r)
	}
	for ; end > 0; end-- {
		if _, ok := names[text[:end]]; ok && !goesOn(text[end:]) {
			return text[:end]
		}
	}
	return ""
}
