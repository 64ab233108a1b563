package figure

import (
	"strconv"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// Describe says in sentences what the figure of a frame shows, for a reader who cannot see it: how the parts run, what
// joins and holds them, and the loads.
func Describe(a *statics.Assembly, o Options) []string {
	w := words{a, &a.Frame, o}
	var lines []string
	for i := range a.Parts {
		lines = append(lines, w.part(i))
	}
	for _, c := range a.Frame.Connections {
		lines = append(lines, w.connection(c))
	}
	for _, s := range a.Frame.Supports {
		lines = append(lines, w.support(s))
	}
	for _, l := range a.Frame.Loads {
		lines = append(lines, w.load(l))
	}
	return sentences(lines)
}

// DescribeBody says in sentences what acts on a free body, as FreeBody draws it.
func DescribeBody(a *statics.Assembly, body statics.FreeBody, known map[int]exact.Num, o Options) []string {
	w := words{a, &a.Frame, o}
	lines := []string{wording.Body(a, body) + " is cut free"}
	seen := statics.None
	for _, i := range a.ActionsOn(body) {
		if l := a.Actions[i].Load; l != seen {
			seen = l
			lines = append(lines, w.load(a.Frame.Loads[l]))
		}
	}
	for _, i := range a.ForcesOn(body) {
		if sign, _ := a.Facing(body, i); sign != 0 {
			value, ok := known[i]
			lines = append(lines, w.force(body, i, sign, value, ok))
		}
	}
	return sentences(lines)
}

func sentences(lines []string) []string {
	for i, l := range lines {
		lines[i] = wording.Sentence(l)
	}
	return lines
}

// words writes about one frame.
type words struct {
	a *statics.Assembly
	f *statics.Frame
	o Options
}

// at is a joint with its place.
func (w words) at(j int) string {
	k := w.f.Joints[j]
	return k.Name + " at " + w.length(k.At.X) + ", " + w.length(k.At.Y)
}

func (w words) length(n exact.Num) string { return w.o.Style.Given(n, notation.Length) }

// way is the direction from one joint to another.
func (w words) way(from, to int) string {
	return notation.DirectionWord(w.f.Joints[from].At.To(w.f.Joints[to].At))
}

// part tells how a part runs: joint by joint, or member by member if it branches.
func (w words) part(i int) string {
	p := w.a.Parts[i]
	text := "part " + strconv.Itoa(i+1) + ", " + p.Name + ", runs from "
	if len(p.Members)+1 == len(p.Joints) && !strings.HasSuffix(p.Name, "+") {
		text += w.at(p.Joints[0])
		for k := 1; k < len(p.Joints); k++ {
			if k > 1 {
				text += ", then"
			}
			text += " " + w.way(p.Joints[k-1], p.Joints[k]) + " to " + w.at(p.Joints[k])
		}
		return text
	}
	var runs []string
	for _, m := range p.Members {
		k := w.f.Members[m]
		runs = append(runs, w.at(k.From)+" "+w.way(k.From, k.To)+" to "+w.at(k.To))
	}
	return text + strings.Join(runs, "; from ")
}

// members lists members by name.
func (w words) members(list []int) string {
	var names []string
	for _, m := range list {
		names = append(names, w.f.Members[m].Name)
	}
	return notation.List(names)
}

// connection tells how pieces are joined.
func (w words) connection(c statics.Connection) string {
	text := "at " + w.f.Joints[c.Joint].Name + ", "
	var free []string
	for i, piece := range c.Pieces {
		if i != c.Main {
			free = append(free, w.members(piece))
		}
	}
	switch c.Kind {
	case statics.Slot:
		return text + free[0] + " turns and slides in a slot along " + w.line(c.Along)
	case statics.Sleeve:
		return text + free[0] + " slides in a sleeve along " + w.line(c.Along) + " and cannot turn"
	}
	if c.Main == statics.None {
		return text + "a pin joins " + strings.Join(free, " to ")
	}
	return text + "a pin joins " + strings.Join(free, " and ") + " to " + w.members(c.Pieces[c.Main])
}

// support tells what holds a joint.
func (w words) support(s statics.Support) string {
	text := w.f.Joints[s.Joint].Name
	switch s.Kind {
	case statics.Pinned:
		text += " stands on a pinned support"
	case statics.Fixed:
		text += " is fixed"
	case statics.Roller:
		text += " stands on a roller that pushes " + w.direction(s.Along)
	case statics.Guide:
		text += " is held by a guide that pushes " + w.direction(s.Along) + " and keeps it from turning"
	}
	if s.On != statics.None {
		text += ", which holds " + w.f.Members[s.On].Name
	}
	return text
}

// direction is a direction in words, with its steepness unless it lies along an axis.
func (w words) direction(v statics.Vector) string {
	text := notation.DirectionWord(v)
	if v.X.IsZero() || v.Y.IsZero() {
		return text
	}
	steep := inclination(v)
	if across, up, ratio := strings.Cut(steep, ":"); ratio {
		sense := " up"
		if v.Y.Sign() < 0 {
			sense = " down"
		}
		return text + ", " + across + " across for " + up + sense
	}
	return text + ", " + strings.TrimSuffix(steep, "°") + " degrees from the horizontal"
}

// line is a direction without a sense.
func (w words) line(v statics.Vector) string {
	switch {
	case v.X.IsZero():
		return "an upright line"
	case v.Y.IsZero():
		return "a level line"
	}
	return "a line " + w.direction(v)
}

// load tells what a load does and where.
func (w words) load(l statics.Load) string {
	along := l.Along
	switch l.Kind {
	case statics.CoupleLoad:
		turn := "counter-clockwise"
		if l.Size.Sign() < 0 {
			turn = "clockwise"
		}
		return "a couple of " + w.o.given(l.Size.Abs(), notation.Moment) + " turns " + turn + w.where(l)
	case statics.SpreadLoad:
		return w.spread(l)
	}
	if l.Size.Sign() < 0 {
		along = along.Neg()
	}
	return "a force of " + w.o.given(l.Size.Abs(), notation.Force) + " acts " + w.direction(along) + w.where(l)
}

// where is the place of a point load or couple.
func (w words) where(l statics.Load) string {
	switch {
	case l.Joint != statics.None && l.Member != statics.None:
		return " at " + w.f.Joints[l.Joint].Name + " on " + w.f.Members[l.Member].Name
	case l.Joint != statics.None:
		return " at " + w.f.Joints[l.Joint].Name
	}
	m := w.f.Members[l.Member]
	return " on " + m.Name + ", " + w.o.given(l.At, notation.Length) + " from " + w.f.Joints[m.From].Name
}

// spread tells what a spread load does and where.
func (w words) spread(l statics.Load) string {
	m := w.f.Members[l.Member]
	intensity := func(n exact.Num) string { return w.o.given(n, notation.Intensity) }
	text := "a uniform load of " + intensity(l.First)
	if !l.First.Equal(l.Last) {
		text = "a load that goes evenly from " + intensity(l.First) + " to " + intensity(l.Last)
	}
	text += map[statics.Per]string{statics.PerRun: " of run", statics.PerRise: " of rise"}[l.Per]
	text += " acts " + w.direction(l.Along) + " on " + m.Name
	if l.Start.IsZero() && l.End.Equal(w.f.Length(l.Member)) {
		if l.First.Equal(l.Last) {
			return text
		}
		return text + ", from " + w.f.Joints[m.From].Name + " to " + w.f.Joints[m.To].Name
	}
	return text + ", between " + w.length(l.Start) + " and " + w.o.given(l.End, notation.Length) + " from " + w.f.Joints[m.From].Name
}

// force tells how a force acts on the body and on what gives it.
func (w words) force(body statics.FreeBody, i, sign int, value exact.Num, known bool) string {
	f := w.a.Forces[i]
	name := f.Name + " at " + w.f.Joints[f.Joint].Name
	if known && value.IsZero() {
		return name + " is 0"
	}
	if !known {
		value = exact.Int(1)
		name += " is unknown, taken to act "
	} else {
		name += " is " + w.o.result(value.Abs(), notation.ForceDimension(f)) + " and acts "
	}
	here := notation.Acting(f, value)
	if sign < 0 && f.Kind != statics.MemberPull {
		here = here.Opposite()
	}
	name += here.String()
	if f.By == statics.None || f.Kind == statics.MemberPull {
		return name
	}
	other := f.By
	if body.Has(f.By) {
		other = f.On
	}
	return name + "; on " + w.a.BodyName(other) + " it acts " + here.Opposite().String()
}
