package marking

import (
	"maps"
	"slices"
	"sync"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Scheme says what verdicts and answers are worth.
type Scheme problems.Scheme

// DefaultScheme is what holds where no scheme is given.
var DefaultScheme = sync.OnceValue(func() *Scheme {
	s, err := problems.ReadScheme("", nil)
	if err != nil {
		panic("internal error: the scheme that holds by default cannot be read: " + err.Error())
	}
	return (*Scheme)(s)
})

// weights are what each item is worth, of 1 together; all zero where nothing is.
func (m *Marker) weights(s *Scheme) []exact.Num {
	all := make([]exact.Num, len(m.Items))
	var forces []int
	byMember := [3]map[int][]int{{}, {}, {}}
	for i, item := range m.Items {
		switch {
		case !m.Asked[i] || (*problems.Scheme)(s).IsVoid(item):
		case item.Force != statics.None:
			forces = append(forces, i)
		case !m.weighsNothing(i):
			byMember[item.Quantity][item.Member] = append(byMember[item.Quantity][item.Member], i)
		}
	}
	total := exact.Num{}
	spread := func(items []int, share exact.Num) {
		each, err := share.Quo(exact.Int(int64(len(items))))
		if err != nil {
			return
		}
		total = total.Add(share)
		for _, i := range items {
			all[i] = each
		}
	}
	spread(forces, s.Forces)
	for q, members := range byMember {
		share, err := s.Diagrams[q].Quo(exact.Int(int64(len(members))))
		if err != nil {
			continue
		}
		for _, items := range members {
			spread(items, share)
		}
	}
	for i := range all {
		if w, err := all[i].Quo(total); err == nil {
			all[i] = w
		}
	}
	return all
}

// Weights are what each item that is asked for is worth, of 1 together, in the order of Items; all zero where nothing is.
func (m *Marker) Weights(s *Scheme) []exact.Num {
	all := m.weights(s)
	var asked []exact.Num
	for i, w := range all {
		if m.Asked[i] {
			asked = append(asked, w)
		}
	}
	return asked
}

// weighsNothing reports whether an item is zero under any load, or one of a diagram that is zero throughout.
func (m *Marker) weighsNothing(i int) bool {
	item := m.Items[i]
	if m.empty[i] {
		return true
	}
	for _, p := range m.Diagrams[item.Member].Stretches {
		for _, k := range [...]exact.Poly{p.N, p.V, p.M}[item.Quantity] {
			if !k.IsZero() {
				return false
			}
		}
	}
	return true
}

// accepts reports whether a value is accepted beside the true one.
func (s *Scheme) accepts(item problems.Item, value exact.Num) bool {
	return slices.ContainsFunc((*problems.Scheme)(s).AcceptedFor(item), value.Equal)
}

// Unknown lists the names that a scheme leaves out or accepts values for, and that nothing has of what is held against these markers.
func (s *Scheme) Unknown(all []*Marker) []string {
	var unknown []string
	for _, name := range slices.Concat(s.Void, slices.Sorted(maps.Keys(s.Accept))) {
		known := slices.ContainsFunc(all, func(m *Marker) bool {
			return slices.ContainsFunc(m.Items, func(i problems.Item) bool { return notation.NameMatches(name, i.Name) })
		})
		if _, _, part := partOf(name); !known && !(part && slices.Contains(s.Void, name)) {
			unknown = append(unknown, name)
		}
	}
	return unknown
}
