package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// remedies lists ways to make the frame determinate, if there are any to name.
func (d refusal) remedies() {
	ways := d.Remedies()
	if len(ways) == 0 {
		return
	}
	d.blank()
	if len(ways) == 1 {
		d.prose("This would make it determinate:")
		d.item("  ", wording.Sentence(d.wayText(ways[0])))
		return
	}
	d.prose("Any one of these would make it determinate:")
	for i, way := range ways {
		d.item(fmt.Sprintf("  %d. ", i+1), wording.Sentence(d.wayText(way)))
	}
}

// wayText is changes that go together.
func (d refusal) wayText(way []statics.Change) string {
	var all []string
	for _, c := range way {
		all = append(all, d.changeText(c))
	}
	return strings.Join(all, "; and ")
}

// changeText is one change in words.
func (d refusal) changeText(c statics.Change) string {
	at := " at " + d.Frame.Joints[c.Joint].Name
	switch c.Kind {
	case statics.PinForFixed:
		return "a pin support" + at + " in place of the fixed one"
	case statics.HingeAt:
		if c.Member != statics.None {
			return "a pin" + at + " for " + d.Frame.Members[c.Member].Name + " alone"
		}
		return "a pin" + at
	case statics.RollerForPin:
		return fmt.Sprintf("a roller%s in place of the pin support, its force %s", at, d.say.Direction(plainSlope(c.Along)))
	case statics.NoRoller:
		return "no roller" + at
	case statics.RollerForGuide:
		return "a roller" + at + " in place of the guide, which then may turn"
	case statics.GuideForFixed:
		return fmt.Sprintf("a guide%s in place of the fixed support, its force %s", at, d.say.Direction(plainSlope(c.Along)))
	case statics.ThroughAt:
		return d.throughText(c.Joint)
	case statics.PinForSlot, statics.PinForSleeve:
		return "a pin" + at + " in place of the " + d.connectionWord(c.Joint)
	case statics.PinForGuide:
		return "a pin support" + at + " in place of the guide"
	case statics.PinForRoller:
		return "a pin support" + at + " in place of the roller"
	case statics.RigidAt:
		return "members rigidly joined" + at + ", with no " + d.connectionWord(c.Joint) + " there"
	case statics.FixedForPin:
		return "a fixed support" + at + " in place of the pin support"
	case statics.FixedForGuide:
		return "a fixed support" + at + " in place of the guide"
	case statics.RollerAt:
		return fmt.Sprintf("%s%s, its force %s", d.newRoller(), at, d.say.Direction(plainSlope(c.Along)))
	case statics.PinAt:
		return "a pin support" + at
	case statics.FixedAt:
		return "a fixed support" + at
	case statics.TurnedRoller:
		return fmt.Sprintf("the roller%s turned, its force %s", at, d.say.Direction(plainSlope(c.Along)))
	}
	return d.Frame.Joints[c.Joint].Name + " somewhere out of that line"
}

// newRoller is a roller beside those that there are.
func (d refusal) newRoller() string {
	for _, s := range d.Frame.Supports {
		if s.Kind == statics.Roller {
			return "one more roller"
		}
	}
	return "a roller"
}

// throughText is bars that pass through a pin, and how the file says so.
func (d refusal) throughText(joint int) string {
	name := d.Frame.Joints[joint].Name
	var bars, pieces []string
	through := map[int]bool{}
	for _, pair := range d.Frame.ThroughBars(joint) {
		bars = append(bars, d.farEnd(pair[0], joint)+name+d.farEnd(pair[1], joint))
		through[pair[0]], through[pair[1]] = true, true
	}
	pieces = append(pieces, bars...)
	for _, c := range d.Frame.Connections {
		for _, piece := range c.Pieces {
			if c.Joint == joint && !through[piece[0]] {
				pieces = append(pieces, d.pieceText(piece))
			}
		}
	}
	what := "the bar " + bars[0] + " in one piece"
	if len(bars) > 1 {
		what = "the bars " + notation.List(bars) + " in one piece each"
	}
	return fmt.Sprintf("%s through the pin at %s (pins: {%s: [%s]})", what, name, name, strings.Join(pieces, ", "))
}

// farEnd is the name of a member's joint that is not the one given.
func (d refusal) farEnd(member, joint int) string {
	m := d.Frame.Members[member]
	if m.From == joint {
		return d.Frame.Joints[m.To].Name
	}
	return d.Frame.Joints[m.From].Name
}

// pieceText is a piece at a joint as a problem file has it.
func (d refusal) pieceText(piece []int) string {
	var names []string
	for _, m := range piece {
		names = append(names, d.Frame.Members[m].Name)
	}
	if len(names) == 1 {
		return names[0]
	}
	return "[" + strings.Join(names, ", ") + "]"
}

// connectionWord is what joins the members at a joint.
func (d refusal) connectionWord(joint int) string {
	for _, c := range d.Frame.Connections {
		if c.Joint == joint {
			return [...]string{"pin", "slot", "sleeve"}[c.Kind]
		}
	}
	return "pin"
}

// changeNames are the changes for programs.
var changeNames = [...]string{
	statics.PinForFixed:    "pin for fixed",
	statics.HingeAt:        "pin",
	statics.RollerForPin:   "roller for pin",
	statics.NoRoller:       "no roller",
	statics.RollerForGuide: "roller for guide",
	statics.GuideForFixed:  "guide for fixed",
	statics.ThroughAt:      "through",
	statics.PinForRoller:   "pin for roller",
	statics.PinForSlot:     "pin for slot",
	statics.RigidAt:        "rigid",
	statics.FixedForPin:    "fixed for pin",
	statics.FixedForGuide:  "fixed for guide",
	statics.RollerAt:       "more roller",
	statics.PinAt:          "more pin",
	statics.FixedAt:        "more fixed",
	statics.PinForSleeve:   "pin for sleeve",
	statics.PinForGuide:    "pin for guide",
	statics.TurnedRoller:   "roller turned",
	statics.MovedJoint:     "joint moved",
}

// jsonChange is one change.
func (d refusal) jsonChange(c statics.Change) string {
	fields := []field{{"joint", quote(d.Frame.Joints[c.Joint].Name)}, {"change", quote(changeNames[c.Kind])}}
	if c.Member != statics.None {
		fields = append(fields, field{"member", quote(d.Frame.Members[c.Member].Name)})
	}
	if !c.Along.IsZero() {
		name := "along"
		if c.Kind == statics.MovedJoint {
			name = "by"
		}
		fields = append(fields, field{name, place(c.Along.X, c.Along.Y)})
	}
	return inline(append(fields, field{"text", quote(wording.Sentence(d.changeText(c)))})...)
}
