package tutor

import (
	"math/rand/v2"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics/slip"
)

// A mistake is named by the rule that it breaks, among others that it keeps.
const (
	leastRules = 2 // that are kept
	mostRules  = 3
)

// keptRules lists mistakes that a worked step could have had and has not, so that their rules are kept in it: they are about something
// else than what is wrong, and none of them leads to the value that stands there. Each rule is once among them.
func keptRules(e slip.Erred, ways []slip.Erred, all []slip.Candidate) []*slip.Slip {
	adds := e.Slip.About == slip.Presence && len(e.Terms) > 0
	var kept []*slip.Slip
	for _, other := range ways {
		s := other.Slip
		switch {
		case noRule(s) || !unlike(e.Slip, s) || other.Solving && !e.Solving || e.Solving && s.Needs == e.Slip.Needs:
		case adds && s.About == slip.Size: // what does not belong there may as well be too much of something
		case slices.ContainsFunc(all, func(c slip.Candidate) bool { return c.Slip == s && c.Value.Equal(e.Value) }):
		case slices.ContainsFunc(ways, func(w slip.Erred) bool { return w.Slip == s && w.Value.Equal(e.Value) }):
		case slices.ContainsFunc(kept, func(k *slip.Slip) bool { return rule(k) == rule(s) }):
		default:
			kept = append(kept, s)
		}
	}
	return kept
}

// near are mistakes about different things of which one breaks the rule of the other all the same.
var near = [][2]string{{"run-for-slope", "slope-as-run"}, {"slant-as-arm", "sloped-force-whole"}, {"slant-as-arm", "component-left-off"}}

// unlike reports whether two mistakes are about different things and skills, so that a step with the one does not break the rule of the other. A
// force along another line has another size and arm and may have another sense as well, and what is in the answer may be in any of them.
func unlike(a, b *slip.Slip) bool {
	line := func(s *slip.Slip) bool { return s.About == slip.Line }
	answer := func(s *slip.Slip) bool { return s.About == slip.Answer && s.Needs < slip.Copying }
	switch {
	case problems.SkillOfSlip(a.ID) == problems.SkillOfSlip(b.ID) || slices.Contains(near, [2]string{a.ID, b.ID}) || slices.Contains(near, [2]string{b.ID, a.ID}):
		return false
	case answer(a) || answer(b):
		return a.About == slip.Presence && answer(b) || b.About == slip.Presence && answer(a)
	case line(a) || line(b):
		return a.About == slip.Presence || b.About == slip.Presence
	}
	return a.About != b.About
}

// noRule reports whether a mistake is none to be named here: its sentence speaks of an answer typed, or it is about units, of which a
// worked solution has one system.
func noRule(s *slip.Slip) bool {
	return strings.HasPrefix(s.Says, "The size is right") || strings.HasPrefix(s.Says, "The digits are right") || problems.SkillOfSlip(s.ID) == "units-figures"
}

// rule is the rule that a mistake breaks.
func rule(s *slip.Slip) string {
	if s.ID == "turn-of-term" { // its sentence says what to do
		return "A force turns the body about the centre the way it pushes, and has that sign in the sum"
	}
	return s.Principle()
}

// chooseRule is the question for the rule that a mistake broke, with some that were kept.
func chooseRule(broke *slip.Slip, kept []*slip.Slip, pick *rand.Rand) choice {
	kept = slices.Clone(kept)
	pick.Shuffle(len(kept), func(i, j int) { kept[i], kept[j] = kept[j], kept[i] })
	all := append(kept[:min(len(kept), mostRules)], broke)
	pick.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	c := choice{says: "Which rule does that line break?", why: "that is the rule.", not: "that rule is kept in this line: which one is broken?"}
	for i, s := range all {
		c.of = append(c.of, rule(s)+".")
		if s == broke {
			c.right = append(c.right, i)
		}
	}
	return c
}
