package problems

import (
	"fmt"

	"unpin/statics"
)

// A supportReader reads what holds the frame.
type supportReader struct{ *pinReader }

// supports reads what holds the frame.
func (r supportReader) supports(n *node) {
	if n == nil {
		return
	}
	for _, e := range n.entries {
		j, ok := r.joint(e.key)
		if !r.shaped(e.value, "the support at "+e.key.text, e.key.text+": pin", scalar, table) {
			continue
		}
		s, read := r.support(e.value, j, ok)
		if !ok || !read || !r.holds(e, s) {
			continue
		}
		r.frame().Supports = append(r.frame().Supports, s)
	}
}

// support reads the support at joint j; known is false if there is no such joint.
func (r supportReader) support(n *node, j int, known bool) (statics.Support, bool) {
	s := statics.Support{Joint: j, On: statics.None}
	if n.shape == table {
		return r.supportFields(n, s, known)
	}
	switch n.text {
	case "pin":
		return s, true
	case "fixed":
		s.Kind = statics.Fixed
		return s, true
	case "roller", "guide":
		r.fault(n.at, fmt.Sprintf("a %s needs the direction of its force", n.text), fmt.Sprintf("Write {%s: up}, or another direction.", n.text))
		return s, false
	}
	if word := meant(n.text, supportKinds); word != "" {
		r.fault(n.at, quoted(n.text)+" is no kind of support", fmt.Sprintf("Did you mean %s?", word))
	} else {
		r.fault(n.at, quoted(n.text)+" is no kind of support", "Write "+oneOf(supportWords)+", {roller: up} or {guide: up}.")
	}
	return s, false
}

// supportFields reads a support that has fields: one of the kinds, and for a roller or guide the member it holds.
func (r supportReader) supportFields(n *node, s statics.Support, known bool) (statics.Support, bool) {
	before := len(r.faults.List)
	values := r.fields(n, "a support", supportFields)
	kinds := stated(values, supportKinds)
	if len(kinds) != 1 {
		if len(r.faults.List) == before {
			r.fault(n.at, "a support is one of pin, fixed, roller and guide", "Write {roller: up}, {guide: right}, {pin: AB} or {fixed: AB}.")
		}
		return s, false
	}
	kind, on := kinds[0], values["on"]
	value := values[kind]
	if kind == "pin" || kind == "fixed" {
		if on != nil {
			r.fault(on.at, fmt.Sprintf("on: goes with a roller or guide; here the member stands after %s:", kind), fmt.Sprintf("Write {%s: %s}.", kind, on.text))
			return s, false
		}
		on = value
	}
	s.Kind = map[string]statics.SupportKind{"pin": statics.Pinned, "fixed": statics.Fixed, "roller": statics.Roller, "guide": statics.Guide}[kind]
	held, ok := r.heldMember(on, s.Joint, known)
	if ok && on != nil {
		s.On = held.member
	}
	if kind == "roller" || kind == "guide" {
		d, good := r.direction(value, "the direction of a "+kind, on != nil)
		if ok = ok && good; ok {
			s.Along = r.vectorOn(d, held)
		}
	}
	return s, ok
}

// heldMember finds the member that a support at joint j holds; none is named where n is nil.
func (r supportReader) heldMember(n *node, j int, known bool) (ref, bool) {
	if n == nil {
		return ref{}, true
	}
	if !known {
		_, _ = r.member(n)
		return ref{}, false
	}
	m, ok := r.memberAt(n, j)
	return m, ok && r.sure(m)
}

// stated lists those of the names that have a value.
func stated(values map[string]*node, names []string) []string {
	var found []string
	for _, name := range names {
		if values[name] != nil {
			found = append(found, name)
		}
	}
	return found
}

// holds reports whether the support has something to hold on to that can pass a couple, if it holds against turning.
func (r supportReader) holds(e entry, s statics.Support) bool {
	c := r.connectionAt(s.Joint)
	if s.On != statics.None || s.Kind == statics.Pinned || s.Kind == statics.Roller || c == nil || c.Main != statics.None {
		return true
	}
	name := r.frame().Joints[s.Joint].Name
	what := map[statics.SupportKind]string{statics.Fixed: "fixed", statics.Guide: "guide"}[s.Kind]
	remedy := fmt.Sprintf("Write %s: pin, or name the member it holds: {fixed: %s}.", name, r.frame().Members[r.meeting[s.Joint][0]].Name)
	if s.Kind == statics.Guide {
		remedy = fmt.Sprintf("Write {roller: ...}, or name the member it holds with on: %s.", r.frame().Members[r.meeting[s.Joint][0]].Name)
	}
	r.fault(e.value.at, fmt.Sprintf("%s holds nothing against turning at %s, where all members are hinged", what, name), remedy)
	return false
}
