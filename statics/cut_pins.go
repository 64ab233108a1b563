package statics

// pins makes a body of each pin on which three or more parts, a support or a load act. Their numbers follow those of the
// parts (S1).
func (c *cutter) pins() {
	c.pinBody = noneFor(len(c.a.Frame.Joints))
	loaded := make([]bool, len(c.a.Frame.Joints))
	for i := range c.a.Frame.Loads {
		if l := &c.a.Frame.Loads[i]; l.Joint != None && l.Member == None {
			loaded[l.Joint] = true
		}
	}
	for j := range c.a.Frame.Joints {
		if !c.isPin(j) {
			continue
		}
		if parts := len(c.partsAt(j)); parts > 2 || parts == 2 && (loaded[j] || c.heldItself(j)) {
			c.pinBody[j] = len(c.a.Parts) + len(c.a.Pins)
			c.a.Pins = append(c.a.Pins, PinBody{Name: "pin " + c.a.Frame.Joints[j].Name, Joint: j})
		}
	}
}

func (c *cutter) isPin(j int) bool {
	k := c.conn[j]
	return k != None && c.a.Frame.Connections[k].Kind == Pin
}

// heldItself reports whether a support at joint j acts on the pin and not on one of the members.
func (c *cutter) heldItself(j int) bool {
	k := c.support[j]
	if k == None {
		return false
	}
	s := c.a.Frame.Supports[k]
	return s.On == None && (s.Kind == Pinned || s.Kind == Roller)
}
