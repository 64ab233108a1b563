package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// piece reads members at joint j that are joined, some perhaps as a walk; taken are those listed before.
func (r *pinReader) piece(items []*node, j int, taken map[int]bool) ([]int, bool) {
	good := true
	var members []int
	for _, item := range r.stepwise(items, j, &good) {
		m, ok := r.memberAt(item, j)
		switch {
		case !ok:
			good = false
		case taken[m.member]:
			r.fault(item.at, item.text+" is listed twice at "+r.frame().Joints[j].Name, "List each member once.")
			good = false
		default:
			taken[m.member] = true
			members = append(members, m.member)
		}
	}
	slices.Sort(members)
	return members, good
}

// walkName is the name of a walk: a joint, the one in the middle, and another, run together.
var walkName = notation.Pattern(`^([A-Z][a-z0-9']*)([A-Z][a-z0-9']*)([A-Z][a-z0-9']*)$`)

// stepwise is the items with each walk through joint j taken apart into its two members. What is no walk there, and no
// single name, is a fault and makes good false.
func (r *pinReader) stepwise(items []*node, j int, good *bool) []*node {
	var members []*node
	for _, item := range items {
		if !r.shaped(item, "a member of a piece", "C: [[AC, CE]]", scalar) {
			*good = false
			continue
		}
		walk := walkName().FindStringSubmatch(item.text)
		if walk == nil {
			if r.longWalk(item, j) {
				*good = false
			} else {
				members = append(members, item)
			}
			continue
		}
		first, second, ok := r.walk(item, walk, j)
		if *good = *good && ok; ok {
			members = append(members, first, second)
		}
	}
	return members
}

// aJoint is the name of a joint within a walk.
var aJoint = notation.Pattern(`[A-Z][a-z0-9']*`)

// longWalk finds a walk through joint j at fault that goes on beyond the joints next to it, as a whole bar: only the piece at the
// pin is meant.
func (r *pinReader) longWalk(n *node, j int) bool {
	if _, there := r.members[n.text]; there {
		return false
	}
	names := aJoint().FindAllString(n.text, -1)
	middle := r.frame().Joints[j].Name
	at := slices.Index(names, middle)
	if len(names) < 4 || at < 1 || at == len(names)-1 || strings.Join(names, "") != n.text {
		return false
	}
	before, after := names[at-1], names[at+1]
	r.fault(n.at, fmt.Sprintf("%s goes on beyond the joints next to %s", n.text, middle),
		fmt.Sprintf("Name the piece next to the pin alone: %[1]s%[2]s%[3]s, which is %[1]s%[2]s and %[2]s%[3]s.", before, middle, after))
	return true
}

// walk takes a walk through joint j apart; both members must be there.
func (r *pinReader) walk(n *node, names []string, j int) (first, second *node, ok bool) {
	if middle := r.frame().Joints[j].Name; names[2] != middle {
		r.fault(n.at, fmt.Sprintf("%s does not walk through %s", n.text, middle), fmt.Sprintf("Write the joint %[1]s in the middle, as in A%[1]sB, which stands for A%[1]s and %[1]sB.", middle))
		return nil, nil, false
	}
	first, second = r.part(n, names[1]+names[2], 0), r.part(n, names[2]+names[3], len(names[1]))
	var missing []string
	for _, m := range []*node{first, second} {
		if _, there := r.members[m.text]; !there && !r.absent[m.text] {
			missing = append(missing, m.text)
		}
	}
	if len(missing) == 0 || len(r.members) == 0 {
		return first, second, true
	}
	remedy := onlyOnes("member", r.memberNames())
	if _, there := r.members[names[1]+names[3]]; there {
		remedy = fmt.Sprintf("Write %s and %s in place of %s%s under members.", first.text, second.text, names[1], names[3])
	}
	r.fault(n.at, fmt.Sprintf("%s stands for the members %s and %s, and there is no member %s", n.text, first.text, second.text, oneOf(missing)), remedy)
	return nil, nil, false
}

// part is a stretch of a value's text as a value of its own.
func (r *shapeReader) part(n *node, text string, from int) *node {
	p := *n
	p.text = text
	if n.literal {
		p.at.column += n.quote + from
		p.at.width, p.quote = len(text), 0
	}
	return &p
}
