package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// isJointName reports whether a word can be the name of a joint, as jointPattern says it.
func isJointName(word string) bool {
	for i := range len(word) {
		c := word[i]
		small := 'a' <= c && c <= 'z' || '0' <= c && c <= '9' || c == '\''
		if capital := 'A' <= c && c <= 'Z'; capital != (i == 0) || !capital && !small {
			return false
		}
	}
	return word != ""
}

// jointPattern is the name of a joint.
const jointPattern = `^[A-Z][a-z0-9']*$`

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
		if !isJointName(name) {
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

// twoNumbers are two numbers without square brackets around them.
var twoNumbers = notation.Pattern(`^\(?\s*([-+]?[0-9.]+)\s*[,;]?\s+([-+]?[0-9.]+)\s*\)?$`)

// point reads the place of a joint.
func (r *numberReader) point(n *node, name string) (statics.Point, bool) {
	like := "[6, 4]"
	if two := twoNumbers().FindStringSubmatch(n.text); n.shape == scalar && two != nil {
		like = "[" + two[1] + ", " + two[2] + "]"
	}
	if !r.shaped(n, "the place of "+name, name+": "+like, list) {
		return statics.Point{}, false
	}
	p, ok := r.pair(n, "the place of "+name, "[6, 4]", notation.Length)
	if ok {
		r.note(n.items[0], Abscissa, name, p[0])
		r.note(n.items[1], Ordinate, name, p[1])
	}
	return statics.Point{X: p[0], Y: p[1]}, ok
}

// pair reads a list of two numbers.
func (r *numberReader) pair(n *node, what, like string, want notation.Dimension) (pair [2]exact.Num, ok bool) {
	if len(n.items) != 2 {
		problem := fmt.Sprintf("%s is two numbers, not %d", what, len(n.items))
		if meant := n.decimalCommas(); len(meant) == 2 {
			r.fault(n.items[0].upTo(n.items[len(n.items)-1]), problem, fmt.Sprintf("Write decimals with a point: [%s].", strings.Join(meant, ", ")))
		} else {
			r.fault(n.at, problem, "Write both in brackets: "+like)
		}
		return pair, false
	}
	var good [2]bool
	for i, which := range []string{"the first number of ", "the second number of "} {
		pair[i], good[i] = r.number(n.items[i], which+what, want)
	}
	return pair, good[0] && good[1]
}

// decimalCommas are the numbers of a list that has too many, each two that only a comma without a blank parts taken as one
// with a decimal comma. Where blanks do not tell, as in [0,4,5], the comma is taken to stand in the last.
func (n *node) decimalCommas() []string {
	var meant []string
	items := n.items
	joined := func(i int) bool { return i+1 < len(items) && items[i].splitBy(items[i+1]) }
	tight := len(items) == 3 && joined(0) && joined(1)
	for i := 0; i < len(items); i++ {
		if joined(i) && !(tight && i == 0) {
			meant = append(meant, items[i].text+"."+items[i+1].text)
			i++
			continue
		}
		meant = append(meant, items[i].text)
	}
	return meant
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
