package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// spread is a distributed load as read: straight from intensity first at distance from to last at until, along its members.
type spread struct {
	first, last exact.Num
	from, until exact.Num
	to          direction
	per         statics.Per
	on          []ref
	inLine      bool // the distances run through all members; otherwise the load covers each of them from end to end
}

// readSpread reads a uniform load or a ramp, and adds a load for each member it is on.
func (l load) readSpread() {
	var s spread
	good := l.intensities(&s)
	if n := l.values["per"]; n != nil {
		s.per = map[string]statics.Per{"length": statics.PerLength, "run": statics.PerRun, "rise": statics.PerRise}[n.text]
	}
	if to := l.values["to"]; to != nil {
		d, ok := l.direction(to, "the direction of a "+kindWords[l.kind], true)
		s.to, good = d, good && ok
	}
	on, ok := l.carriers(l.values["on"])
	if s.on = on; !ok || !l.stretch(&s) || !good || l.values["to"] == nil {
		return
	}
	l.warnNothing(s)
	if s.inLine {
		l.addAlong(s)
		return
	}
	for _, m := range s.on {
		l.addStretch(s, m, exact.Num{}, l.length(m.member), s.first, s.last)
	}
}

// intensities reads the size.
func (l load) intensities(s *spread) bool {
	n := l.values[l.kind]
	switch {
	case n == nil:
		return false
	case l.kind == "ramp":
		pair, ok := l.pair(n, "a ramp", "[0, 12]", notation.Intensity)
		s.first, s.last = pair[0], pair[1]
		for i, item := range n.items[:min(2, len(n.items))] {
			l.note(item, LoadSize, kindWords[l.kind], pair[i])
		}
		return ok
	}
	q, ok := l.number(n, "the size of a uniform load", notation.Intensity)
	s.first, s.last = q, q
	l.note(n, LoadSize, kindWords[l.kind], q)
	return ok
}

// carriers finds the members that a load is on: one, several, or all.
func (l load) carriers(n *node) ([]ref, bool) {
	if n == nil {
		return nil, false
	}
	if n.shape == scalar && n.text == "all" {
		return l.allMembers()
	}
	items := []*node{n}
	if n.shape == list {
		items = n.items
	}
	if len(items) == 0 {
		l.fault(n.at, "on names no member", "Name a member, several in brackets, or all.")
		return nil, false
	}
	good := true
	var on []ref
	taken := map[int]bool{}
	for _, item := range items {
		if !l.shaped(item, "an entry of on", "on: [AB, BC]", scalar) {
			good = false
			continue
		}
		m, ok := l.member(item)
		if good = good && ok && l.sure(m); !ok {
			continue
		}
		if taken[m.member] {
			l.fault(item.at, item.text+" is listed twice", "List each member once.")
			good = false
		}
		taken[m.member] = true
		on = append(on, m)
	}
	return on, good
}

// allMembers is every member, the way it is named in the file.
func (l load) allMembers() ([]ref, bool) {
	var on []ref
	for m, member := range l.frame().Members {
		one := ref{name: member.Name, member: m}
		if !l.sure(one) {
			return nil, false
		}
		on = append(on, one)
	}
	return on, len(on) > 0 && len(l.absent) == 0
}

// stretch reads from and until, and decides whether the load runs through its members in line.
func (l load) stretch(s *spread) bool {
	from, until := l.values["from"], l.values["until"]
	s.inLine = len(s.on) == 1 || l.kind == "ramp" || from != nil || until != nil
	if !s.inLine {
		return true
	}
	along, ok := l.chain(s.on)
	if !ok {
		return false
	}
	s.until = along.length
	fromOK, untilOK := true, true
	if from != nil {
		s.from, fromOK = l.position(from, "from", along)
	}
	if until != nil {
		s.until, untilOK = l.position(until, "until", along)
	}
	if !fromOK || !untilOK {
		return false
	}
	if s.from.Cmp(s.until) >= 0 {
		at := l.node.at
		if n := until; n != nil {
			at = n.at
		} else if from != nil {
			at = from.at
		}
		l.fault(at, fmt.Sprintf("the load ends at %s, which is not after its start at %s", l.lengthText(s.until), l.lengthText(s.from)), "Let until be more than from.")
		return false
	}
	return true
}

// chain is members end to end in one straight line, as one reach.
func (l load) chain(on []ref) (reach, bool) {
	all := l.reachOf(on[0])
	for i, next := range on[1:] {
		before := on[i]
		span := l.span(next)
		_, end := l.endsOf(before)
		start, _ := l.endsOf(next)
		switch {
		case end != start:
			return all, l.broken(fmt.Sprintf("%s ends at %s and %s starts at %s", before.name, l.frame().Joints[end].Name, next.name, l.frame().Joints[start].Name))
		case !all.span.Cross(span).IsZero() || all.span.Dot(span).Sign() < 0:
			return all, l.broken(fmt.Sprintf("%s turns away from the line of %s", next.name, before.name))
		}
		all.length = all.length.Add(l.length(next.member))
		all.span = all.span.Plus(span)
		all.name = on[0].name + " to " + next.name
	}
	return all, true
}

// broken is the fault of members that should lie end to end in one line.
func (l load) broken(how string) bool {
	remedy := "Write a load for each line of members."
	if l.kind == "ramp" {
		remedy = "A ramp needs its members end to end in one straight line: name each in that direction, or write a ramp for each."
	}
	l.fault(l.values["on"].at, how, remedy)
	return false
}

// endsOf is the joints at which a member starts and ends, the way its name runs.
func (r *frameReader) endsOf(m ref) (start, end int) {
	member := r.frame().Members[m.member]
	if m.reversed {
		return member.To, member.From
	}
	return member.From, member.To
}

// addAlong adds to each member the stretch of the load that lies on it.
func (l load) addAlong(s spread) {
	rate := slope(s.last, s.first, s.until, s.from)
	intensity := func(x exact.Num) exact.Num { return s.first.Add(rate.Mul(x.Sub(s.from))) }
	start := exact.Num{}
	for _, m := range s.on {
		end := start.Add(l.length(m.member))
		a, b := larger(start, s.from), smaller(end, s.until)
		if a.Cmp(b) < 0 {
			l.addStretch(s, m, a.Sub(start), b.Sub(start), intensity(a), intensity(b))
		}
		start = end
	}
}

// addStretch adds the load on one member between two distances along its name, turned to the member's own direction.
func (l load) addStretch(s spread, m ref, start, end, first, last exact.Num) {
	if m.reversed {
		length := l.length(m.member)
		start, end = length.Sub(end), length.Sub(start)
		first, last = last, first
	}
	l.add(statics.Load{
		Kind:   statics.SpreadLoad,
		Joint:  statics.None,
		Member: m.member,
		Along:  l.vectorOn(s.to, m),
		Start:  start,
		End:    end,
		First:  first,
		Last:   last,
		Per:    s.per,
	})
}

// warnNothing warns of a distributed load that comes to nothing on all its members.
func (l load) warnNothing(s spread) {
	if s.first.IsZero() && s.last.IsZero() {
		l.nothing("its size is 0")
		return
	}
	if s.per == statics.PerLength {
		return
	}
	lie, word := "vertical", "run"
	if s.per == statics.PerRise {
		lie, word = "horizontal", "rise"
	}
	var names []string
	for _, m := range s.on {
		span := l.span(m)
		if s.per == statics.PerRun && !span.X.IsZero() || s.per == statics.PerRise && !span.Y.IsZero() {
			return
		}
		names = append(names, m.name)
	}
	is := "is"
	if len(names) > 1 {
		is = "are"
	}
	l.nothing(strings.Join([]string{allOf(names), is, lie, "and without", word}, " "))
}

func larger(a, b exact.Num) exact.Num {
	if a.Cmp(b) > 0 {
		return a
	}
	return b
}

func smaller(a, b exact.Num) exact.Num {
	if a.Cmp(b) < 0 {
		return a
	}
	return b
}

// slope is (a − b) ÷ (c − d) for c and d that are known to differ.
func slope(a, b, c, d exact.Num) exact.Num {
	q, err := a.Sub(b).Quo(c.Sub(d))
	if err != nil {
		panic("internal error: the slope of a load without length")
	}
	return q
}
