package wording

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/notation"
)

// manyNames is how many names a clause bears.
const manyNames = 4

// turnTo says what is special about the part or pin that is turned to, in sentences; of a pin of which nothing is known
// yet, nothing.
func (r reasons) turnTo(b int) []string {
	body := statics.FreeBody{b}
	known, left := r.knownOn(body), r.left(body)
	name := r.BodyName(b)
	bar := r.bar(b)
	switch {
	case len(known) == 0 && r.a.Bodies() == 1:
		return []string{fmt.Sprintf("The frame is one part, held by %s.", r.holders(b))}
	case len(known) == 0 && r.a.IsPin(b):
		return nil
	case len(known) == 0 && bar != nil:
		return []string{r.twoForce(b, bar)}
	case len(known) == 0:
		return []string{fmt.Sprintf("%s %sis held by %s: %s.", Capital(name), r.carries(b), r.holders(b), r.unknowns(b, len(left), ""))}
	case bar != nil:
		return []string{fmt.Sprintf("%s, the two-force member %s has %s.", r.with(known), r.a.BodyName(b), r.unknowns(b, len(left), " left"))}
	}
	return []string{fmt.Sprintf("%s, %s has %s.", r.with(known), name, r.unknowns(b, len(left), " left"))}
}

// twoForce says what a two-force member is known for.
func (r reasons) twoForce(b int, bar *statics.Bar) string {
	return fmt.Sprintf("%s is a two-force member: it carries no load and is held by pins at %s and %s only, so that the forces there act along the line from %[2]s to %[3]s.",
		Capital(r.BodyName(b)), r.joint(bar.From), r.joint(bar.To))
}

// unknowns counts the unknowns on a body. Where they are as many as its sums, these give them, whatever else is unknown: the
// sums of a frame that has a solution are independent. That alone is a reason to take the body.
func (r reasons) unknowns(b, many int, left string) string {
	sums := 3
	if r.a.IsPin(b) {
		sums = 2
	}
	switch text := fmt.Sprintf("%s unknowns%s", Count(many), left); {
	case many == sums:
		return text + ", which its own sums give"
	case many < sums:
		return "only " + text
	default:
		return text
	}
}

// takeWhole says why the whole frame is taken: no part alone will do, where that is so, and at the pins nothing is cut.
func (r reasons) takeWhole(b statics.FreeBody) []string {
	var all []string
	if r.noneAlone() {
		all = append(all, fmt.Sprintf("No %s alone has a sum with one unknown.", r.onePiece()))
	}
	return append(all, "Take the whole frame"+r.inside(b))
}

// takeSeveral says the same of several parts taken together.
func (r reasons) takeSeveral(b statics.FreeBody) []string {
	var all []string
	if r.noneAlone() && !r.a.HasSumForOne(r.a.Whole(), r.known) {
		all = append(all, fmt.Sprintf("No sum of a single %s or of the whole has only one unknown.", r.onePiece()))
	}
	return append(all, "Take "+Body(r.a, b)+" together"+r.inside(b))
}

// onePiece is what a frame falls into.
func (r reasons) onePiece() string { return either(len(r.a.Pins) == 0, "part", "part or pin") }

// noneAlone reports whether no single part or pin has a sum with one unknown.
func (r reasons) noneAlone() bool {
	for b := range r.a.Bodies() {
		if r.a.HasSumForOne(statics.FreeBody{b}, r.known) {
			return false
		}
	}
	return true
}

// inside names the joints at which the forces are inside a cut round several bodies.
func (r reasons) inside(b statics.FreeBody) string {
	var joints []string
	for _, i := range r.a.ForcesOn(b) {
		name := r.joint(r.a.Forces[i].Joint)
		if sign, _ := r.a.Facing(b, i); sign == 0 && !slices.Contains(joints, name) {
			joints = append(joints, name)
		}
	}
	if len(joints) > manyNames {
		return ": the forces from part to part are inside the cut."
	}
	return fmt.Sprintf(": the forces at %s are inside the cut.", notation.List(joints))
}

// carries says what loads a part carries, where that is worth a word: the only one, all of them, or none.
func (r reasons) carries(b int) string {
	here, entries := 0, map[int]bool{}
	for _, x := range r.a.Actions {
		entries[r.a.Frame.Loads[x.Load].Entry] = true
		if x.Body == b {
			here++
		}
	}
	switch {
	case len(entries) == 0:
		return ""
	case here == 0:
		return "carries no load and "
	case here < len(r.a.Actions):
		return ""
	case len(entries) == 1:
		return "carries the only load and "
	}
	return "carries all the loads and "
}

// holders names what holds a body: "the pinned support at A and the pins at B and C".
func (r reasons) holders(b int) string {
	var kinds []string
	at := map[string][]string{}
	for _, group := range r.meetings(b) {
		f := r.a.Forces[group[0]]
		kind := r.holder(f)
		if !slices.Contains(kinds, kind) {
			kinds = append(kinds, kind)
		}
		joint := f.Joint
		if f.Kind == statics.MemberPull && f.On != b {
			joint = f.Far
		}
		if name := r.joint(joint); !slices.Contains(at[kind], name) {
			at[kind] = append(at[kind], name)
		}
	}
	var all []string
	for _, kind := range kinds {
		all = append(all, "the "+Plural(len(at[kind]), kind)+" at "+notation.List(at[kind]))
	}
	return notation.List(all)
}

// holder is what exerts a force: "roller", "pin".
func (r reasons) holder(f statics.Force) string {
	switch f.Kind {
	case statics.MemberPull:
		return "two-force member"
	case statics.Reaction:
		for _, s := range r.a.Frame.Supports {
			if s.Joint == f.Joint {
				return map[statics.SupportKind]string{statics.Pinned: "pinned support", statics.Fixed: "fixed support",
					statics.Roller: "roller", statics.Guide: "guide"}[s.Kind]
			}
		}
	}
	for _, c := range r.a.Frame.Connections {
		if c.Joint == f.Joint {
			return map[statics.ConnectionKind]string{statics.Pin: "pin", statics.Slot: "slot", statics.Sleeve: "sleeve"}[c.Kind]
		}
	}
	return "pin"
}

// bar is a part as a two-force member, or nil if it is none.
func (r reasons) bar(b int) *statics.Bar {
	bars := r.a.Bars()
	if n := slices.IndexFunc(bars, func(x statics.Bar) bool { return x.Part == b }); n >= 0 {
		return &bars[n]
	}
	return nil
}

// knownOn lists the known forces that act on a free body from outside.
func (r reasons) knownOn(b statics.FreeBody) []int {
	var known []int
	for _, i := range r.a.ForcesOn(b) {
		if sign, _ := r.a.Facing(b, i); sign != 0 && r.known(i) {
			known = append(known, i)
		}
	}
	return known
}

// with begins a sentence that rests on known forces.
func (r reasons) with(known []int) string {
	if len(known) > manyNames {
		return "With the forces known so far"
	}
	return "With " + notation.List(r.names(known)) + " known"
}
