package wording

import (
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Mistaken is a sum that is not the true one, as the student would write it who made it so: like Numbers, but that what differs in a
// term is written out. The size of a distributed load that is not its own stands as one number, a couple has its arm if it was given
// one, and a force that lost its arm has none.
func (w sums) Mistaken(s, truth statics.Sum, known func(force int) (exact.Num, bool)) string {
	var b strings.Builder
	for _, t := range inWrittenOrder(s) {
		w.add(&b, (t.Sign < 0) != w.reversed(s), w.mistaken(s, truth, t, known))
	}
	if b.Len() == 0 {
		b.WriteString("0")
	}
	return b.String() + w.equals() + "0"
}

// inWrittenOrder lists the terms of a sum that count: as everywhere forces first, then loads.
func inWrittenOrder(s statics.Sum) []statics.Term {
	var forces, loads []statics.Term
	for _, t := range s.Terms() {
		switch {
		case t.Why != statics.Counts || t.Sign == 0:
		case t.Force != statics.None:
			forces = append(forces, t)
		default:
			loads = append(loads, t)
		}
	}
	return slices.Concat(forces, loads)
}

// mistaken writes one term of such a sum.
func (w sums) mistaken(s, truth statics.Sum, t statics.Term, known func(int) (exact.Num, bool)) string {
	if slices.ContainsFunc(truth.Terms(), t.Same) {
		return w.product(s, t, known)
	}
	all := loadFactors(w.a, t)
	switch {
	case t.Force != statics.None:
		all = forceFactors(w.a, t, known)
	case t.What == statics.TurnOnly:
		all = []sumFactor{{n: t.Size, d: notation.Moment}}
	case w.a.Actions[t.Action].Shape.Spread() && t.What == statics.WholeForce && !ofOwnSize(w.a.Actions[t.Action], t, s):
		all = []sumFactor{{n: t.Size, d: notation.Force}}
	}
	if !t.Arm.Equal(one) {
		all = append(all, sumFactor{n: t.Arm, d: notation.Length})
	}
	return w.factors(all, w.inFull(all))
}

// ofOwnSize reports whether a term is of the whole of a load, or in a sum of forces of its component along the sum.
func ofOwnSize(x statics.Action, t statics.Term, s statics.Sum) bool {
	share := shareOf(x, t)
	if s.Moment || share.Equal(one) {
		return share.Equal(one)
	}
	dot := t.Toward.Dot(s.Along)
	return share.Square().Mul(t.Toward.Dot(t.Toward)).Mul(s.Along.Dot(s.Along)).Equal(dot.Square())
}
