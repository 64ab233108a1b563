package problems

import (
	"fmt"
	"slices"
	"strings"
)

// A shapeReader reads what needs no more than the tree: shapes, words, texts. It goes on after a fault, and keeps note of
// what it could not read so that one mistake is told once.
type shapeReader struct {
	*source
	faults  Faults
	problem *Problem
}

// fault notes a fault at a place.
func (r *shapeReader) fault(at mark, problem, remedy string) {
	r.faults.add(r.source.fault(at, problem, remedy))
}

// maxWarnings bounds the warnings that are kept.
const maxWarnings = 50

// warn notes what is legal but likely a mistake. The last warning kept says that there are more.
func (r *shapeReader) warn(format string, args ...any) {
	switch len(r.problem.Warnings) {
	case maxWarnings:
		return
	case maxWarnings - 1:
		format, args = "There is more of this kind, which is not listed.", nil
	}
	r.problem.Warnings = append(r.problem.Warnings, fmt.Sprintf(format, args...))
}

// warned reports whether no more warnings are kept.
func (r *shapeReader) warned() bool { return len(r.problem.Warnings) == maxWarnings }

// shapeWords names a shape in a sentence.
var shapeWords = map[shape]string{
	blank:  "nothing",
	scalar: "a single value",
	list:   "a list [ ]",
	table:  "a group of fields { }",
}

// fields reads a table whose fields are known, and returns the values that have a right shape, by name. What is
// unknown, missing or of a wrong shape is a fault; `what` names the group in it, "a uniform load".
func (r *shapeReader) fields(n *node, what string, known fields) map[string]*node {
	values := map[string]*node{}
	seen := map[string]bool{}
	for _, e := range n.entries {
		f, ok := known.find(e.key.text)
		if !ok {
			seen[known.meant(e.key.text)] = true
			r.unknownField(e.key, what, known)
			continue
		}
		seen[f.name] = true
		if r.shaped(e.value, f.name, f.name+": "+f.like, f.shapes...) && r.worded(e.value, f) {
			values[f.name] = e.value
		}
	}
	for _, f := range known {
		if f.need && !seen[f.name] {
			r.fault(n.at, fmt.Sprintf("%s is missing from %s", f.name, what), fmt.Sprintf("%s, as in %s: %s", strings.TrimSuffix(f.doc, "."), f.name, f.like))
		}
	}
	return values
}

// wholeFile names the fields of a file in a sentence.
const wholeFile = "a problem"

// colon is what to write for a key such as "points 10", a field and its value without the colon; empty for another.
func (f fields) colon(key string) string {
	name, value, parted := strings.Cut(key, " ")
	if _, known := f.find(name); parted && known {
		return fmt.Sprintf("A colon is missing: write %s: %s", name, strings.TrimSpace(value))
	}
	return ""
}

// unknownField is the fault of a field that the group does not have.
func (r *shapeReader) unknownField(key *node, what string, known fields) {
	problem := fmt.Sprintf("%s has no field %s", what, quoted(key.text))
	_, asked := askFields.find(key.text)
	word := known.meant(key.text)
	elsewhere := elsewhere(key.text, what)
	colon := known.colon(key.text)
	switch {
	case colon != "":
		r.fault(key.at, problem, colon)
	case elsewhere != "" && (word == "" || asked):
		r.fault(key.at, problem, elsewhere)
	case word != "":
		r.fault(key.at, problem, fmt.Sprintf("Did you mean %s?", word))
	default:
		r.fault(key.at, problem, "Its fields are "+allOf(known.names())+".")
	}
}

// elsewhere says where a field belongs that stands in the wrong group, or nothing if no group has it.
func elsewhere(name, what string) string {
	if slices.Contains([]string{wholeSet, oneTask, setAsk}, what) {
		return elsewhereInSet(name)
	}
	if what != wholeFile {
		if f, ok := problemFields.find(name); ok {
			return fmt.Sprintf("It belongs at the top of the file, as in %s: %s", f.name, f.like)
		}
		return ""
	}
	if f, ok := askFields.find(askFields.meant(name)); ok {
		return fmt.Sprintf("It belongs in ask, as in ask: {%s: %s}", f.name, f.like)
	}
	if f, ok := loadFields[name]; ok {
		return fmt.Sprintf("It belongs in loads, as in loads: [{%s: %s, to: %s, on: AB, ...}]", name, f[0].like, f[1].like)
	}
	return ""
}

// shaped reports whether the value has one of the shapes; if not, that is a fault, and like shows what would be right.
func (r *shapeReader) shaped(n *node, what, like string, shapes ...shape) bool {
	if slices.Contains(shapes, n.shape) {
		return true
	}
	var words []string
	for _, s := range shapes {
		words = append(words, shapeWords[s])
	}
	want := oneOf(words)
	if n.shape == blank {
		r.fault(n.at, what+" has no value", "Take it out, or write it like this: "+like)
		return false
	}
	r.fault(n.at, fmt.Sprintf("%s is %s, not %s", what, want, shapeWords[n.shape]), "Write it like this: "+like)
	return false
}

// worded reports whether a word, or each word of a list, is on the field's closed list, if it has one.
func (r *shapeReader) worded(n *node, f field) bool {
	if f.words == nil {
		return true
	}
	if n.shape == scalar {
		return r.word(n, f)
	}
	good := true
	var taken []string
	for _, item := range n.items {
		switch {
		case !r.shaped(item, "an entry of "+f.name, f.name+": "+f.like, scalar) || !r.word(item, f):
			good = false
		case slices.Contains(taken, item.text):
			r.fault(item.at, item.text+" stands in "+f.name+" twice", "Take one of them out.")
			good = false
		default:
			taken = append(taken, item.text)
		}
	}
	return good
}

// word reports whether the text is one of the field's words; if not, that is a fault.
func (r *shapeReader) word(n *node, f field) bool {
	if slices.Contains(f.words, n.text) || slices.Contains(f.same, n.text) {
		return true
	}
	problem := fmt.Sprintf("%s cannot be %s", f.name, quoted(n.text))
	if word := meant(n.text, slices.Concat(f.words, f.same)); word != "" {
		r.fault(n.at, problem, fmt.Sprintf("Did you mean %s?", word))
	} else if len(f.words) > 12 {
		r.fault(n.at, problem, "Some of the words it may have: "+allOf(f.words)+".")
	} else {
		r.fault(n.at, problem, "Write "+oneOf(f.words)+".")
	}
	return false
}
