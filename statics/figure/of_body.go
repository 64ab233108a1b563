package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// OfBody is the scene of bodies cut free: their outline without supports, the loads on them, and every force that
// crosses the cut. A force not in known (by index into Assembly.Forces) has its assumed sense; a known one has its
// value, and its arrow turns where that is negative. What the other part receives at a cut pin stands beside it.
func OfBody(a *statics.Assembly, body statics.FreeBody, known map[int]exact.Num, o Options) Scene {
	c := newCutBody(a, body, known, o)
	c.Title = wording.Sentence(wording.Body(a, body))
	c.acting()
	c.finish()
	c.opposites()
	c.names(c.joints())
	c.dimension(c.draft.joints())
	c.Names = symbols(a, body)
	return c.Scene
}

// A cutBody is the draft of a free body.
type cutBody struct {
	*draft
	a     *statics.Assembly
	body  statics.FreeBody
	known map[int]exact.Num
}

// newCutBody begins the scene of a free body with its members.
func newCutBody(a *statics.Assembly, body statics.FreeBody, known map[int]exact.Num, o Options) cutBody {
	inside := make([]bool, len(a.Frame.Members))
	for _, b := range body {
		if b >= 0 && b < len(a.Parts) {
			for _, m := range a.Parts[b].Members {
				inside[m] = true
			}
		}
	}
	d := newDraft(&a.Frame, o, inside)
	d.slopes()
	return cutBody{d, a, body, known}
}

// acting adds the pins, the loads, and the forces that cross the cut.
func (c cutBody) acting() {
	c.pins()
	c.loads(c.loadsOn())
	for _, i := range c.a.ForcesOn(c.body) {
		if sign, _ := c.a.Facing(c.body, i); sign != 0 {
			c.force(i, sign)
		}
	}
}

// symbols are the names of the forces on a body as print sets them.
func symbols(a *statics.Assembly, body statics.FreeBody) map[string]Symbolic {
	names := map[string]Symbolic{}
	for _, i := range a.ForcesOn(body) {
		letter, index := notation.Symbol(a.Forces[i], a.Frame.Joints[a.Forces[i].Joint].Name)
		names[a.Forces[i].Name] = Symbolic{letter, index}
	}
	return names
}

// joints lists the joints of the body, those of lone pins among them.
func (c cutBody) joints() []int {
	list := c.draft.joints()
	for _, b := range c.body {
		if c.a.IsPin(b) {
			if j := c.a.Pins[b-len(c.a.Parts)].Joint; len(c.meeting(j)) == 0 {
				list = append(list, j)
			}
		}
	}
	return list
}

// pins adds the symbols of the connections inside the body and at its cuts.
func (c cutBody) pins() {
	for _, k := range c.a.Frame.Connections {
		n := len(c.meeting(k.Joint))
		switch {
		case n == 0 && !c.hasPin(k.Joint):
		case n < 2 && k.Kind == statics.Pin:
			c.Symbols = append(c.Symbols, Symbol{Kind: PinSymbol, At: c.joint(k.Joint), Look: Look{Role: PinMark}})
		case k.Kind == statics.Pin && len(c.hinges(k)) == 0: // what is hinged to it is cut away
			c.Symbols = append(c.Symbols, Symbol{Kind: PinSymbol, At: c.joint(k.Joint), Look: Look{Role: PinMark}})
		default:
			c.connection(k)
		}
	}
}

// hasPin reports whether the pin at a joint is inside the cut as a body.
func (c cutBody) hasPin(j int) bool {
	for _, b := range c.body {
		if c.a.IsPin(b) && c.a.Pins[b-len(c.a.Parts)].Joint == j {
			return true
		}
	}
	return false
}

// loadsOn lists the loads on the body, each once.
func (c cutBody) loadsOn() []int {
	var list []int
	for _, i := range c.a.ActionsOn(c.body) {
		if l := c.a.Actions[i].AllLoads(); len(list) == 0 || list[len(list)-1] != l[len(l)-1] {
			list = append(list, l...)
		}
	}
	return list
}

// force adds force i as it acts on the body.
func (c cutBody) force(i, sign int) {
	f := c.a.Forces[i]
	value, known := c.known[i]
	look := Look{UnknownForce, c.o.force(i)}
	text := f.Name
	turned := known && value.Sign() < 0
	if known {
		look.Role = KnownForce
		text += " " + c.o.result(value.Abs(), notation.ForceDimension(f))
	}
	at := c.joint(f.Joint)
	if known && value.IsZero() {
		c.Notes = append(c.Notes, Note{at, f.Name + " = 0", look})
		return
	}
	if f.Couple {
		c.turn(at, (sign > 0) != (turned != f.Turned), text, look)
		return
	}
	sense := vector(f.Along)
	if sign < 0 {
		sense = sense.Opposite()
	}
	toward := sense
	if turned {
		toward = sense.Opposite()
	}
	c.arrow(Arrow{At: at, Toward: toward, Text: text, Look: look, Slope: slopeOf(f.Along)}, sense, false)
}

// turn adds a couple.
func (c cutBody) turn(at Position, left bool, text string, look Look) {
	kind, way := TurnRight, " cw"
	if left {
		kind, way = TurnLeft, " ccw"
	}
	c.Symbols = append(c.Symbols, Symbol{Kind: kind, At: at, Toward: c.freeSide(at), Text: text + way, Look: look})
}

// opposites notes beside each cut pin what the other body receives there.
func (c cutBody) opposites() {
	type face struct{ joint, other int }
	var order []face
	heads := map[face]string{}
	for _, i := range c.a.ForcesOn(c.body) {
		f := c.a.Forces[i]
		sign, _ := c.a.Facing(c.body, i)
		if sign == 0 || f.By == statics.None {
			continue
		}
		at := face{f.Joint, f.By}
		if c.body.Has(f.By) {
			at.other = f.On
		}
		if _, seen := heads[at]; !seen {
			order = append(order, at)
		}
		heads[at] += c.reversed(i, sign)
	}
	for _, at := range order {
		if heads[at] == "" {
			continue
		}
		text := "(on " + c.a.BodyName(at.other) + heads[at] + ")"
		c.Notes = append(c.Notes, Note{c.joint(at.joint), text, Look{Role: ReversedForce}})
	}
}

// reversed is the head of force i as the other body receives it.
func (c cutBody) reversed(i, sign int) string {
	f := c.a.Forces[i]
	value, known := c.known[i]
	if known && value.IsZero() {
		return ""
	}
	if known && value.Sign() < 0 {
		sign = -sign
	}
	if f.Couple {
		if (sign > 0) != f.Turned {
			return " cw"
		}
		return " ccw"
	}
	v := vector(f.Along)
	if sign > 0 {
		v = v.Opposite()
	}
	return " " + string(Head(v, !known))
}
