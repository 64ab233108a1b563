package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// A loadReader reads loads, one after the other.
type loadReader struct{ *pinReader }

// loads reads the loads, in file order.
func (r loadReader) loads(n *node) {
	if n == nil || r.tooMany(n, len(n.items), maxLoads, "loads") {
		return
	}
	for _, item := range n.items {
		if !r.shaped(item, "a load", "{point: 30, to: down, on: AB, at: 2.4}", table) {
			continue
		}
		kind := r.loadKind(item)
		if kind == "" {
			continue
		}
		values := r.fields(item, "a "+kindWords[kind], loadFields[kind])
		r.problem.Entries = append(r.problem.Entries, entryOf(kind, values))
		l := load{pinReader: r.pinReader, node: item, kind: kind, values: values}
		switch kind {
		case "point", "couple":
			l.readPoint()
		case "pulley":
			l.readPulley()
		default:
			l.readSpread()
		}
		if len(r.frame().Loads) > maxLoads {
			r.fault(n.at, fmt.Sprintf("the loads on single members are more than %d", maxLoads), "Count each load once for every member it is on.")
			return
		}
	}
}

// kindWords name a load in a sentence.
var kindWords = map[string]string{"point": "point load", "couple": "couple", "uniform": "uniform load", "ramp": "ramp", "pulley": "pulley"}

// loadKind is the kind of a load, which is the one of its fields that gives the size, or the pulley's joint. Where that is misspelt, its key is
// put right, so that the rest of the load is read too.
func (r loadReader) loadKind(n *node) string {
	var kinds []string
	for _, e := range n.entries {
		if _, ok := loadFields[e.key.text]; ok {
			kinds = append(kinds, e.key.text)
		}
	}
	switch len(kinds) {
	case 1:
		return kinds[0]
	case 0:
		return r.meantKind(n)
	}
	r.fault(n.at, "this is several loads in one: "+allOf(kinds), "Write each as an entry of its own.")
	return ""
}

// meantKind is the kind that a misspelt field of a load most likely stands for, or "".
func (r loadReader) meantKind(n *node) string {
	for _, e := range n.entries {
		key := e.key.text
		if word, value, parted := strings.Cut(key, " "); parted && slices.Contains(loadKinds, word) {
			r.fault(e.key.at, fmt.Sprintf("a load has no field %s", quoted(key)), fmt.Sprintf("A colon is missing: write %s: %s", word, strings.TrimSpace(value)))
			return ""
		}
		meant := kindSlips[key]
		if meant == "" && !placeField(key) {
			meant = near(key, loadKinds)
		}
		if meant != "" {
			r.fault(e.key.at, fmt.Sprintf("a load has no field %s", quoted(key)), fmt.Sprintf("Did you mean %s?", meant))
			e.key.text = meant
			return meant
		}
	}
	for _, e := range n.entries {
		if e.key.text == "rope" {
			r.fault(e.key.at, "a rope needs the pulley it runs over", "Add pulley: and the joint on which it stands.")
			return ""
		}
	}
	r.fault(n.at, "this load does not say what it is", "Write one of "+oneOf(loadKinds[:len(loadKinds)-1])+" with its size, or pulley with its joint.")
	return ""
}

// placeField reports whether a field says where or which way a load acts.
func placeField(name string) bool {
	_, point := loadFields["point"].find(name)
	_, spread := loadFields["uniform"].find(name)
	_, pulley := loadFields["pulley"].find(name)
	return point || spread || pulley
}

// entryOf is the load as written.
func entryOf(kind string, values map[string]*node) wording.Entry {
	text := func(name string) string {
		if n := values[name]; n != nil {
			return n.text
		}
		return ""
	}
	e := wording.Entry{Kind: kind, To: text("to"), Joint: text("joint"), At: text("at"), From: text("from"), Until: text("until"), Per: text("per")}
	e.Size = words(values[kind])
	e.On = words(values["on"])
	if turn, ok := notation.ReadMomentTurn(e.To); ok && kind == "couple" {
		e.To = turn.String()
	}
	if to := values["to"]; to != nil && to.shape == list {
		e.To = pairText(to)
	}
	if kind == "pulley" {
		e.Size, e.To, e.Joint, e.Radius = words(values["rope"]), endsText(values["to"]), text("pulley"), text("radius")
	}
	if e.Per == "" && (kind == "uniform" || kind == "ramp") {
		e.Per = "length"
	}
	return e
}

// words is the text of a value, or the texts of a list.
func words(n *node) []string {
	switch {
	case n == nil:
		return nil
	case n.shape == list:
		return texts(n.items)
	}
	return []string{n.text}
}

// load is the work of reading one load.
type load struct {
	*pinReader
	node   *node
	kind   string
	values map[string]*node
}

// add adds loads to the frame; they share the entry read last.
func (l load) add(x statics.Load) {
	x.Entry = len(l.problem.Entries) - 1
	l.frame().Loads = append(l.frame().Loads, x)
}

// nothing warns that a load comes to nothing.
func (l load) nothing(why string) {
	l.warn("The %s on line %d comes to nothing: %s.", kindWords[l.kind], l.node.at.line, why)
}

// readPoint reads a point load or a couple.
func (l load) readPoint() {
	x := statics.Load{Kind: statics.PointLoad, Joint: statics.None, Member: statics.None}
	want := notation.Force
	if l.kind == "couple" {
		x.Kind, want = statics.CoupleLoad, notation.Moment
	}
	good := l.values[l.kind] != nil && l.values["to"] != nil
	if n := l.values[l.kind]; n != nil {
		size, ok := l.number(n, "the size of a "+kindWords[l.kind], want)
		x.Size, good = size, good && ok
		l.note(n, LoadSize, kindWords[l.kind], size)
	}
	on, ok := l.place(&x)
	good = good && ok
	if to := l.values["to"]; to != nil && x.Kind == statics.CoupleLoad {
		turn, _ := notation.ReadMomentTurn(to.text)
		x.Size = turn.Value(x.Size)
	} else if to != nil {
		d, ok := l.direction(to, "the direction of a point load", l.values["on"] != nil)
		if good = good && ok; good {
			x.Along = l.vectorOn(d, on)
		}
	}
	if !good {
		return
	}
	if x.Size.IsZero() {
		l.nothing("its size is 0")
	}
	l.add(x)
}

// place finds where a point load or couple acts: at a joint, or on a member. The member named comes back, if one is.
func (l load) place(x *statics.Load) (on ref, ok bool) {
	joint, at, member := l.values["joint"], l.values["at"], l.values["on"]
	switch {
	case joint != nil && at != nil:
		l.fault(at.at, "at and joint both say where the load acts", "Keep one of the two.")
	case joint != nil:
		return l.atJoint(x, joint, member)
	case member != nil && at != nil:
		return l.onMember(x, member, at)
	case member != nil && !l.written("at") && !l.written("joint"):
		l.fault(member.at, fmt.Sprintf("where on %s the load acts is not said", member.text), "Add at: and the distance along it.")
	case at != nil && !l.written("on"):
		l.fault(at.at, "at is a distance along a member, and no member is named", "Add on: and the member.")
	case !l.written("on") && !l.written("at") && !l.written("joint"):
		l.fault(l.node.at, "where the load acts is not said", "Add joint: with a joint, or on: with a member and at: with a distance.")
	}
	if joint != nil {
		_, _ = l.joint(joint)
	}
	if member != nil {
		_, _ = l.member(member)
	}
	return ref{}, false
}

// written reports whether the load has a field, be its value good or not.
func (l load) written(name string) bool {
	for _, e := range l.node.entries {
		if f, ok := loadFields[l.kind].find(e.key.text); ok && f.name == name || !ok && loadFields[l.kind].meant(e.key.text) == name {
			return true
		}
	}
	return false
}

// atJoint places a load at a joint, on the member named or on the joint itself.
func (l load) atJoint(x *statics.Load, joint, member *node) (on ref, ok bool) {
	j, ok := l.joint(joint)
	if !ok {
		if member != nil {
			_, _ = l.member(member)
		}
		return on, false
	}
	x.Joint = j
	if member != nil {
		if on, ok = l.memberAt(member, j); !ok || !l.sure(on) {
			return on, false
		}
		x.Member = on.member
		return on, true
	}
	if c := l.connectionAt(j); c != nil && c.Kind == statics.Pin && x.Kind == statics.CoupleLoad {
		l.fault(joint.at, fmt.Sprintf("%s is a pin, and a pin carries no couple", joint.text), "Say which member carries it: on: "+l.frame().Members[l.meeting[j][0]].Name+".")
		return on, false
	}
	return on, true
}

// onMember places a load at a distance along a member.
func (l load) onMember(x *statics.Load, member, at *node) (on ref, ok bool) {
	on, ok = l.member(member)
	if !ok || !l.sure(on) {
		return on, false
	}
	d, ok := l.position(at, "at", l.reachOf(on))
	if on.reversed {
		d = l.length(on.member).Sub(d)
	}
	x.Member, x.At = on.member, d
	return on, ok
}
