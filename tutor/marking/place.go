package marking

import (
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// A spot is what the words before an equals sign mean in a problem.
type spot struct {
	item   int // of the marker's items, or −1 where it is none of them
	extra  problems.Item
	turn   int // −1 where the value stands for its opposite: the other face of a pin, or M of a member named from its other end
	span   statics.Vector
	peak   bool // max M: a place may follow the value
	shape  bool // the degree and the way of a curve
	member int  // of a shape
	from   [2]exact.Num
	letter statics.Quantity
}

var (
	peakForm  = notation.Pattern(`^(?:max|min)\s*M\s*\(\s*([A-Z][A-Za-z0-9']*)\s*\)$`)
	shapeForm = notation.Pattern(`^shape\s*(?:of\s+)?([NVM])\s*\(\s*([A-Z][A-Za-z0-9']*)\s*,\s*(.+?)\s*\.\.\s*(.+?)\s*\)$`)
)

// mostMeant bounds the quantities whose meaning is kept.
const mostMeant = 4096

// A meaning is what a quantity was found to mean.
type meaning struct {
	spot spot
	err  error
}

// find finds what a quantity means. The error says what would be right.
func (m *Marker) find(quantity string) (spot, error) {
	m.known.mutex.Lock()
	found, ok := m.known.meant[quantity]
	m.known.mutex.Unlock()
	if !ok {
		found.spot, found.err = m.findAnew(quantity)
		m.known.mutex.Lock()
		if len(m.known.meant) < mostMeant {
			m.known.meant[strings.Clone(quantity)] = found
		}
		m.known.mutex.Unlock()
	}
	return found.spot, found.err
}

func (m *Marker) findAnew(quantity string) (spot, error) {
	for i, item := range m.Items {
		if notation.NameMatches(quantity, item.Name) {
			return m.spotOf(i), nil
		}
	}
	if f, sign := judging.ForceMeant(m.Assembly, quantity); f != statics.None {
		return spot{item: m.ofForce(f), turn: sign}, nil
	}
	if name, ok := problems.ReadSectionName(quantity); ok {
		return m.section(quantity, name)
	}
	if parts := peakForm().FindStringSubmatch(quantity); parts != nil {
		return m.peak(quantity, parts[1])
	}
	if parts := shapeForm().FindStringSubmatch(quantity); parts != nil {
		return m.shape(quantity, parts)
	}
	if i := spelled(m, quantity); i >= 0 {
		return m.spotOf(i), nil
	}
	if word, _, _ := strings.Cut(quantity, " "); word == "max" || word == "shape" {
		return spot{}, fmt.Errorf("%s cannot be read: write it as max M(%s), or shape M(%s, 0..2)", shortened(quantity), m.Frame.Members[0].Name, m.Frame.Members[0].Name)
	}
	return spot{}, fmt.Errorf("%s is no quantity of this problem: write a force (%s) or a place along a member, such as M(%s, 0)",
		shortened(quantity), notation.List(forceNames(m)), m.Frame.Members[0].Name)
}

// sidedForm is a place with a side that is not said as before or after.
var sidedForm = notation.Pattern(`^\s*(\S*[0-9])\s*(?:left|right|l|r|above|below|[-+−])\s*$`)

// spelled is the one item whose name is written so but for small and capital letters; −1 where there is none, or several.
func spelled(m *Marker, quantity string) int {
	bare := strings.NewReplacer(" ", "", "_", "")
	found := -1
	for i, item := range m.Items {
		if !strings.EqualFold(bare.Replace(item.Name), bare.Replace(quantity)) {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

// AsAsked is what an answer is of as a sheet has it, or as it is written where no sheet asks for it, and its unit; empty where it has
// none.
func (m *Marker) AsAsked(quantity string) (name, unit string) {
	s, err := m.find(quantity)
	if err != nil || s.item < 0 || s.shape {
		return quantity, ""
	}
	unit = m.Units.Of(m.Items[s.item].Dim)
	if s.peak || s.turn < 0 {
		return quantity, unit
	}
	return m.wanted(m.Items[s.item]), unit
}

func forceNames(m *Marker) []string {
	var names []string
	for _, f := range m.Forces {
		names = append(names, f.Name)
	}
	return names
}

// spotOf is the spot of an item under its own name.
func (m *Marker) spotOf(i int) spot {
	s := spot{item: i, turn: 1}
	if item := m.Items[i]; item.Member != statics.None {
		s.span = m.Frame.Span(item.Member)
	}
	return s
}

// memberNamed is the member of a name, and whether the name runs against it.
func memberNamed(m *Marker, name string) (member int, against bool, err error) {
	for i, b := range m.Frame.Members {
		if b.Name == name {
			return i, false, nil
		}
	}
	for i, b := range m.Frame.Members {
		if m.Frame.Joints[b.To].Name+m.Frame.Joints[b.From].Name == name {
			return i, true, nil
		}
	}
	var names []string
	for _, b := range m.Frame.Members {
		names = append(names, b.Name)
	}
	return 0, false, fmt.Errorf("%s is no member of this frame: its members are %s", name, notation.List(names))
}

// section finds N, V or M at a place.
func (m *Marker) section(quantity string, name problems.NamedSection) (spot, error) {
	member, against, err := memberNamed(m, name.Member)
	if err != nil {
		return spot{}, err
	}
	d := m.Diagrams[member]
	if d.Withheld {
		return spot{}, fmt.Errorf("%s lies in a rigid ring, where equilibrium alone does not give N, V and M", name.Member)
	}
	at, err := notation.ReadNumber(m.judge.Decimals(name.Place), nil, m.Units, notation.Length)
	if sided := sidedForm().FindStringSubmatch(name.Place); err != nil && sided != nil {
		return spot{}, fmt.Errorf("the place in %s cannot be read: a side is before or after, on the way along the member, as in %s(%s, %s before)",
			shortened(quantity), [...]string{"N", "V", "M"}[name.Quantity], name.Member, sided[1])
	}
	if err != nil {
		return spot{}, fmt.Errorf("the place in %s cannot be read: %w", shortened(quantity), err)
	}
	q, side := name.Quantity, name.Side
	s := spot{turn: 1, span: m.Frame.Span(member)}
	if against {
		at, s.span = d.Length.Sub(at), s.span.Neg()
		side = [...]statics.Side{statics.Both, statics.After, statics.Before}[side]
		if q == statics.BendingMoment {
			s.turn = -1
		}
	}
	st, err := m.stationAt(d, q, at, side, against)
	if err != nil {
		return spot{}, fmt.Errorf("%s %w", shortened(quantity), err)
	}
	s.item, s.extra = m.itemAt(member, q, st)
	return s, nil
}

// stationAt finds a place along a member to three figures: a critical point, or else the place as it is.
func (m *Marker) stationAt(d statics.Diagram, q statics.Quantity, at exact.Num, side statics.Side, against bool) (statics.Station, error) {
	var here []statics.Station
	for _, st := range d.Stations() {
		x, typed := st.At, at
		if against {
			x, typed = d.Length.Sub(x), d.Length.Sub(typed)
		}
		if samePlace(x, typed) {
			here = append(here, st)
		}
	}
	if len(here) == 0 {
		forces, on := d.Section(at, side)
		if !on {
			return statics.Station{}, fmt.Errorf("lies off the member, which is %s long", strings.TrimSpace(problems.PlaceText(d.Length)+" "+m.Units.Of(notation.Length)))
		}
		return statics.Station{At: at, Side: statics.Both, InternalForces: forces, Exact: true}, nil
	}
	return onSide(here, q, side)
}

// onSide is the one of the stations at a place that a side means.
func onSide(here []statics.Station, q statics.Quantity, side statics.Side) (statics.Station, error) {
	first, last := here[0], here[len(here)-1]
	switch {
	case first.Of(q).Equal(last.Of(q)) && (len(here) > 1 || side == statics.Both || first.Side == statics.Both):
		if side == statics.After {
			return last, nil
		}
		return first, nil
	case len(here) == 1 && first.Side == side:
		return first, nil
	case len(here) == 1:
		return first, fmt.Errorf("has nothing on that side: the member ends there")
	case side == statics.Before:
		return first, nil
	case side == statics.After:
		return last, nil
	}
	return first, fmt.Errorf("jumps there: write before or after behind the place")
}

// samePlace reports whether a place was typed that is x to three figures or more.
func samePlace(x, typed exact.Num) bool {
	if x.Equal(typed) {
		return true
	}
	for figures := 3; figures <= 8; figures++ {
		if x.Rounded(figures).Equal(typed) {
			return true
		}
	}
	return false
}

// itemAt is the item that asks for a quantity at a station, or −1 and an item made for it. Where the quantity has not changed
// since it was asked for, what is answered is that.
func (m *Marker) itemAt(member int, q statics.Quantity, st statics.Station) (int, problems.Item) {
	if q == statics.BendingMoment {
		i := slices.IndexFunc(m.Items, func(i problems.Item) bool {
			return i.Member == member && i.Quantity == q && !i.Place && i.Station.At.Equal(st.At) && i.Value.Equal(st.Of(q))
		})
		if i >= 0 {
			return i, problems.Item{}
		}
	} else if i := m.column(member, q, st); i >= 0 && m.Items[i].Value.Equal(st.Of(q)) && m.isConstant(member, q, m.Items[i].Station.At, st.At) {
		return i, problems.Item{}
	}
	side := [...]string{"", "before", "after"}[st.Side]
	return -1, problems.SectionItem(m.Solution, member, q, st, side)
}

// isConstant reports whether N or V is the same all the way between two places.
func (m *Marker) isConstant(member int, q statics.Quantity, from, until exact.Num) bool {
	for _, p := range m.Diagrams[member].Stretches {
		if p.Until.Cmp(from) <= 0 || p.From.Cmp(until) >= 0 {
			continue
		}
		if (q == statics.AxialForce && p.N.Degree() > 0) || (q == statics.ShearForce && p.V.Degree() > 0) {
			return false
		}
	}
	return true
}

// peak finds where a member's bending moment peaks: where the shear is zero within it, else where M is largest. Of several
// peaks it is that of the largest M.
func (m *Marker) peak(quantity, name string) (spot, error) {
	member, against, err := memberNamed(m, name)
	if err != nil {
		return spot{}, err
	}
	var best *statics.Station
	for _, found := range []bool{true, false} {
		for _, st := range m.Diagrams[member].Stations() {
			if st.Found == found && (best == nil || st.M.Abs().Cmp(best.M.Abs()) > 0) {
				best = &st
			}
		}
		if best != nil {
			break
		}
	}
	if best == nil {
		return spot{}, fmt.Errorf("%s cannot be judged: N, V and M of %s are not given by equilibrium alone", shortened(quantity), name)
	}
	s := spot{turn: 1, span: m.Frame.Span(member), peak: true, member: member}
	if against {
		s.turn, s.span = -1, s.span.Neg()
	}
	s.item, s.extra = m.itemAt(member, statics.BendingMoment, *best)
	return s, nil
}

// shape finds a stretch of a member's diagram.
func (m *Marker) shape(quantity string, parts []string) (spot, error) {
	member, against, err := memberNamed(m, parts[2])
	if err != nil {
		return spot{}, err
	}
	s := spot{item: -1, shape: true, member: member, turn: 1, letter: statics.Quantity(strings.Index("NVM", parts[1]))}
	for i, text := range parts[3:5] {
		x, err := notation.ReadNumber(m.judge.Decimals(text), nil, m.Units, notation.Length)
		if err != nil {
			return s, fmt.Errorf("the place in %s cannot be read: %w", shortened(quantity), err)
		}
		if s.from[i] = x; against {
			s.from[i] = m.Diagrams[member].Length.Sub(x)
		}
	}
	if s.from[0].Cmp(s.from[1]) > 0 {
		s.from[0], s.from[1] = s.from[1], s.from[0]
	}
	if against {
		s.turn = -1
	}
	return s, nil
}
