package marking

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Scheme says what verdicts and answers are worth.
type Scheme struct {
	Forces   exact.Num              // per cent of a problem
	Diagrams [3]exact.Num           // N, V, M: per cent of a problem
	Verdicts map[string]exact.Num   // what of an answer's points each verdict earns; others earn none
	Once     []string               // verdicts that are charged once a problem
	Round    exact.Num              // the total is rounded to a multiple of it, half up; zero leaves it exact
	Attempts string                 // last, best or first
	Void     []string               // items left out
	Accept   map[string][]exact.Num // values accepted as well
}

// DefaultScheme is what holds where no scheme is given.
func DefaultScheme() *Scheme {
	return &Scheme{
		Forces:   exact.Int(50),
		Diagrams: [3]exact.Num{exact.Int(10), exact.Int(20), exact.Int(20)},
		Verdicts: map[string]exact.Num{"right": exact.Int(1), "rounded": exact.Int(1), "carried": exact.Int(1), "close": half, "sense": half, "unit": half},
		Once:     []string{"sense", "unit"},
		Round:    half,
		Attempts: "last",
	}
}

// weights are what each item is worth, of 1 together; all zero where nothing is.
func (m *Marker) weights(s *Scheme) []exact.Num {
	all := make([]exact.Num, len(m.Items))
	var forces []int
	byMember := [3]map[int][]int{{}, {}, {}}
	for i, item := range m.Items {
		switch {
		case !m.Asked[i] || s.isVoid(item):
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

func (s *Scheme) isVoid(item problems.Item) bool {
	for _, name := range s.Void {
		if notation.NameMatches(name, item.Name) {
			return true
		}
	}
	return false
}

// accepts reports whether a value is accepted beside the true one.
func (s *Scheme) accepts(item problems.Item, value exact.Num) bool {
	for name, all := range s.Accept {
		for _, v := range all {
			if notation.NameMatches(name, item.Name) && v.Equal(value) {
				return true
			}
		}
	}
	return false
}

// DefaultText is the default scheme as a file has it.
const DefaultText = `forces: 50                              # % of a problem
diagrams: {N: 10, V: 20, M: 20}         # by members, then places; what is zero under any load weighs nothing
verdicts: {right: 1, rounded: 1, carried: 1, close: 0.5, sense: 0.5, unit: 0.5}    # others 0
once: [sense, unit]                     # charged once a problem
round: 0.5                              # the total only, half up; points are exact before
attempts: last                          # best, first
void: []                                # items left out
accept: {}                              # {Cx: [6.5]}: values accepted as well
`

// Digest stands for all that a scheme says.
func (s *Scheme) Digest() string {
	sum := sha256.Sum256([]byte(fmt.Sprint(s.Forces, s.Diagrams, s.Verdicts, s.Once, s.Round, s.Attempts, s.Void, s.Accept)))
	return hex.EncodeToString(sum[:6])
}
