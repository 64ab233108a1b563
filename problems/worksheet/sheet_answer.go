package worksheet

import (
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// An answer is one line of the answers of a task: what is asked, and what of it is printed.
type answer struct {
	item  problems.Item
	name  string // as it is printed; a place that is to be found is not given away
	where string // what a force acts on
	unit  string
	plus  string // the sense of a positive value, in words; empty where it has none
	minus string // that of a negative one
}

// answering are the answers of a task.
type answering struct {
	*document
	items []problems.Item
}

// forces are the answers that are forces, in an order that does not give the plan away: that of the frame's forces.
func (d answering) forces() []answer {
	var all []answer
	for _, item := range d.items {
		if item.Force == statics.None {
			continue
		}
		f := d.Forces[item.Force]
		a := answer{item: item, name: item.Name, unit: d.st.UnitOf(item.Dim), plus: notation.SenseOf(f, exact.Int(1)), minus: notation.SenseOf(f, exact.Int(-1))}
		if f.Kind != statics.MemberPull {
			a.where = "on " + d.say.BodyName(f.On)
		}
		all = append(all, a)
	}
	slices.SortStableFunc(all, func(a, b answer) int { return a.item.Force - b.item.Force })
	return all
}

// members are the members along which something is asked, in the order in which it is.
func (d answering) members() []int {
	var all []int
	for _, item := range d.items {
		if item.Force == statics.None && !slices.Contains(all, item.Member) {
			all = append(all, item.Member)
		}
	}
	return all
}

// A section is what is asked at one place along a member.
type section struct {
	station statics.Station
	place   *problems.Item    // the place itself, where it is to be found
	values  [3]*problems.Item // N, V and M
}

// sections are the places along a member at which something is asked, in order.
func (d answering) sections(member int) []section {
	var all []section
	for i := range d.items {
		item := &d.items[i]
		if item.Force != statics.None || item.Member != member {
			continue
		}
		at := slices.IndexFunc(all, func(s section) bool {
			return s.station.At.Equal(item.Station.At) && s.station.Side == item.Station.Side
		})
		if at < 0 {
			at = len(all)
			all = append(all, section{station: item.Station})
		}
		if item.Place {
			all[at].place = item
		} else {
			all[at].values[item.Quantity] = item
		}
	}
	slices.SortStableFunc(all, func(a, b section) int {
		if c := a.station.At.Cmp(b.station.At); c != 0 {
			return c
		}
		return sideRank(a.station.Side) - sideRank(b.station.Side)
	})
	return all
}

// sideRank puts what is before a place before what is after it.
func sideRank(s statics.Side) int {
	switch s {
	case statics.Before:
		return 0
	case statics.After:
		return 2
	}
	return 1
}

// placeName is where a section lies, as its row says it; a place that is to be found is told by what is special there.
func (d answering) placeName(member int, s section) string {
	if !s.station.Found {
		return d.placeOf(member, s)
	}
	stretch := d.Diagrams[member].StretchFrom(s.station)
	which := ""
	if d.isSecond(member, s) {
		which = "next "
	}
	return which + "V = 0, from " + d.say.InFull(stretch.From) + " to " + d.say.InFull(stretch.Until)
}

// isSecond reports whether V is zero at another place before a section in the same stretch.
func (d answering) isSecond(member int, s section) bool {
	stretch := d.Diagrams[member].StretchFrom(s.station)
	return slices.ContainsFunc(d.stations[member], func(other statics.Station) bool {
		return other.Found && other.At.Cmp(s.station.At) < 0 && other.At.Cmp(stretch.From) > 0
	})
}

// placeOf is where a section lies: "2.4 before", "0, at B".
func (d answering) placeOf(member int, s section) string {
	m := d.Frame.Members[member]
	side := map[statics.Side]string{statics.Before: " before", statics.After: " after"}[s.station.Side]
	switch {
	case s.station.At.IsZero():
		return "0, at " + d.Frame.Joints[m.From].Name
	case s.station.At.Equal(d.Frame.Length(member)):
		return d.say.InFull(s.station.At) + ", at " + d.Frame.Joints[m.To].Name
	}
	return d.say.InFull(s.station.At) + side
}

// sides are the sides of a member that a positive and a negative M stretch.
func (d answering) sides(member int) (plus, minus string) {
	return d.say.TensionSide(member, exact.Int(1)), d.say.TensionSide(member, exact.Int(-1))
}

// asks reports whether a quantity is asked anywhere along the member.
func (d answering) asks(member int, q statics.Quantity) bool {
	return slices.ContainsFunc(d.items, func(i problems.Item) bool {
		return i.Force == statics.None && i.Member == member && !i.Place && i.Quantity == q
	})
}

// asked says in words what a task asks for.
func (d answering) asked() string {
	var names []string
	for _, a := range d.forces() {
		names = append(names, a.name)
	}
	var clauses []string
	if len(names) > 0 {
		clauses = append(clauses, notation.List(names))
	}
	var along []string
	for _, m := range d.members() {
		along = append(along, d.Frame.Members[m].Name)
	}
	if len(along) > 0 {
		clauses = append(clauses, d.quantities()+" along "+notation.List(along))
	}
	return strings.Join(clauses, "; ")
}

// quantities lists those of N, V and M that are asked anywhere.
func (d answering) quantities() string {
	var letters []string
	for q := range statics.BendingMoment + 1 {
		if slices.ContainsFunc(d.members(), func(m int) bool { return d.asks(m, q) }) {
			letters = append(letters, q.Letter())
		}
	}
	return notation.List(letters)
}
