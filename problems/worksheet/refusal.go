package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// refusal is the section that says why a frame is not determinate: the forces that equilibrium cannot give, the motions
// that nothing prevents and why it does not, and what would make it determinate.
type refusal struct{ *document }

func (d refusal) write() {
	c := d.Count
	d.section("Why it cannot be solved")
	if c.Degree() > 0 {
		undetermined := d.Undetermined()
		d.prose(fmt.Sprintf("Equilibrium alone cannot give %s: %s too many.", d.names(undetermined), isOrAre(c.Degree())))
	}
	if c.Motions() > 0 {
		if c.Degree() > 0 {
			d.blank()
		}
		d.ways()
	}
	d.remedies()
}

// mostMotions is how many motions are told; a frame with more is no frame yet.
const mostMotions = 12

// ways lists the motions that nothing prevents, with the reason of each.
func (d refusal) ways() {
	motions := d.Motions()
	if len(motions) == 1 {
		d.prose("Nothing holds the frame against a small motion:")
		d.item("  ", wording.Sentence(strings.Join(d.motionTexts(motions[0]), "; ")))
		d.prose("It can also go the other way.")
		d.blank()
		d.prose(d.reasonText(motions[0]))
		return
	}
	d.prose("Nothing holds the frame against a small motion of these kinds:")
	for i, m := range motions[:min(len(motions), mostMotions)] {
		label := fmt.Sprintf("  %d. ", i+1)
		d.item(label, wording.Sentence(strings.Join(d.motionTexts(m), "; ")))
		d.item(strings.Repeat(" ", len(label)), d.reasonText(m))
	}
	if more := len(motions) - mostMotions; more > 0 {
		d.prose(fmt.Sprintf("And %d more.", more))
	}
	d.prose("Each can also go the other way.")
}

// isOrAre is "one of them is" or "2 of them are".
func isOrAre(n int) string {
	if n == 1 {
		return "one of them is"
	}
	return fmt.Sprintf("%d of them are", n)
}

// motionTexts says how the bodies move: those that move as one in one clause. A pin goes with the parts it joins and is
// not named unless it moves alone.
func (d refusal) motionTexts(m statics.Motion) []string {
	var groups []statics.Motion
	for _, b := range m {
		if d.IsPin(b.Body) && !d.IsPin(m[0].Body) {
			continue
		}
		at := -1
		for i, g := range groups {
			if g[0].SameAs(b) {
				at = i
			}
		}
		if at < 0 {
			groups = append(groups, nil)
			at = len(groups) - 1
		}
		groups[at] = append(groups[at], b)
	}
	var texts []string
	for _, g := range groups {
		var body statics.FreeBody
		for _, b := range g {
			body = append(body, b.Body)
		}
		texts = append(texts, d.motionText(body, g[0]))
	}
	return texts
}

// motionText is how a group of bodies moves: "part AB turns clockwise about A".
func (d refusal) motionText(body statics.FreeBody, m statics.BodyMotion) string {
	who, s, together := wording.Body(d.Assembly, body), "s", ""
	if d.allParts(body) {
		who = "the whole frame"
	} else if len(body) > 1 {
		s, together = "", " together"
	}
	if m.Turn.IsZero() {
		return fmt.Sprintf("%s slide%s%s %s", who, s, together, d.say.Direction(plainSlope(m.Slide)))
	}
	return fmt.Sprintf("%s turn%s%s %s about %s", who, s, together, wording.Turn(m.Turn.Sign()), d.say.Place(m.Centre))
}

// plainSlope is a direction scaled so that its smaller part is 1.
func plainSlope(v statics.Vector) statics.Vector {
	least := exact.Min(v.X.Abs(), v.Y.Abs())
	scale, err := exact.Int(1).Quo(least)
	if err != nil { // along an axis
		return v
	}
	return v.Times(scale)
}

func (d refusal) allParts(body statics.FreeBody) bool {
	return len(body) == len(d.Parts) && len(d.Parts) > 1 && !d.IsPin(body[len(body)-1])
}
