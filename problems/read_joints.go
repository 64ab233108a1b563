package problems

import (
	"fmt"
	"regexp"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Names of joints, and of members, which are two of them run together. A joint's name begins with its only capital, so
// a member's name comes apart in one way.
var (
	jointName  = regexp.MustCompile(`^[A-Z][a-z0-9']*$`)
	memberName = regexp.MustCompile(`^([A-Z][a-z0-9']*)([A-Z][a-z0-9']*)$`)
)

// A frameReader reads joints and members, and what is measured along them.
type frameReader struct {
	*numberReader
	joints    map[string]int  // by name
	jointKeys []*node         // where each is listed
	unsure    map[int]bool    // joints whose place is at fault
	members   map[string]ref  // by name, both ways round
	absent    map[string]bool // member names at fault in the list of members
	meeting   [][]int         // members at each joint
	lengths   map[int]exact.Num
}

// readJoints reads the joints and their places.
func (r *frameReader) readJoints(n *node) {
	r.joints, r.unsure = map[string]int{}, map[int]bool{}
	if n == nil {
		return
	}
	if len(n.entries) == 0 {
		r.fault(n.at, "no joints are listed", "Write each with its place: {A: [0, 0], B: [4, 0]}.")
	}
	if r.tooMany(n, len(n.entries), maxJoints, "joints") {
		return
	}
	places := map[string]string{}
	for _, e := range n.entries {
		name := e.key.text
		if !jointName.MatchString(name) {
			r.fault(e.key.at, quoted(name)+" cannot be the name of a joint", "A name is a capital letter, then small letters, digits or ': C, S1, B'.")
			continue
		}
		j := len(r.frame().Joints)
		r.joints[name] = j
		r.jointKeys = append(r.jointKeys, e.key)
		at, ok := r.point(e.value, name)
		r.unsure[j] = !ok
		r.frame().Joints = append(r.frame().Joints, statics.Joint{Name: name, At: at})
		if !ok {
			continue
		}
		place := at.X.String() + ", " + at.Y.String()
		if other, taken := places[place]; taken {
			r.fault(e.key.at, fmt.Sprintf("%s stands where %s is", name, other), "Give each joint a place of its own, or use one name for both.")
			continue
		}
		places[place] = name
	}
}

// tooMany is a fault if there are more than a file may have.
func (r *shapeReader) tooMany(n *node, count, most int, what string) bool {
	if count <= most {
		return false
	}
	r.fault(n.at, fmt.Sprintf("there are %d %s", count, what), fmt.Sprintf("At most %d are read.", most))
	return true
}

// point reads the place of a joint.
func (r *numberReader) point(n *node, name string) (statics.Point, bool) {
	if !r.shaped(n, "the place of "+name, name+": [6, 4]", list) {
		return statics.Point{}, false
	}
	p, ok := r.pair(n, "the place of "+name, "[6, 4]", notation.Length)
	return statics.Point{X: p[0], Y: p[1]}, ok
}

// pair reads a list of two numbers.
func (r *numberReader) pair(n *node, what, like string, want notation.Dimension) (pair [2]exact.Num, ok bool) {
	if len(n.items) != 2 {
		r.fault(n.at, fmt.Sprintf("%s is two numbers, not %d", what, len(n.items)), "Write both in brackets: "+like)
		return pair, false
	}
	var good [2]bool
	for i, which := range []string{"the first number of ", "the second number of "} {
		pair[i], good[i] = r.number(n.items[i], which+what, want)
	}
	return pair, good[0] && good[1]
}

// joint finds the joint that a value names. If the joints could not be read at all, an unknown one is no fault.
func (r *frameReader) joint(n *node) (int, bool) {
	j, ok := r.joints[n.text]
	if !ok && len(r.joints) > 0 {
		names := r.jointNames()
		r.fault(n.at, fmt.Sprintf("there is no joint %s", quoted(n.text)), onlyOnes("joint", names))
	}
	return j, ok
}

func (r *frameReader) jointNames() []string {
	var names []string
	for _, j := range r.frame().Joints {
		names = append(names, j.Name)
	}
	return names
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
	ends := memberName.FindStringSubmatch(n.text)
	if ends == nil {
		r.fault(n.at, quoted(n.text)+" is not two joints run together", "Write a member by its two joints, such as AB; joints begin with a capital.")
		return false
	}
	from, to, ok := r.ends(n, ends)
	if !ok {
		return false
	}
	if from == to {
		r.fault(n.at, fmt.Sprintf("the member %s ends where it starts", n.text), "A member joins two joints.")
		return false
	}
	if twin, taken := r.members[n.text]; taken {
		r.fault(n.at, fmt.Sprintf("%s and %s are one member", r.frame().Members[twin.member].Name, n.text), "List each member once.")
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
func (r *frameReader) ends(n *node, ends []string) (from, to int, ok bool) {
	first, second := *n, *n
	first.text, second.text = ends[1], ends[2]
	if n.literal {
		first.at.column += n.quote
		first.at.width = len(ends[1])
		second.at.column += n.quote + len(ends[1])
		second.at.width = len(ends[2])
	}
	from, ok = r.joint(&first)
	if ends[1] == ends[2] {
		return from, from, ok
	}
	to, found := r.joint(&second)
	return from, to, ok && found
}

// turnedRound is the name of a member with its joints exchanged.
func turnedRound(name string) string {
	ends := memberName.FindStringSubmatch(name)
	if ends == nil {
		return name
	}
	return ends[2] + ends[1]
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
	if joints := memberName.FindStringSubmatch(n.text); joints == nil {
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
