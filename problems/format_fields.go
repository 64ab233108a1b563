package problems

import (
	"slices"

	"unpin/statics/notation"
)

// field is one field of a problem file: its name, the shapes its value may have, and what it means. These tables drive
// the strict reading, and hold what a schema for editors needs.
type field struct {
	name   string
	shapes []shape // what its value may look like
	need   bool
	words  []string // closed list for a word, or for the entries of a list of words
	same   []string // other words that are read as one of the closed list
	of     fields   // the fields of a table with fixed names
	also   []string // what people may write in its place; only to suggest the right name
	like   string   // an example of a value
	doc    string
}

// fields is the table of a group of fields, in the order of the format.
type fields []field

var (
	oneScalar   = []shape{scalar}
	oneList     = []shape{list}
	oneTable    = []shape{table}
	listOrTable = []shape{list, table}
	wordOrList  = []shape{scalar, list}
)

// problemFields are the fields of a file.
var problemFields = fields{
	{name: "title", shapes: oneScalar, need: true, also: []string{"name", "heading"}, like: "Loading-bay canopy", doc: "The problem in a few words."},
	{name: "text", shapes: oneScalar, also: []string{"description", "story", "scenario"}, like: "A canopy hangs on a wall column. Find all forces.", doc: "The scenario, and what is asked, in a few sentences; {w} stands for the given number w."},
	{name: "units", shapes: oneScalar, need: true, also: []string{"unit"}, like: "kN m", doc: "Force then length: N kN MN lb kip, mm m in ft; or the letters P L."},
	{name: "given", shapes: oneTable, also: []string{"data", "values", "parameters", "variables"}, like: "{h: 4.5, w: 8}", doc: "Names for numbers, usable in any number."},
	{name: "joints", shapes: oneTable, need: true, also: []string{"nodes", "points"}, like: "{A: [0, 0], B: [0, 4], C: [6, 4]}", doc: "Each joint's name and [x, y]."},
	{name: "members", shapes: oneList, need: true, also: []string{"bars", "beams", "elements"}, like: "[AB, BC]", doc: "Straight members, each named by its two joints."},
	{name: "pins", shapes: listOrTable, also: []string{"hinges", "releases"}, like: "[B, C]", doc: "Joints whose members are hinged; a table says which of them."},
	{name: "slots", shapes: oneTable, also: []string{"slides"}, like: "{C: {free: [CD], along: CD}}", doc: "Joints where members turn, and slide along a line."},
	{name: "sleeves", shapes: oneTable, like: "{C: {free: [CD], along: CD}}", doc: "Joints where members slide along a line but do not turn."},
	{name: "supports", shapes: oneTable, also: []string{"reactions", "restraints"}, like: "{A: fixed, C: {roller: up}}", doc: "What holds the frame, by joint."},
	{name: "loads", shapes: oneList, also: []string{"forces"}, like: "[{point: 30, to: down, on: BC, at: 2.4}]", doc: "Point loads, couples, distributed loads and pulleys with their ropes."},
	{name: "vary", shapes: oneTable, also: []string{"variants"}, like: "{h: 3..6 by 0.5}", doc: "The values that given numbers may take in variants: 3..6 by 0.5, or a list; where: ['h < w'] has what they must keep to."},
	{name: "ask", shapes: oneTable, of: askFields, like: "{figures: 3}", doc: "What is asked, and in which conventions."},
	{name: "grade", shapes: oneScalar, also: []string{"level", "difficulty"}, like: "3", doc: "How hard it is, from 1 to 6."},
	{name: "skills", shapes: oneList, words: skillNames(), like: "[pin-pair, moment-centre]", doc: "The skills it exercises."},
}

// askFields are the fields of ask; the first of the words is what holds where the field is absent.
var askFields = fields{
	{name: "figures", shapes: oneScalar, also: []string{"digits"}, like: "3", doc: "Significant figures of answers, 3 to 8; 3 if absent."},
	conventionField("moments", "cw", "The positive turn in moment sums."),
	conventionField("shear", "clockwise", "The turn that positive shear gives a piece of the member."),
	conventionField("side", "tension", "The side of the member on which moments are drawn."),
	conventionField("decimal", "point", "The decimal sign that is printed."),
	conventionField("two-force", "plain", "Whether two-force members are treated like all parts, or used at once.", "two_force", "twoforce"),
	{name: "find", shapes: oneList, words: findWords, like: "[reactions, pins]", doc: "What is to be found; all of them if absent."},
}

// conventionField is the field of a convention, with the words that package notation has for it.
func conventionField(name, like, doc string, also ...string) field {
	words, same := notation.ConventionWords(name)
	return field{name: name, shapes: oneScalar, words: words, same: same, also: also, like: like, doc: doc}
}

// turnWords are the words of a turn and others that are read as one of them: the turn of a couple is written like that of
// moments.
var turnWords, turnSame = notation.ConventionWords("moments")

// slideFields are the fields of a slot or sleeve.
var slideFields = fields{
	{name: "free", shapes: oneList, need: true, like: "[CD]", doc: "The members that slide, as one piece."},
	{name: "along", shapes: wordOrList, need: true, also: []string{"to", "direction"}, like: "CD", doc: "The line they slide along: a member or a direction."},
}

// supportFields are the fields of a support that is more than the word fixed or pin: one of the four kinds.
var supportFields = fields{
	{name: "pin", shapes: oneScalar, also: []string{"pinned"}, like: "BC", doc: "The member that it pins to the ground."},
	{name: "fixed", shapes: oneScalar, also: []string{"fix"}, like: "BC", doc: "The member that it fixes to the ground."},
	{name: "roller", shapes: wordOrList, like: "up", doc: "The direction of its one force."},
	{name: "guide", shapes: wordOrList, like: "right", doc: "The direction of its force; a couple comes with it."},
	{name: "on", shapes: oneScalar, also: []string{"member"}, like: "BC", doc: "The member that a roller or guide holds."},
}

// The words of a support without fields, and its kinds.
var (
	supportWords = []string{"fixed", "pin"}
	supportKinds = []string{"pin", "fixed", "roller", "guide"}
)

// The kinds of load, and where a load is given.
var (
	loadKinds  = []string{"point", "couple", "uniform", "ramp", "pulley"}
	kindSlips  = map[string]string{"force": "point", "load": "point", "moment": "couple", "distributed": "uniform", "udl": "uniform", "spread": "uniform", "triangle": "ramp", "linear": "ramp", "wheel": "pulley", "sheave": "pulley"}
	pointPlace = fields{
		{name: "on", shapes: oneScalar, also: []string{"member"}, like: "BC", doc: "The member it acts on; at a joint, the member that carries it."},
		{name: "at", shapes: oneScalar, also: []string{"x", "distance"}, like: "2.4", doc: "The distance along that member from the first letter of its name."},
		{name: "joint", shapes: oneScalar, also: []string{"node"}, like: "B", doc: "The joint it acts at."},
	}
	spreadPlace = fields{
		{name: "on", shapes: wordOrList, need: true, also: []string{"member", "members"}, like: "BC", doc: "The member, several in order, or all."},
		{name: "from", shapes: oneScalar, also: []string{"start"}, like: "1", doc: "The distance at which it begins; 0 if absent."},
		{name: "until", shapes: oneScalar, also: []string{"end", "till"}, like: "3.5", doc: "The distance at which it ends; the length if absent."},
		{name: "per", shapes: oneScalar, words: []string{"length", "run", "rise"}, like: "run", doc: "The length its intensity counts on: the member's own, or its horizontal or vertical projection."},
	}
	pulleyFields = fields{
		{name: "pulley", shapes: oneScalar, need: true, like: "D", doc: "The joint on which the pulley stands."},
		{name: "rope", shapes: oneScalar, need: true, also: []string{"tension", "cable", "pull"}, like: "12", doc: "The tension of the rope: it pulls with this force at both sides."},
		{name: "to", shapes: oneList, need: true, also: []string{"direction", "directions", "dir", "towards"}, like: "[down, left]", doc: "The two directions in which the rope leaves the pulley."},
		{name: "on", shapes: oneScalar, also: []string{"member"}, like: "CD", doc: "The member that carries the pulley, where the joint is a pin; the pin itself if absent."},
		{name: "radius", shapes: oneScalar, also: []string{"r", "size"}, like: "0.3", doc: "The radius of the pulley; both pulls act at the joint if absent."},
	}
	forceDirection = field{name: "to", shapes: wordOrList, need: true, also: []string{"direction", "dir", "towards"}, like: "down", doc: "The direction it pushes in."}
	turnDirection  = field{name: "to", shapes: oneScalar, need: true, words: turnWords, same: turnSame, also: []string{"direction", "dir", "turn"}, like: "cw", doc: "The way it turns."}
)

// loadFields are the fields of each kind of load.
var loadFields = map[string]fields{
	"point":   join(field{name: "point", shapes: oneScalar, need: true, like: "30", doc: "A force."}, forceDirection, pointPlace),
	"couple":  join(field{name: "couple", shapes: oneScalar, need: true, like: "40", doc: "A couple."}, turnDirection, pointPlace),
	"uniform": join(field{name: "uniform", shapes: oneScalar, need: true, like: "8", doc: "A force per length, the same all along."}, forceDirection, spreadPlace),
	"ramp":    join(field{name: "ramp", shapes: oneList, need: true, like: "[0, 12]", doc: "The force per length at its start and at its end, straight between."}, forceDirection, spreadPlace),
	"pulley":  pulleyFields,
}

func join(size, direction field, place fields) fields {
	return append(fields{size, direction}, place...)
}

// names lists the fields.
func (fs fields) names() []string {
	var names []string
	for _, f := range fs {
		names = append(names, f.name)
	}
	return names
}

// FieldNames lists the fields that a problem file may have at any depth, each once, in the order of the format. Joints and
// names of numbers are none.
func FieldNames() []string {
	groups := []fields{problemFields, slideFields, supportFields}
	for _, kind := range loadKinds {
		groups = append(groups, loadFields[kind])
	}
	return namesOf(append(groups, askFields)...)
}

// SetFieldNames lists the fields of a set and of its problems, in the order of the format.
func SetFieldNames() []string { return namesOf(setFields, taskFields) }

// namesOf lists the fields of groups, each name once.
func namesOf(groups ...fields) []string {
	var names []string
	for _, group := range groups {
		for _, name := range group.names() {
			if !slices.Contains(names, name) {
				names = append(names, name)
			}
		}
	}
	return names
}

// find is the field of that name.
func (fs fields) find(name string) (field, bool) {
	for _, f := range fs {
		if f.name == name {
			return f, true
		}
	}
	return field{}, false
}

// meant is the field that a misspelt name most likely stands for, or "".
func (fs fields) meant(name string) string {
	for _, f := range fs {
		for _, other := range f.also {
			if other == name {
				return f.name
			}
		}
	}
	return near(name, fs.names())
}
