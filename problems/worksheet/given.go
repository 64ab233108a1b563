package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// given lists what the problem gives, in words.
func (d *document) given() {
	d.section("Given")
	d.item("Units      ", d.unitWords())
	d.item("Joints     ", strings.Join(d.jointTexts(), "   "))
	d.item("Members    ", strings.Join(d.memberTexts(), ",   "))
	d.listed("Joined     ", d.connectionTexts())
	d.listed("Supports   ", d.supportTexts())
	d.listed("Loads      ", d.loadTexts())
	d.drawGiven()
}

// listed writes a list with its label before the first.
func (d *document) listed(label string, all []string) {
	for i, text := range all {
		if i > 0 {
			label = strings.Repeat(" ", len(label))
		}
		d.item(label, text)
	}
}

func (d *document) unitWords() string {
	if d.p.Units.Letters() {
		return "forces are multiples of P, lengths of L"
	}
	return d.st.UnitOf(notation.Force) + " and " + d.st.UnitOf(notation.Length)
}

func (d *document) jointTexts() []string {
	var all []string
	for _, j := range d.Frame.Joints {
		all = append(all, j.Name+strings.ReplaceAll(d.point(j.At), " ", string(bound)))
	}
	return all
}

// point is a place as a pair of coordinates.
func (d *document) point(p statics.Point) string { return d.pair(p.X, p.Y, notation.Length) }

func (d *document) pair(x, y exact.Num, dim notation.Dimension) string {
	return "(" + d.st.Given(x, dim) + d.st.Decimal.Between() + d.st.Given(y, dim) + ")"
}

// longRoot is the longest exact length that stands beside the rounded one.
const longRoot = 6

func (d *document) memberTexts() []string {
	var all []string
	for m, member := range d.Frame.Members {
		length := d.Frame.Length(m)
		text := member.Name + " " + d.st.WithUnit(length, notation.Length)
		if exactly := d.exactly(length, notation.Length); !length.IsRational() && exactly != "" && runes(exactly) <= longRoot {
			text += " (" + exactly + ")"
		}
		all = append(all, strings.ReplaceAll(text, " ", string(bound)))
	}
	return all
}

// connectionTexts says how the members are joined where they are not all rigid.
func (d *document) connectionTexts() []string {
	var all []string
	rigid := "all other joints are rigid"
	for _, c := range d.Frame.Connections {
		joint := d.Frame.Joints[c.Joint].Name
		pieces := d.pieceTexts(c)
		along := d.lineText(c.Along)
		switch c.Kind {
		case statics.Slot:
			free, main := freeAndMain(c, pieces)
			all = append(all, fmt.Sprintf("%s: %s is held to %s by a peg in a slot: it turns, and slides %s", joint, free, main, along))
		case statics.Sleeve:
			free, main := freeAndMain(c, pieces)
			all = append(all, fmt.Sprintf("%s: %s is held to %s by a sleeve: it slides %s but does not turn", joint, free, main, along))
		default:
			all = append(all, joint+": a pin joins "+notation.List(pieces))
		}
	}
	for j := range d.Frame.Joints {
		if d.meets(j) && !d.connected(j) {
			return append(all, rigid)
		}
	}
	return all
}

// lineText is a line of sliding in words.
func (d *document) lineText(v statics.Vector) string {
	switch {
	case v.Y.IsZero():
		return "horizontally"
	case v.X.IsZero():
		return "vertically"
	}
	return "along " + d.pair(v.X, v.Y, notation.Pure)
}

// freeAndMain are the piece that slides and the one it slides on.
func freeAndMain(c statics.Connection, pieces []string) (free, main string) {
	return pieces[1-c.Main], pieces[c.Main]
}

// pieceTexts names the pieces at a connection: "CD", "AC with CE (rigid together)".
func (d *document) pieceTexts(c statics.Connection) []string {
	var all []string
	for _, piece := range c.Pieces {
		var names []string
		for _, m := range piece {
			names = append(names, d.Frame.Members[m].Name)
		}
		text := strings.Join(names, " with ")
		if len(names) > 1 {
			text += " (rigid together)"
		}
		all = append(all, text)
	}
	return all
}

// meets reports whether two or more members end at joint j.
func (d *document) meets(j int) bool {
	n := 0
	for _, m := range d.Frame.Members {
		if m.From == j || m.To == j {
			n++
		}
	}
	return n > 1
}

func (d *document) connected(j int) bool {
	for _, c := range d.Frame.Connections {
		if c.Joint == j {
			return true
		}
	}
	return false
}

// supportTexts says what each support exerts.
func (d *document) supportTexts() []string {
	if len(d.Frame.Supports) == 0 {
		return []string{"none"}
	}
	var all []string
	for _, s := range d.Frame.Supports {
		text := d.Frame.Joints[s.Joint].Name + ": "
		switch s.Kind {
		case statics.Fixed:
			text += "fixed"
		case statics.Pinned:
			text += "pinned"
		case statics.Roller:
			text += "roller, its force " + d.directionText(s.Along)
		case statics.Guide:
			text += "guide, its force " + d.directionText(s.Along)
		}
		if s.On != statics.None {
			text += ", holding " + d.Frame.Members[s.On].Name
		}
		all = append(all, text+" ("+strings.Join(d.reactionsAt(s.Joint), ", ")+")")
	}
	return all
}

func (d *document) reactionsAt(joint int) []string {
	var names []string
	for _, f := range d.Forces {
		if f.Kind == statics.Reaction && f.Joint == joint {
			names = append(names, f.Name)
		}
	}
	return names
}

// directionText is a direction in words, with its components where it is inclined.
func (d *document) directionText(v statics.Vector) string {
	word := notation.DirectionWord(v)
	if v.X.IsZero() || v.Y.IsZero() {
		return word
	}
	return word + " along " + d.pair(v.X, v.Y, notation.Pure)
}
