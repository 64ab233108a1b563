package marking

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// A given value is what a paper has for an item, by the senses of the solution.
type given struct {
	entries []Entry
	turns   []int // of each entry
	typed   judging.Typed
	unit    bool // the unit is one of another kind of quantity
	faces   bool // the two faces of one pin have equal senses
}

// A reading of a paper is what it gives for each item.
type reading struct {
	*Marker
	given  []*given // of each item, or nil
	extra  []extra  // answers to what is no item
	unread []Unread
}

// An extra answer is one to something that is not among the items.
type extra struct {
	entry Entry
	item  problems.Item
	typed judging.Typed
	right bool // of a shape
	shape bool
}

// read holds the entries of a paper against the items.
func (m *Marker) read(p *Paper) *reading {
	r := &reading{Marker: m, given: make([]*given, len(m.Items))}
	for _, e := range p.Entries {
		switch err := r.take(e); {
		case err != nil && r.isExchanged(e):
			r.refuse([]Entry{e}, exchanged)
		case err != nil:
			r.refuse([]Entry{e}, err.Error())
		}
	}
	for i, g := range r.given {
		if g != nil {
			r.settle(i, g)
		}
	}
	return r
}

// Check says what is wrong with an answer, so that nothing would be made of it; nil where it can be read. It does not look at
// whether it is right.
func (m *Marker) Check(quantity, value string) error {
	r := &reading{Marker: m, given: make([]*given, len(m.Items))}
	return r.take(Entry{Quantity: quantity, Value: value})
}

// refuse notes entries of which nothing is made.
func (r *reading) refuse(entries []Entry, why string) {
	u := Unread{Why: why}
	var texts []string
	for _, e := range entries {
		u.Lines = append(u.Lines, e.Line)
		texts = append(texts, shortened(e.Quantity+" = "+e.Value))
	}
	u.Text = strings.Join(texts, "; ")
	r.unread = append(r.unread, u)
}

// take takes up one entry.
func (r *reading) take(e Entry) error {
	s, err := r.find(e.Quantity)
	if err != nil {
		return err
	}
	if s.shape {
		return r.takeShape(e, s)
	}
	place := ""
	if s.peak {
		e.Value, place = cutPlace(e.Value)
	}
	item := s.extra
	if s.item >= 0 {
		item = r.Items[s.item]
	}
	typed, unit, err := r.typed(item, s, e.Value)
	if err != nil {
		return err
	}
	switch {
	case s.item < 0:
		r.extra = append(r.extra, extra{entry: e, item: item, typed: typed})
	case r.given[s.item] == nil:
		r.given[s.item] = &given{entries: []Entry{e}, turns: []int{s.turn}, typed: typed, unit: unit}
	default:
		r.again(s, e, typed)
	}
	if place != "" {
		return r.takePlace(e, s, item, place)
	}
	return nil
}

// again takes up a second value for an item. The same once more is one answer; so are opposite ones on the two faces of a pin.
func (r *reading) again(s spot, e Entry, typed judging.Typed) {
	g := r.given[s.item]
	otherFace := r.Items[s.item].Force != statics.None && !slices.Contains(g.turns, s.turn)
	g.entries, g.turns = append(g.entries, e), append(g.turns, s.turn)
	switch {
	case g.typed.Value.Equal(typed.Value):
	case otherFace && g.typed.Value.Equal(typed.Value.Neg()):
		g.faces = true
	default:
		g.turns = nil // they contradict each other
	}
}

// settle refuses an item with several values.
func (r *reading) settle(i int, g *given) {
	if g.turns == nil {
		r.refuse(g.entries, fmt.Sprintf("there are several values for %s: keep the one that is meant", r.Items[i].Name))
		r.given[i] = nil
	}
}

// typed reads a value for an item. A unit of the wrong kind is passed over, and told.
func (r *reading) typed(item problems.Item, s spot, value string) (v judging.Typed, unit bool, err error) {
	q := r.asked(item, s)
	v, err = r.judge.Read(q, value)
	if bad := (*notation.ReadError)(nil); errors.As(err, &bad) && bad.Mismatch {
		if bare, ok := withoutUnit(value); ok {
			v, err = r.judge.Read(q, bare)
			unit = err == nil
		}
	}
	if err != nil && slices.Contains(noForce, strings.ToLower(strings.TrimSpace(value))) {
		return v, false, fmt.Errorf("%s: where nothing acts, write 0", item.Name)
	}
	if err != nil {
		return v, false, fmt.Errorf("%s: %s", item.Name, firstOf(err))
	}
	if s.turn < 0 {
		v = negated(v)
	}
	return v, unit, nil
}

// noForce are words by which people say that there is nothing.
var noForce = []string{"-", "–", "—", "none", "no", "nil", "nothing", "no force", "no reaction", "no moment", "zero"}

// firstOf is the first line of an error: the lines after it point at the place, which a list has no room for.
func firstOf(err error) string {
	text, _, _ := strings.Cut(err.Error(), "\n")
	return strings.TrimSuffix(text, ".")
}

// asked is an item as a line is read for it.
func (m *Marker) asked(item problems.Item, s spot) judging.Asked {
	q := judging.Asked{Name: item.Name, Dim: item.Dim}
	switch {
	case item.Force != statics.None:
		q.Force = &m.Forces[item.Force]
	case item.Place:
	default:
		q.Span = s.span
		q.Axial, q.Shear, q.Bends = item.Quantity == statics.AxialForce, item.Quantity == statics.ShearForce, item.Quantity == statics.BendingMoment
	}
	return q
}

// unitForm is a number with a unit behind it.
var unitForm = notation.Pattern(`^([-+−]?[0-9.,/ ]*[0-9])\s*[A-Za-zµ]+(?:\s*[*·./-]?\s*[A-Za-z]+)*(\s+(?:up|down|left|right|cw|ccw|clockwise|counter-clockwise|tension|compression).*)?$`)

// withoutUnit is a value without its unit; false where it is no plain number with one.
func withoutUnit(value string) (string, bool) {
	parts := unitForm().FindStringSubmatch(strings.TrimSpace(value))
	if parts == nil {
		return "", false
	}
	return parts[1] + parts[2], true
}

// negated is a typed value in the opposite sense.
func negated(v judging.Typed) judging.Typed {
	v.Value, v.Written = v.Value.Neg(), v.Written.Neg()
	return v
}

// placeForm is what follows the value of a peak: at 5.96.
var placeForm = notation.Pattern(`^(.*\S)\s+at\s+(?:x\s*=\s*)?(\S.*)$`)

// cutPlace parts a value from the place after it.
func cutPlace(value string) (bare, place string) {
	if parts := placeForm().FindStringSubmatch(value); parts != nil {
		return parts[1], parts[2]
	}
	return value, ""
}

// takePlace takes up the place of a peak, which counts from the end that the member's name begins with.
func (r *reading) takePlace(e Entry, s spot, of problems.Item, place string) error {
	i := slices.IndexFunc(r.Items, func(i problems.Item) bool {
		return i.Place && i.Member == of.Member && i.Station.At.Equal(of.Station.At)
	})
	item := problems.Item{Name: "place of " + e.Quantity, Dim: notation.Length, Force: statics.None, Member: of.Member, Station: of.Station, Place: true, Value: of.Station.At}
	v, err := r.judge.Read(judging.Asked{Name: item.Name, Dim: notation.Length}, place)
	if err != nil {
		return fmt.Errorf("the place of the peak: %s", firstOf(err))
	}
	if s.turn < 0 {
		from := r.Diagrams[of.Member].Length
		v.Value, v.Written = from.Sub(v.Value), from.Sub(v.Written)
	}
	switch {
	case i < 0:
		r.extra = append(r.extra, extra{entry: e, item: item, typed: v})
	case r.given[i] == nil:
		r.given[i] = &given{entries: []Entry{e}, turns: []int{1}, typed: v}
	default:
		r.again(spot{item: i, turn: 1}, e, v)
	}
	return nil
}

// shapeWays are the words for the way in which the slope of a curve goes, on the way along the member as it is named.
var shapeWays = map[string]int{"down": -1, "falls": -1, "falling": -1, "-": -1, "up": 1, "rises": 1, "rising": 1, "+": 1}

// takeShape holds a degree and a way against a stretch of a diagram.
func (r *reading) takeShape(e Entry, s spot) error {
	words := strings.Fields(strings.ToLower(e.Value))
	degree := map[string]int{"0": 0, "level": 0, "1": 1, "straight": 1, "2": 2, "3": 3}
	n, ok := 0, false
	if len(words) > 0 {
		n, ok = degree[words[0]]
	}
	way := 0
	if len(words) == 2 {
		way = shapeWays[words[1]]
	}
	if !ok || len(words) > 2 || len(words) == 2 && way == 0 {
		return errors.New("a shape is a degree from 0 to 3, and of a curve the way its slope goes: 2 down")
	}
	curve, ok := r.curveOn(s)
	if !ok {
		return fmt.Errorf("%s is no stretch of this member's diagram: name the places between which nothing changes", shortened(e.Quantity))
	}
	x := extra{entry: e, item: problems.Item{Name: e.Quantity, Force: statics.None, Member: s.member, Quantity: s.letter}, shape: true}
	bend := curve.Derivative().Derivative().At(s.from[0].Add(s.from[1]).Mul(half)).Sign()
	if s.letter == statics.BendingMoment {
		bend *= s.turn
	}
	x.right = n == curve.Degree() && (way == 0 || n < 2 || way == bend)
	r.extra = append(r.extra, x)
	return nil
}

var half = exact.MustParse("0.5")

// curveOn is N, V or M over one stretch.
func (m *Marker) curveOn(s spot) (exact.Poly, bool) {
	for _, p := range m.Diagrams[s.member].Stretches {
		if samePlace(p.From, s.from[0]) && samePlace(p.Until, s.from[1]) {
			return [...]exact.Poly{p.N, p.V, p.M}[s.letter].Trim(), true
		}
	}
	return nil, false
}
