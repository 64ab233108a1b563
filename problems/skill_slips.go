package problems

import "slices"

// slipSkills are the skills and, of the catalogue of package slip, the mistakes that show that a skill is wanting. A mistake stands
// with the one skill that it says most about: judgement of those who teach, no source.
var slipSkills = map[string][]string{
	"pick-body":             {"inner-pin-force", "neighbours-load", "load-left-off", "bodies-mixed", "load-beyond-cut", "rope-counted-once", "tension-halved"},
	"pin-support":           {"reaction-left-off", "pin-support-one-way"},
	"roller-support":        {"roller-not-square"},
	"fixed-support":         {"end-couple-left-off", "zero-at-fixed-end"},
	"pin-pair":              {"other-face", "pin-force-not-reversed", "one-component-not-reversed", "pin-force-left-off", "pin-component-left-off", "value-of-another-pin", "minus-used-twice"},
	"load-at-pin":           {"pin-load-on-both", "pin-load-on-neither", "shared-by-halves"},
	"two-force-member":      {"loaded-as-two-force", "along-bent-member", "member-missed-at-pin"},
	"moment-centre":         {"arm-from-elsewhere", "arm-to-elsewhere", "moment-through-centre", "taken-as-through-centre", "centre-changed"},
	"axis-force-moment":     {"radius-in-one-arm", "turn-of-term", "arm-forgotten", "across-for-up", "placed-from-other-end", "distance-in-force-sum"},
	"inclined-force-moment": {"slant-as-arm", "slope-as-run", "square-force-counted"},
	"couple-in-sum":         {"turn-of-couple", "couple-times-distance", "couple-left-out", "couple-in-force-sum", "couple-counted-twice"},
	"uniform-resultant":     {"intensity-as-force", "halved-twice", "spread-counted-twice", "run-for-slope", "square-for-upright", "whole-member-loaded"},
	"triangle-resultant":    {"triangle-as-rectangle", "triangle-as-uniform"},
	"trapezoid-resultant":   {"rectangle-only", "triangle-only"},
	"line-of-action":        {"arm-to-far-end", "arm-to-near-end", "triangle-at-middle", "wrong-third", "trapezoid-at-middle", "uniform-at-third", "distance-to-load-forgotten"},
	"load-across-pin":       {"not-split-at-pin", "whole-load-on-stretch"},
	"components": {"sine-for-cosine", "sloped-force-whole", "slope-not-divided", "component-left-off", "component-turned", "degrees-as-radians",
		"component-of-unknown", "share-of-unknown-forgotten"},
	"solve-with-sense": {"sense-of-term", "minus-dropped", "unknown-turned", "moved-with-its-sign", "not-divided", "multiplied-for-divided",
		"divided-by-another-arm", "other-unknown-dropped", "term-dropped", "minus-not-put-in", "factors-added", "factor-dropped", "product-times-ten",
		"figure-miscopied", "product-figure-off", "division-inverted", "divided-by-another-number", "one-term-divided"},
	"cut-forces":     {"shear-sign", "moment-side", "axial-sign", "end-force-ignored", "shear-as-local-load", "resultant-before-cut", "whole-load-for-part", "piece-of-ramp", "from-other-end"},
	"corner-forces":  {"axial-for-shear", "not-along-member", "corner-not-passed", "roles-kept-at-corner"},
	"jumps":          {"no-step-at-load", "shear-step-at-couple", "no-step-at-couple", "step-other-way", "moment-step-at-load"},
	"slopes":         {"straight-under-spread", "bulge-other-way", "shear-kept-level", "load-slope-turned", "triangle-without-half", "area-sign-lost"},
	"extreme-moment": {"peak-at-middle"},
	"units-figures": {"data-digits-swapped", "answer-digits-swapped", "power-of-ten", "one-term-in-other-unit", "inches-and-feet", "mass-for-weight",
		"pounds-and-newtons"},
}

// SkillOfSlip is the skill that a mistake of the catalogue shows to be wanting, by its ID; nothing for an ID that is not in it.
func SkillOfSlip(id string) string {
	for _, skill := range skills {
		if slices.Contains(slipSkills[skill.Name], id) {
			return skill.Name
		}
	}
	return ""
}

// SlipsOf lists the mistakes that show a skill to be wanting, by their IDs.
func SlipsOf(skill string) []string { return slices.Clone(slipSkills[skill]) }
