package problems

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"maps"
	"slices"
	"strings"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Scheme says what answers and verdicts are worth.
type Scheme struct {
	Forces   exact.Num              // per cent of a problem
	Diagrams [3]exact.Num           // N, V, M: per cent of a problem
	Working  [4]exact.Num           // by SchemeParts: per cent of a problem whose paper shows that part; the values weigh the rest
	Verdicts map[string]exact.Num   // what of an answer's points each verdict earns, 0 to 1; others earn none
	Once     []string               // verdicts that are charged once a problem
	Round    exact.Num              // the total is rounded to a multiple of it, half up; zero leaves it exact
	Attempts string                 // last, best or first: which attempt counts
	Void     []string               // items that are left out
	Accept   map[string][]exact.Num // values that are accepted beside the true one, by the item's name
}

// SchemeVerdicts are the verdicts that may earn something.
var SchemeVerdicts = []string{"right", "rounded", "carried", "close", "sense", "unit", "slip", "wrong"}

// SchemeParts are the parts of the working that may earn something.
var SchemeParts = []string{"body", "method", "terms", "check"}

// SchemeAttempts are the words for which attempt counts.
var SchemeAttempts = []string{"last", "best", "first"}

// DefaultScheme is the text of the scheme that holds where none is given. A file that leaves out a field has the one here.
const DefaultScheme = `forces: 50                        # % of a problem
diagrams: {N: 10, V: 20, M: 20}   # by members, then places; what is zero under any load weighs nothing
working: {body: 10, method: 15, terms: 10, check: 5}   # % of an exam's problem; the values weigh the rest
verdicts: {right: 1, rounded: 1, carried: 1, close: 0.5, sense: 0.5, unit: 0.5}   # others 0
once: [sense, unit]               # charged once a problem
round: 0.5                        # the total only, half up; points are exact before
attempts: last                    # best, first
void: []                          # items left out
accept: {}                        # {Cx: [6.5]}: values accepted as well
`

// schemeFields are the fields of a scheme.
var schemeFields = fields{
	{name: "forces", shapes: oneScalar, like: "50", doc: "What the forces are worth, in per cent of a problem."},
	{name: "diagrams", shapes: oneTable, like: "{N: 10, V: 20, M: 20}", doc: "What N, V and M are worth, in per cent of a problem."},
	{name: "working", shapes: oneTable, like: "{body: 10, method: 15, terms: 10, check: 5}", doc: "What the working of an exam is worth, in per cent of a problem."},
	{name: "verdicts", shapes: oneTable, like: "{right: 1, carried: 1, sense: 0.5}", doc: "What part of its points an answer earns, by its verdict."},
	{name: "once", shapes: oneList, words: SchemeVerdicts, like: "[sense, unit]", doc: "Verdicts that are charged once a problem."},
	{name: "round", shapes: oneScalar, like: "0.5", doc: "The step to which the total is rounded, half up."},
	{name: "attempts", shapes: oneScalar, words: SchemeAttempts, like: "last", doc: "Which attempt counts."},
	{name: "void", shapes: oneList, like: "[Cx]", doc: "Items that are left out."},
	{name: "accept", shapes: oneTable, like: "{Cx: [6.5]}", doc: "Values that are accepted as well, by item."},
}

// ReadScheme reads a scheme that is called name. The error is a *Faults with all that is wrong.
func ReadScheme(name string, data []byte) (*Scheme, error) {
	scheme, err := readScheme(name, []byte(DefaultScheme), &Scheme{})
	if err != nil {
		return nil, err
	}
	if data == nil {
		return scheme, nil
	}
	return readScheme(name, data, scheme)
}

// LoadScheme reads the scheme at a path.
func LoadScheme(path string) (*Scheme, error) {
	data, err := contentOf(path)
	if err != nil {
		return nil, err
	}
	return ReadScheme(path, append([]byte{}, data...))
}

func readScheme(name string, data []byte, s *Scheme) (*Scheme, error) {
	shapes := &shapeReader{faults: Faults{File: name}, problem: &Problem{}}
	r := schemeReader{numberReader: &numberReader{shapeReader: shapes}, scheme: s}
	tree, err := shapes.begin(data)
	if err != nil {
		return nil, err
	}
	if tree != nil {
		r.read(tree)
	}
	return s, shapes.faults.err()
}

// A schemeReader reads schemes.
type schemeReader struct {
	*numberReader
	scheme *Scheme
}

func (r *schemeReader) read(tree *node) {
	if tree.shape != table {
		r.fault(tree.at, "the file is not a list of fields", "Write a scheme like this: forces: 50")
		return
	}
	s := r.scheme
	for name, n := range r.fields(tree, "a scheme", schemeFields) {
		switch name {
		case "forces":
			r.between(&s.Forces, n, name, 100)
		case "round":
			r.between(&s.Round, n, name, 100)
		case "attempts":
			s.Attempts = n.text
		case "diagrams":
			r.each(n, name, []string{"N", "V", "M"}, func(word string, v *node) {
				r.between(&s.Diagrams[slices.Index([]string{"N", "V", "M"}, word)], v, word, 100)
			})
		case "working":
			r.working(n)
		case "verdicts":
			s.Verdicts = map[string]exact.Num{}
			r.each(n, name, SchemeVerdicts, func(word string, v *node) {
				var part exact.Num
				r.between(&part, v, word, 1)
				s.Verdicts[word] = part
			})
		case "once":
			s.Once = texts(n.items)
		case "void":
			s.Void = texts((&setReader{numberReader: r.numberReader}).joined(n.items))
		case "accept":
			r.accept(n)
		}
	}
}

// working reads what the parts of the working weigh; the values weigh what is left.
func (r *schemeReader) working(n *node) {
	s := r.scheme
	r.each(n, "working", SchemeParts, func(word string, v *node) {
		r.between(&s.Working[slices.Index(SchemeParts, word)], v, word, 100)
	})
	var sum exact.Num
	for _, part := range s.Working {
		sum = sum.Add(part)
	}
	if sum.Cmp(exact.Int(100)) > 0 {
		r.fault(n.at, fmt.Sprintf("the parts of working come to %s %% together, more than a problem has", sum.Places(0)), "Write numbers that come to 100 at most; a part that is left out keeps what it has by default.")
	}
}

// between reads a number from 0 up to a bound.
func (r *schemeReader) between(to *exact.Num, n *node, what string, most int64) {
	like := "0.5"
	if most == 100 && what != "round" {
		like = "50"
	}
	v, ok := r.counted(n, what, like)
	if ok && (v.Sign() < 0 || v.Cmp(exact.Int(most)) > 0) {
		r.fault(n.at, fmt.Sprintf("%s is from 0 to %d, not %s", what, most, quoted(n.text)), "Write a number in this range.")
		return
	}
	*to = v
}

// each reads the entries of a table whose names are known.
func (r *schemeReader) each(n *node, what string, words []string, take func(word string, v *node)) {
	for _, e := range n.entries {
		if !slices.Contains(words, e.key.text) {
			remedy := "Its entries are " + allOf(words) + "."
			if word, value, parted := strings.Cut(e.key.text, " "); parted && slices.Contains(words, word) {
				remedy = fmt.Sprintf("A colon is missing: write %s: %s", word, strings.TrimSpace(value))
			}
			r.fault(e.key.at, fmt.Sprintf("%s has no entry %s", what, quoted(e.key.text)), remedy)
			continue
		}
		take(e.key.text, e.value)
	}
}

// accept reads values that are accepted as well: one, or a list.
func (r *schemeReader) accept(n *node) {
	r.scheme.Accept = map[string][]exact.Num{}
	for _, e := range n.entries {
		values := []*node{e.value}
		if e.value.shape == list {
			values = e.value.items
		}
		for _, v := range values {
			if x, ok := r.counted(v, e.key.text, "6.5"); ok {
				r.scheme.Accept[e.key.text] = append(r.scheme.Accept[e.key.text], x)
			}
		}
	}
}

// IsVoid reports whether an item is left out.
func (s *Scheme) IsVoid(item Item) bool {
	return slices.ContainsFunc(s.Void, func(name string) bool { return notation.NameMatches(name, item.Name) })
}

// AcceptedFor are the values that are accepted beside the true one of an item, in the order of the file's names.
func (s *Scheme) AcceptedFor(item Item) []exact.Num {
	var all []exact.Num
	for _, name := range slices.Sorted(maps.Keys(s.Accept)) {
		if notation.NameMatches(name, item.Name) {
			all = append(all, s.Accept[name]...)
		}
	}
	return all
}

// Digest stands for all that a scheme says.
func (s *Scheme) Digest() string {
	sum := sha256.Sum256([]byte(fmt.Sprint(s.Forces, s.Diagrams, s.Working, s.Verdicts, s.Once, s.Round, s.Attempts, s.Void, s.Accept)))
	return hex.EncodeToString(sum[:6])
}
