package statics

import (
	"slices"
)

// rows writes ΣFx, ΣFy and, for a part, ΣM of every body. The unknowns are the multipliers of the unscaled directions,
// so that the coefficients are rational wherever the directions are.
func (a *Assembly) rows() (rows []row, inexact bool) {
	rows = make([]row, 3*len(a.Parts)+2*len(a.Pins))
	room := make([]entry, 6*len(a.Forces)) // for three sums of each of two bodies
	rest := rows
	for b := range a.Bodies() {
		n, on := 3, len(a.forcesOn[b])
		if a.IsPin(b) {
			n = 2
		}
		for k := range rest[:n] {
			rest[k].entries, room = room[:0:on], room[on:]
		}
		a.writeRows(b, rest[:n])
		rest = rest[n:]
	}
	for _, r := range rows {
		inexact = inexact || slices.ContainsFunc(r.entries, func(e entry) bool { return e.k.Inexact() })
	}
	return rows, inexact
}

// writeRows writes the rows of body b.
func (a *Assembly) writeRows(b int, of []row) {
	on := a.forcesOn[b]
	centre := &a.Frame.Joints[a.reference(b)].At
	for _, i := range on {
		f := &a.Forces[i]
		unit := f.effect(centre.To(a.Frame.Joints[f.Joint].At))
		for k, c := range unit[:len(of)] {
			if c.IsZero() {
				continue
			}
			if f.On != b {
				c = c.Neg()
			}
			of[k].entries = append(of[k].entries, entry{i, c})
		}
	}
	for _, i := range a.actionsOn[b] {
		whole := a.Actions[i].effect(*centre)
		for k, c := range whole[:len(of)] {
			of[k].rhs = of[k].rhs.Sub(c)
		}
	}
}

// reference is the joint about which rows takes the moments of body b: where most of its unknowns act, so that few of
// them turn it.
func (a *Assembly) reference(b int) int {
	best, most := a.joint(b), 0
	on := a.forcesOn[b]
	for n, i := range on { // those at one joint stand together (S3)
		if n > 0 && a.Forces[on[n-1]].Joint == a.Forces[i].Joint {
			continue
		}
		at := n
		for at < len(on) && a.Forces[on[at]].Joint == a.Forces[i].Joint {
			at++
		}
		if at-n > most {
			best, most = a.Forces[i].Joint, at-n
		}
	}
	return best
}

// transposed swaps rows and columns; the right sides are dropped.
func transposed(rows []row, columns int) []row {
	t := make([]row, columns)
	for i, r := range rows {
		for _, e := range r.entries {
			t[e.col].entries = append(t[e.col].entries, entry{i, e.k})
		}
	}
	return t
}
