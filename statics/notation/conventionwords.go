package notation

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// The significant figures that may be asked for.
const (
	LeastFigures = 3
	MostFigures  = 8
)

// The words of each convention, by value: the first is the one that is written, and all are read.
var (
	momentWords   = [][]string{{"ccw", "counter-clockwise"}, {"cw", "clockwise"}}
	shearWords    = [][]string{{"clockwise", "cw"}, {"counter-clockwise", "ccw"}}
	momentSides   = [][]string{{"tension"}, {"compression"}}
	decimalWords  = [][]string{{"point"}, {"comma"}}
	twoForceWords = [][]string{{"plain"}, {"shortcut"}}
)

// A convention is one field of Conventions under its name in a problem file.
type convention struct {
	name  string
	words [][]string
	get   func(Conventions) int
	set   func(*Conventions, int)
}

// conventions are the fields, in the order of a problem file.
var conventions = []convention{
	{"figures", figureWords(), func(c Conventions) int { return c.figures() - LeastFigures }, func(c *Conventions, i int) { c.Figures = LeastFigures + i }},
	{"moments", momentWords, func(c Conventions) int { return int(c.Moments) }, func(c *Conventions, i int) { c.Moments = MomentTurn(i) }},
	{"shear", shearWords, func(c Conventions) int { return int(c.Shear) }, func(c *Conventions, i int) { c.Shear = ShearTurn(i) }},
	{"side", momentSides, func(c Conventions) int { return int(c.Side) }, func(c *Conventions, i int) { c.Side = MomentSide(i) }},
	{"decimal", decimalWords, func(c Conventions) int { return int(c.Decimal) }, func(c *Conventions, i int) { c.Decimal = DecimalSign(i) }},
	{"two-force", twoForceWords, func(c Conventions) int { return int(c.TwoForce) }, func(c *Conventions, i int) { c.TwoForce = TwoForceUse(i) }},
}

// figureWords are the numbers of figures that may be asked for.
func figureWords() [][]string {
	var words [][]string
	for n := LeastFigures; n <= MostFigures; n++ {
		words = append(words, []string{strconv.Itoa(n)})
	}
	return words
}

// ConventionNames lists the names of the conventions, in the order of a problem file.
func ConventionNames() []string {
	var names []string
	for _, c := range conventions {
		names = append(names, c.name)
	}
	return names
}

// conventionOf is the convention of that name.
func conventionOf(name string) (convention, bool) {
	i := slices.IndexFunc(conventions, func(c convention) bool { return c.name == name })
	if i < 0 {
		return convention{}, false
	}
	return conventions[i], true
}

// ConventionWords are the words of a convention: those that are written, the word that holds where nothing is said
// first, and others that are read as one of them. Both are empty for a name that no convention has.
func ConventionWords(name string) (written, read []string) {
	c, _ := conventionOf(name)
	for _, w := range c.words {
		written, read = append(written, w[0]), append(read, w[1:]...)
	}
	return written, read
}

// Set settles one convention by its name and word in a problem file: "moments", "cw". The error says what would be right.
func (c *Conventions) Set(name, word string) error {
	k, ok := conventionOf(name)
	if !ok {
		return fmt.Errorf("there is no convention %s: they are %s", quoted(name), List(ConventionNames()))
	}
	i := slices.IndexFunc(k.words, func(words []string) bool { return slices.Contains(words, word) })
	if i < 0 {
		written, _ := ConventionWords(name)
		return fmt.Errorf("%s cannot be %s: write %s", name, quoted(word), anyOf(written))
	}
	k.set(c, i)
	return nil
}

// ReadMomentTurn reads a turn by its word in a problem file, which has it for couples too.
func ReadMomentTurn(word string) (MomentTurn, bool) {
	i := slices.IndexFunc(momentWords, func(words []string) bool { return slices.Contains(words, word) })
	return MomentTurn(max(i, 0)), i >= 0
}

// anyOf joins words with commas and "or".
func anyOf(words []string) string {
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}

// Word is the word of the convention of that name; empty for a name that none has.
func (c Conventions) Word(name string) string {
	k, ok := conventionOf(name)
	if !ok {
		return ""
	}
	return k.words[k.get(c)][0]
}

// String lists all conventions: "figures=3,moments=ccw,shear=clockwise,side=tension,decimal=point,two-force=plain".
func (c Conventions) String() string {
	var all []string
	for _, name := range ConventionNames() {
		all = append(all, name+"="+c.Word(name))
	}
	return strings.Join(all, ",")
}
