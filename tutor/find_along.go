package tutor

import (
	"math/rand/v2"
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/slip"
)

// A cutHunt is N, V and M along one member, worked, with one mistake of the catalogue in the sum of a kept piece. Up to the cut with the mistake
// each value is worked from the piece on the side of the member's start; what comes after, from the stretch since the cut before, so that the wrong
// value is carried on.
type cutHunt struct {
	about *matter
	cutMishap
	rows  []cutRow
	rules choice
}

// A cutMishap is a mistake in one value along a member.
type cutMishap struct {
	diagram statics.Diagram
	item    int // the place of the value among items
	erred   slip.Erred
	kept    []*slip.Slip
}

// A cutRow is one value along a member, as it is worked.
type cutRow struct {
	item    problems.Item
	from    *statics.Station // the cut before, where what is kept is the stretch from there
	a       *statics.Assembly
	sum     statics.Sum // as it should be
	written statics.Sum // as it stands
	values  []exact.Num // of the forces of the assembly, as they stand; that of what is asked for is the last
}

// own is the number of what the row asks for, among the forces of its assembly.
func (r cutRow) own() int { return len(r.values) - 1 }

// stands is the value as the worked solution has it.
func (r cutRow) stands() exact.Num { return r.values[r.own()] }

// itemsOf lists the values along a member that are worked: those asked for in a lesson, but for places that have to be found, which would be others
// with the mistake.
func itemsOf(s *statics.Solution, d statics.Diagram) []problems.Item {
	return slices.DeleteFunc(problems.SectionItems(s, d), func(x problems.Item) bool { return x.Place || x.Station.Found })
}

// isAlong reports whether a skill is one of N, V and M.
func isAlong(skill string) bool {
	return slices.ContainsFunc(problems.SlipsOf(skill), func(id string) bool { return slip.ByID(id).Group == slip.Internal })
}

// findAlong is N, V and M along a member with a mistake in them that shows a skill to be wanting; nil where the problem allows none.
func findAlong(m *matter, skill string, pick *rand.Rand) *Drill {
	all := cutMishapsIn(m, skill)
	pick.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	var met []string // one mistake is as likely as another, though some can be made in many places
	for _, x := range all {
		if !slices.Contains(met, x.erred.Slip.ID) {
			met = append(met, x.erred.Slip.ID)
		}
	}
	slices.Sort(met)
	pick.Shuffle(len(met), func(i, j int) { met[i], met[j] = met[j], met[i] })
	slices.SortStableFunc(all, func(a, b cutMishap) int {
		return slices.Index(met, a.erred.Slip.ID) - slices.Index(met, b.erred.Slip.ID)
	})
	for _, x := range all {
		h := newCutHunt(m, x)
		if _, wrong := h.written(); wrong > 0 {
			h.rules = chooseRule(h.erred.Slip, h.kept, pick)
			return h.drill()
		}
	}
	return nil
}

// cutMishapsIn lists the mistakes that the sums along the members allow, that can be told from others and show a skill to be wanting, or any where
// none is named. Where V is positive the other way round, the sums would need the other signs, and there is none.
func cutMishapsIn(m *matter, skill string) []cutMishap {
	var all []cutMishap
	if m.turnedShear() {
		return nil
	}
	for _, d := range m.solution.Diagrams {
		if d.Withheld {
			continue
		}
		for i, item := range itemsOf(m.solution, d) {
			c := m.section(sectionQuestion(item), m.solution.Values)
			ways, other := c.Erred(), c.Candidates()
			for _, e := range ways {
				if s := problems.SkillOfSlip(e.Slip.ID); s != skill && skill != "" || noRule(e.Slip) || oddlyWritten(m, e) {
					continue
				}
				if kept := keptRules(e, ways, other); len(kept) >= leastRules {
					all = append(all, cutMishap{d, i, e, kept})
				}
			}
		}
	}
	return all
}

// newCutHunt works the values along the member, with the mistake and what is carried on from it.
func newCutHunt(m *matter, x cutMishap) *cutHunt {
	h := &cutHunt{about: m, cutMishap: x}
	items := itemsOf(m.solution, x.diagram)
	wrong := items[x.item].Station
	var now [3]exact.Num // N, V and M at the last cut, as they stand
	last, at := statics.Station{}, items[0].Station
	for i, item := range items {
		if !sameCut(item.Station, at) {
			last, at = at, item.Station
		}
		var r cutRow
		if cutBefore(wrong, item.Station) {
			r = h.carried(item, last, now)
		} else {
			r = h.fromStart(item)
		}
		if i == x.item {
			r.written, r.values[r.own()] = x.erred.Sum, x.erred.Value
		}
		h.rows = append(h.rows, r)
		now[item.Quantity] = r.stands()
	}
	return h
}

// sameCut and cutBefore tell how two cuts along a member lie.
func sameCut(a, b statics.Station) bool { return a.At.Equal(b.At) && a.Side == b.Side }

func cutBefore(a, b statics.Station) bool {
	order := a.At.Cmp(b.At)
	return order < 0 || order == 0 && a.Side == statics.Before && b.Side != statics.Before
}

// fromStart is a value by the sum of the piece on the side of the member's start.
func (h *cutHunt) fromStart(item problems.Item) cutRow {
	a, s := h.about.section(sectionQuestion(item), h.about.solution.Values).Sum()
	return cutRow{item: item, a: a, sum: s, written: s, values: append(h.forces(), item.Value)}
}

// carried is a value by the sum of the stretch since the last cut, with N, V and M there as they stand.
func (h *cutHunt) carried(item problems.Item, last statics.Station, now [3]exact.Num) cutRow {
	k := statics.Kept{Solution: h.about.solution.Full(), Member: item.Member, At: item.Station, Side: statics.Between, Other: last}
	a, s := k.Sum(item.Quantity)
	r := cutRow{item: item, from: &last, a: a, sum: s, written: s, values: append(h.forces(), now[0], now[1], now[2], exact.Num{})}
	value, _ := s.Residual(r.values).Neg().Quo(s.Factor(r.own()))
	r.values[r.own()] = value
	return r
}

// forces are the values of all forces.
func (h *cutHunt) forces() []exact.Num {
	return slices.Clone(h.about.solution.FullValues(h.about.solution.Values))
}
