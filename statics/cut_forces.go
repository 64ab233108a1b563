package statics

import (
	"slices"
)

// supportForces adds the reactions at joint j.
func (c *cutter) supportForces(j int) {
	k := c.support[j]
	if k == None {
		return
	}
	s := c.a.Frame.Supports[k]
	body := c.bodyAt(j, s.On)
	if s.On == None && (s.Kind == Fixed || s.Kind == Guide) {
		body = c.mainPart(j)
	}
	as := Force{Kind: Reaction, Joint: j, On: body, By: None}
	joint := c.a.Frame.Joints[j].Name
	switch s.Kind {
	case Pinned, Fixed:
		c.components(as, joint, "")
	default:
		c.force(as, "R"+joint, s.Along)
	}
	if s.Kind == Fixed || s.Kind == Guide {
		c.couple(as, "M"+joint)
	}
}

// force adds a force along a direction that is otherwise as another.
func (c *cutter) force(as Force, name string, along Vector) {
	as.Name, as.Along = name, along
	c.a.Forces = append(c.a.Forces, as)
}

// couple adds a couple that is otherwise as a force.
func (c *cutter) couple(as Force, name string) {
	as.Name, as.Couple = name, true
	c.a.Forces = append(c.a.Forces, as)
}

// components adds the two force components that pass at the joint of that name.
func (c *cutter) components(as Force, joint, suffix string) {
	c.force(as, joint+"x"+suffix, east)
	c.force(as, joint+"y"+suffix, north)
}

// connectionForces adds what passes between the parts at joint j.
func (c *cutter) connectionForces(j int) {
	parts := c.partsAt(j)
	if c.conn[j] == None || len(parts) < 2 {
		return
	}
	if pin := c.pinBody[j]; pin != None {
		for _, p := range parts {
			c.pair(j, PinOnPart, p, pin, "."+c.a.Parts[p].Name)
		}
		return
	}
	c.pair(j, PinForce, parts[0], parts[1], "")
}

// pair adds the forces that the connection at joint j lets pass from body `by` to body `on`. Where a reaction at the joint
// bears the name of one, the names tell the part.
func (c *cutter) pair(j int, kind ForceKind, on, by int, suffix string) {
	before, as := c.a.Forces, Force{Kind: kind, Joint: j, On: on, By: by}
	c.passing(as, suffix)
	added := c.a.Forces[len(before):]
	if suffix == "" && slices.ContainsFunc(added, func(f Force) bool { return lastBear(before, f.Name) }) {
		c.a.Forces = before
		c.passing(as, "."+c.a.Parts[on].Name)
	}
}

// passing adds what the connection at a force's joint lets pass.
func (c *cutter) passing(as Force, suffix string) {
	conn, joint := &c.a.Frame.Connections[c.conn[as.Joint]], c.a.Frame.Joints[as.Joint].Name
	if conn.Kind == Pin {
		c.components(as, joint, suffix)
		return
	}
	c.force(as, "S"+joint+suffix, conn.Along.Left())
	if conn.Kind == Sleeve {
		c.couple(as, "M"+joint+suffix)
	}
}

// lastBear reports whether one of the last forces, which may be reactions at the same joint, bears the name.
func lastBear(forces []Force, name string) bool {
	for i := len(forces) - 1; i >= 0 && i >= len(forces)-3; i-- {
		if forces[i].Name == name {
			return true
		}
	}
	return false
}
