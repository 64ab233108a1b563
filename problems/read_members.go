package problems

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"unpin/statics"
	"unpin/statics/exact"
)

// parted is a member's name as those of the two joints that it is run together of. A joint's name begins with its only
// capital, so that it comes apart in one way.
func parted(name string) (first, second string, ok bool) {
	at := strings.LastIndexFunc(name, unicode.IsUpper)
	if at <= 0 {
		return "", "", false
	}
	first, second = name[:at], name[at:]
	return first, second, isJointName(first) && isJointName(second)
}

// isMemberName reports whether a word can be the name of a member.
func isMemberName(word string) bool {
	_, _, ok := parted(word)
	return ok
}

// readMembers reads the members and notes what meets at each joint.
func (r *frameReader) readMembers(n *node) {
	r.members, r.absent, r.lengths = map[string]ref{}, map[string]bool{}, map[int]exact.Num{}
	r.meeting = make([][]int, len(r.frame().Joints))
	if n == nil {
		return
	}
	if len(n.items) == 0 {
		r.fault(n.at, "no members are listed", "Write each by its two joints: [AB, BC].")
	}
	if r.tooMany(n, len(n.items), maxMembers, "members") {
		return
	}
	for _, item := range n.items {
		if r.shaped(item, "a member", "members: [AB, BC]", scalar) && !r.readMember(item) {
			r.absent[item.text] = true
			r.absent[turnedRound(item.text)] = true
		}
	}
	r.unreached()
}

// readMember reads one member, and reports whether it is one.
func (r *frameReader) readMember(n *node) bool {
	first, second, named := parted(n.text)
	if !named {
		r.fault(n.at, quoted(n.text)+" is not two joints run together", "Write a member by its two joints, such as AB; joints begin with a capital.")
		return false
	}
	from, to, ok := r.ends(n, first, second)
	if !ok {
		return false
	}
	if from == to {
		r.fault(n.at, fmt.Sprintf("the member %s ends where it starts", n.text), "A member joins two joints.")
		return false
	}
	if twin, taken := r.members[n.text]; taken {
		what := fmt.Sprintf("%s and %s are one member", r.frame().Members[twin.member].Name, n.text)
		if r.frame().Members[twin.member].Name == n.text {
			what = n.text + " stands here a second time"
		}
		r.fault(n.at, what, "List each member once.")
		return true
	}
	m := len(r.frame().Members)
	r.frame().Members = append(r.frame().Members, statics.Member{Name: n.text, From: from, To: to})
	r.members[n.text] = ref{n.text, m, false}
	r.members[turnedRound(n.text)] = ref{turnedRound(n.text), m, true}
	r.meeting[from] = append(r.meeting[from], m)
	r.meeting[to] = append(r.meeting[to], m)
	return true
}

// ends finds the joints of a member's name; each that is unknown is a fault.
func (r *frameReader) ends(n *node, first, second string) (from, to int, ok bool) {
	start, end := *n, *n
	start.text, end.text = first, second
	if n.literal {
		start.at.column += n.quote
		start.at.width = len(first)
		end.at.column += n.quote + len(first)
		end.at.width = len(second)
	}
	from, ok = r.joint(&start)
	if first == second {
		return from, from, ok
	}
	to, found := r.joint(&end)
	return from, to, ok && found
}

// turnedRound is the name of a member with its joints exchanged.
func turnedRound(name string) string {
	first, second, named := parted(name)
	if !named {
		return name
	}
	return second + first
}

// unreached is a fault, at the first, of all joints at which no member ends.
func (r *frameReader) unreached() {
	if len(r.absent) > 0 || len(r.frame().Members) == 0 {
		return // the member that is at fault may have been meant to end there
	}
	var names []string
	var first *node
	for j, members := range r.meeting {
		if len(members) > 0 {
			continue
		}
		if first == nil {
			first = r.jointKeys[j]
		}
		names = append(names, r.frame().Joints[j].Name)
	}
	if first != nil {
		r.fault(first.at, "no member ends at "+oneOf(names), r.unreachedRemedy(r.joints[first.text]))
	}
}

// unreachedRemedy is what would be right where no member ends at joint j: members that pass through it may be meant to.
func (r *frameReader) unreachedRemedy(j int) string {
	var through, halves []string
	for m, member := range r.frame().Members {
		if r.passes(m, j) {
			from, to := r.frame().Joints[member.From].Name, r.frame().Joints[member.To].Name
			through = append(through, member.Name)
			halves = append(halves, from+r.frame().Joints[j].Name, r.frame().Joints[j].Name+to)
		}
	}
	if len(through) == 0 {
		return "Add what is missing under members, or take the joint out."
	}
	return fmt.Sprintf("A member has joints at its two ends only: in place of %s write %s.", allOf(through), allOf(halves))
}

// passes reports whether joint j lies on member m between its ends.
func (r *frameReader) passes(m, j int) bool {
	member := r.frame().Members[m]
	if r.unsure[j] || r.unsure[member.From] || r.unsure[member.To] || j == member.From || j == member.To {
		return false
	}
	at := r.frame().Joints[j].At
	from, to := r.frame().Joints[member.From].At.To(at), r.frame().Joints[member.To].At.To(at)
	return from.Cross(to).IsZero() && from.Dot(to).Sign() < 0
}

// member finds the member that a value names, either way round. One that was at fault where it was listed is no fault
// here again.
func (r *frameReader) member(n *node) (ref, bool) {
	if m, ok := r.members[n.text]; ok || r.absent[n.text] || len(r.members) == 0 {
		return m, ok
	}
	remedy := onlyOnes("member", r.memberNames())
	if !isMemberName(n.text) {
		remedy = "Write a member by its two joints, such as " + r.frame().Members[0].Name + "."
	}
	r.fault(n.at, fmt.Sprintf("there is no member %s", quoted(n.text)), remedy)
	return ref{}, false
}

func (r *frameReader) memberNames() []string {
	var names []string
	for _, m := range r.frame().Members {
		names = append(names, m.Name)
	}
	return names
}

// memberAt finds the member that a value names and that must end at joint j.
func (r *frameReader) memberAt(n *node, j int) (ref, bool) {
	m, ok := r.member(n)
	if ok && !slices.Contains(r.meeting[j], m.member) {
		r.fault(n.at, fmt.Sprintf("%s does not end at %s", n.text, r.frame().Joints[j].Name), r.endingAt(j))
		return m, false
	}
	return m, ok
}

// endingAt says which members end at joint j.
func (r *frameReader) endingAt(j int) string {
	var names []string
	for _, m := range r.meeting[j] {
		names = append(names, r.frame().Members[m].Name)
	}
	return fmt.Sprintf("At %s end %s.", r.frame().Joints[j].Name, allOf(names))
}

// sure reports whether the places of a member's ends are known, so that its length and direction are.
func (r *frameReader) sure(m ref) bool {
	member := r.frame().Members[m.member]
	return !r.unsure[member.From] && !r.unsure[member.To]
}

// length is the length of a member.
func (r *frameReader) length(m int) exact.Num {
	l, known := r.lengths[m]
	if !known {
		l = r.frame().Length(m)
		r.lengths[m] = l
	}
	return l
}

// span is the vector along a member the way its name runs.
func (r *frameReader) span(m ref) statics.Vector {
	v := r.frame().Span(m.member)
	if m.reversed {
		return v.Neg()
	}
	return v
}
