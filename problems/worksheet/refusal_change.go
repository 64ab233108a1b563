package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
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
	case statics.PinForRoller:
		return "a pin support" + at + " in place of the roller"
	case statics.RigidAt:
		return "members rigidly joined" + at + ", with no " + d.connectionWord(c.Joint) + " there"
	case statics.FixedForPin:
		return "a fixed support" + at + " in place of the pin support"
	case statics.FixedForGuide:
		return "a fixed support" + at + " in place of the guide"
	case statics.RollerAt:
		return fmt.Sprintf("one more roller%s, its force %s", at, d.say.Direction(plainSlope(c.Along)))
	case statics.PinAt:
		return "a pin support" + at
	case statics.FixedAt:
		return "a fixed support" + at
	case statics.TurnedRoller:
		return fmt.Sprintf("the roller%s turned, its force %s", at, d.say.Direction(plainSlope(c.Along)))
	}
	return d.Frame.Joints[c.Joint].Name + " somewhere out of that line"
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
	statics.PinForRoller:   "pin for roller",
	statics.RigidAt:        "rigid",
	statics.FixedForPin:    "fixed for pin",
	statics.FixedForGuide:  "fixed for guide",
	statics.RollerAt:       "more roller",
	statics.PinAt:          "more pin",
	statics.FixedAt:        "more fixed",
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
