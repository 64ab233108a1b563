package main

import (
	"regexp"
	"strings"
)

// The sentences by which a person would know a mistake as named or asked about. The words are those of a reply as it is
// read, with no knowledge of what the program calls it; a list here is wide enough that other words for the same are found.

func words(patterns ...string) *regexp.Regexp {
	return regexp.MustCompile(strings.Join(patterns, "|"))
}

// general holds what is said where no mistake was recognised: it speaks of the whole sum, or sends to the hint.
var general = words(`type hint`, `another look from outside`, `come to zero`, `go round`, `goes? in once`,
	`must fit every`, `the sum stands as it should`, `two sums stand as they should`, `v is the sum of the forces`, `n balances the forces`, `three figures are asked`, `moments about the cut of all`, `cut is only as good`, `take moments about the cut of all`, `is at rest like every`, `the shear is the sum`,
	`axial force is what the cut must supply`, `distributed load counts as its resultant, the area`, `resultant times the arm of its centroid`, `size times its arm from the centre`,
	`shortest distance from the centre to the line of the force; a resultant`, `every term stands as it should`, `only the arithmetic is open`, `solved term by term`,
	`terms are right`, `close, but`, `written out, which terms`, `take each product`, `^not yet\.?$`)

// atTerms holds what is said of any wrong force, arm or couple where one is asked for; some of it fits a mistake all the same.
var atTerms = words(`only the (horizontal|vertical) distance`, `so its arm is the (horizontal|vertical) distance`, `distance from the centre to the line of the`, `only the component of a force along the sum`, `inclined force goes in by its components: which one`, `goes in with the size that is given`, `goes in with its own size`)

// several marks a reply that leaves the choice between readings to the student.
var several = words(`more than one way`, `worth a second look`, `two things at once`, `not the sense: .*, and `, `which of `)

var (
	senseWords  = `which way does|do the terms of the sum cancel|clockwise or counter|sense|opposite|which signs?|reversed|sign of|own term has a sign|positive direction|changes? (its )?sign|crosses|other side|with its sign|up or down|push or pull|pull or push`
	countWords  = `count in this sum|accounted for|left out|missing|not in (the|your)|is in (the|your)|dropped|without`
	dataWords   = `copied|given|as (they|it) (are|is) printed|figures|digits|what number`
	workWords   = `product|multipl|arithmetic|work(ed|ing) out|comes to`
	placeWords  = `from which point|measured from|start at the same centre|starts at the centre|where does each of your arms|ends on the line`
	armOfLoad   = `arm of the resultant|where does the resultant|where does each shape`
	strayWords  = `complete as it stands|nothing else goes in|stands for nothing`
	sectionHead = "section: "
)

// told gives for each kind of mistake the words that name it, or ask about it in particular.
var told = map[string]*regexp.Regexp{
	"turned load":                 words(senseWords),
	"turned pin force":            words(senseWords),
	"turned reaction":             words(senseWords),
	"turned couple":               words(senseWords),
	"turned component":            words(senseWords),
	"turned shape of a trapezoid": words(senseWords),

	"left out load":                 words(countWords, `loads`),
	"left out pin force":            words(countWords, `joint forces`, `cancel only when`, `pin force`),
	"left out reaction":             words(countWords, `support`, `reaction`),
	"left out couple":               words(countWords, `couple`),
	"left out component":            words(countWords, `two components`, `each component`),
	"left out shape of a trapezoid": words(countWords, `rectangle and a triangle`, `simple shapes`, `each shape`),

	"arm from another point":                           words(placeWords, `with what arm`),
	"arm of a force from another point":                words(placeWords, `with what arm`, `arm of the unknown`),
	"horizontal and vertical arm exchanged":            words(`vertical force has a horizontal`, `horizontal arm`, `which distance goes`),
	"horizontal and vertical arm of a force exchanged": words(`arm of the unknown`, `vertical force has a horizontal`, `horizontal arm`, `which distance goes`),
	"slant distance as arm":                            words(`perpendicular`, `shortest distance from the centre to its`),
	"slant distance as arm of a force":                 words(`arm of the unknown`, `perpendicular`, `shortest distance from the centre to its`),
	"force without its arm":                            words(`multiplied by its arm`, `without its arm`, `its arm here`, `factor`),
	"slope distance taken as horizontal":               words(`along (the|an) (slope|incline|member)`, `horizontal (distance|projection|length)`, `sloping`, `inclined member`, `slope`),
	"horizontal distance taken along the slope":        words(`along (the|an) (slope|incline|member)`, `horizontal (distance|projection|length)`, `sloping`, `inclined member`, `slope`),
	"place from the wrong end":                         words(`which end`, `other end`, `wrong end`, `first joint`, `from .* end`, `where does (it|the load) stand`, `measured from`),
	"force whole":                                      words(`component`),
	"force whole of an unknown":                        words(`component`, `perpendicular to the surface`),
	"sine for cosine":                                  words(`cosine`, `\bsine\b`, `adjacent`),
	"sine for cosine of an unknown":                    words(`cosine`, `\bsine\b`, `adjacent`),
	"sine for cosine, both":                            words(`cosine`, `\bsine\b`, `adjacent`),
	"sine for cosine, both of an unknown":              words(`cosine`, `\bsine\b`, `adjacent`),
	"slope not divided by the hypotenuse":              words(`rise and run`, `hypotenuse`, `length of the slope`),
	"slope not divided by the hypotenuse, both":        words(`rise and run`, `hypotenuse`, `length of the slope`),
	"degrees as radians":                               words(`degrees`, `radian`, `calculator`),
	"degrees as radians, both":                         words(`degrees`, `radian`, `calculator`),
	"inclined roller taken as vertical":                words(`roller`, `along which line`, `surface`),
	"couple times a distance":                          words(`couple`),
	"value of another force":                           words(`which pin`, `pin has forces of its own`, `belong`, `with what value`, `letter`),
	"force through the centre given a moment":          words(strayWords, `passes through the centre`, `through the centre`, `has no arm`, `no moment about`),
	"pin force with one sense on both parts":           words(senseWords),
	"pin force inside the body":                        words(strayWords, `inside`, `cancel`, `both faces`),
	"load of the next part":                            words(strayWords, `another body`, `same free body`, `which body`, `on this body`, `touches the body`, `none here`),
	"all loads of the next part as well":               words(strayWords, `another body`, `same free body`, `which body`, `on this body`, `touches the body`, `none here`),
	"couple in a sum of forces":                        words(strayWords, `couple has no resultant`, `stays out of force`, `couple`),
	"moment in a sum of forces":                        words(`without distances`, `forces only`),
	"load halved by habit":                             words(`symmetr`, `halved`),
	"intensity used as a force":                        words(`how large is the resultant`, `load per length`, `times (its|the) length`, `multiplied by the length`),
	"load counted twice":                               words(`how large is the resultant`, `takes the place of`, `how many times`, `twice`, `times its length`),
	"resultant at the far end":                         words(`centroid`, `far end`, armOfLoad),
	"resultant at the near end":                        words(`centroid`, `where the load begins`, armOfLoad),
	"distance to the loaded stretch forgotten":         words(`how far is the load`, `not where the load begins`, `starts at the centre`, `distance to the load`),
	"uniform load halved":                              words(`how large is the resultant`, `no half`, `half`),
	"triangle as wL at its third":                      words(`how large is the resultant`, `half the area`, `half the rectangle`, `half`),
	"triangle at the middle":                           words(`third`, `where does each shape`, armOfLoad),
	"triangle as wL at the middle":                     words(`how large is the resultant`, `triang`),
	"wrong third of the triangle":                      words(`third`, `larger end`, `which side of the middle`),
	"trapezoid at its middle":                          words(`third`, `larger end`, `each shape`, `where does the resultant`),
	"per run taken per length":                         words(`along the slope or`, `projection`, `intensity belongs`, `which length`),
	"per length taken per run":                         words(`along the slope or`, `projection`, `intensity belongs`, `which length`),
	"normal load taken as vertical":                    words(`in which direction does this load`, `perpendicular to the member or`, `arrowheads`),
	"vertical load taken as normal":                    words(`in which direction does this load`, `perpendicular to the member or`, `arrowheads`),
	"load across a pin by one resultant":               words(`across a pin`, `split`, `stretch`),

	"sign of the answer":               words(senseWords),
	"place of the decimal point":       words(`which unit`, `decimal point`, `which unit`, `power of ten`),
	"figures of the answer exchanged":  words(`own working`, `not in this order`, `digits`, `figures`),
	"figures of a number exchanged":    words(`not in this order`, dataWords),
	"one figure of a number miscopied": words(dataWords),
	"product left out":                 words(countWords),
	"product moved with its sign":      words(senseWords),
	"minus of a known force lost":      words(senseWords),
	"arithmetic of a product":          words(workWords),
	"factor left out":                  words(`factor`, `multiplied`, workWords),
	"value of another force put in":    words(`with what value`, `which (force|values?)`, `belong`, `put in`),
	"not divided":                      words(`divide`),
	"divided by another number":        words(`divide`, `arm of the unknown`, `arm of its own`),
}

// toldOfSections are the kinds that only N, V and M know; the others are told as in a sum.
var toldOfSections = map[string]*regexp.Regexp{
	"sign reversed":                           words(`size is right`),
	"N and V exchanged":                       words(`along the member and shear across`, `along this member`),
	"not turned into the member's axes":       words(`inclined member`, `along and perpendicular`, `along this member`, `components`),
	"load beyond the cut":                     words(`beyond the cut`, `side of the cut`, `on the kept piece`, `lies? before`),
	"whole load for a partial piece":          words(`beyond the cut`, `side of the cut`, `up to the cut`, `on the kept piece`, `lies? before`, `how much of the load`, `covers`),
	"resultant before cutting":                words(`cut first`, `beyond the cut`, `on the kept piece`, `lies? before`, `how much of the load`, `covers`, `resultant`),
	"no step":                                 words(`jump`, `step`, `on which side of the cut`),
	"step the wrong way":                      words(`jump`, `step`, senseWords),
	"step in V at a couple":                   words(`couple`),
	"step in M at a point load":               words(`changes the slope`, `not its value`),
	"shear read as the load there":            words(`shear balances`, `forces on one side`, `add up`),
	"moment does not turn the corner":         words(`rigid (joint|corner)`, `passes`, `besides the loads`, `start of this member`),
	"N and V of the member before the corner": words(`corner`, `turn with the member`, `along this member`),
	"area of V with its sign lost":            words(`area`),
	"area of V without its half":              words(`half`, `triangle`, `area`),
	"straight line under a load":              words(`curve`, `straight`),
	"curve bulging the wrong way":             words(`bulge`, `chord`, `curve`),
	"moment zero at a fixed end":              words(`fixed`, `what can this end`, `pass`),
	"moment where there can be none":          words(`passes? no couple`, `free or can turn`, `no couple`, `what moment can`),
	"left out load":                           words(countWords, `loads`, `jump`, `area`, `kept piece`),
	"left out couple":                         words(countWords, `couple`, `jump`),
	"left out pin force":                      words(countWords, `start of this member`, `joint forces`, `at the joint`, `rigid joint`, `pin`, `kept piece besides`),
	"left out reaction":                       words(countWords, `start of this member`, `reaction`, `support`, `joint forces`, `kept piece besides`, `rigid joint`),
	"left out component":                      words(countWords, `component`, `jump`),
}

// attributes tells what of a term a kind alters, in the words of a question such as "with what arm does Cx enter".
func attribute(kind string) string {
	switch {
	case strings.HasPrefix(kind, "turned"), strings.Contains(kind, "sense"), strings.Contains(kind, "sign"), strings.Contains(kind, "minus"), strings.Contains(kind, "taken as normal"), strings.Contains(kind, "normal load"):
		return "sense|sign|direction|way"
	case strings.HasPrefix(kind, "left out"), kind == "product left out", strings.Contains(kind, "inside the body"), strings.Contains(kind, "next part"), strings.Contains(kind, "in a sum of forces"), strings.Contains(kind, "through the centre"), strings.Contains(kind, "across a pin"):
		return "count|size|value"
	case strings.Contains(kind, "arm"), strings.Contains(kind, "end"), strings.Contains(kind, "third of"), strings.Contains(kind, "middle"), strings.Contains(kind, "distance"), strings.Contains(kind, "slope distance"):
		return "arm|where|size"
	}
	return "size|value|arm|count"
}
