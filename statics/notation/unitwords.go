package notation

import (
	"strings"

	"unpin/statics/exact"
)

// A measure is a unit by its size in SI units and its powers of force, length and angle.
type measure struct {
	size                 exact.Num
	force, length, angle int
}

// units are the units that may be read, in newtons, metres and degrees. Factors: NIST SP 811 (2008), appendix B.8; they
// are exact, since 1 lb = 0.45359237 kg and standard gravity is 9.80665 m/s², both by definition.
var units = map[string]measure{
	"N":   {size: exact.Int(1), force: 1},
	"kN":  {size: exact.Int(1000), force: 1},
	"MN":  {size: exact.Int(1_000_000), force: 1},
	"lb":  {size: exact.MustParse("4.4482216152605"), force: 1},
	"kip": {size: exact.MustParse("4448.2216152605"), force: 1},
	"mm":  {size: exact.MustParse("0.001"), length: 1},
	"cm":  {size: exact.MustParse("0.01"), length: 1},
	"m":   {size: exact.Int(1), length: 1},
	"in":  {size: exact.MustParse("0.0254"), length: 1},
	"ft":  {size: exact.MustParse("0.3048"), length: 1},
	"deg": {size: exact.Int(1), angle: 1},
}

// spellings are the other words for a unit. Those of reserved stand for it in any text, the rest only where no name of
// the problem is spelled so.
var (
	reserved = map[string]string{
		"lbf": "lb", "lbs": "lb", "kips": "kip", "plf": "lb/ft", "klf": "kip/ft",
	}
	spellings = map[string]string{
		"k": "kip", "kipf": "kip", "pli": "lb/in", "kli": "kip/in",
		"newton": "N", "newtons": "N", "kilonewton": "kN", "kilonewtons": "kN", "pound": "lb", "pounds": "lb",
		"metre": "m", "metres": "m", "meter": "m", "meters": "m", "foot": "ft", "feet": "ft", "inch": "in", "inches": "in", "ins": "in",
		"degree": "deg", "degrees": "deg", "°": "deg",
	}
)

// refused are words for what is no unit here, and what to write instead.
var refused = map[string][2]string{
	"kg":   {"kg is a mass", "write the weight in N or kN"},
	"g":    {"g is a mass", "write the weight in N or kN"},
	"t":    {"t is a mass", "write the weight in kN"},
	"kgf":  {"kgf is not read", "write the force in N or kN"},
	"ton":  {"there are several tons", "write the force in lb, kip or kN"},
	"tons": {"there are several tons", "write the force in lb, kip or kN"},
	"mN":   {"mN is a thousandth of a newton", "write MN or N"},
	"psf":  {"psf is a load on an area", "a spread load is here a force per length: lb/ft"},
	"ksf":  {"ksf is a load on an area", "a spread load is here a force per length: kip/ft"},
	"psi":  {"psi is a stress", "a spread load is here a force per length: lb/ft"},
	"ksi":  {"ksi is a stress", "a spread load is here a force per length: kip/ft"},
	"Pa":   {"Pa is a load on an area", "a spread load is here a force per length: N/m"},
	"kPa":  {"kPa is a load on an area", "a spread load is here a force per length: kN/m"},
	"MPa":  {"MPa is a stress", "a spread load is here a force per length: kN/m"},
	"km":   {"km is not read", "write the length in m"},
	"yd":   {"yd is not read", "write the length in ft"},
	"rad":  {"angles are in degrees", "write deg"},
}

// per is m·o^power.
func (m measure) times(o measure, power int) measure {
	size := m.size.Mul(o.size)
	if power < 0 {
		size = over(m.size, o.size)
	}
	return measure{size, m.force + power*o.force, m.length + power*o.length, m.angle + power*o.angle}
}

// over is a ÷ b for the size b of a unit, which is never nought.
func over(a, b exact.Num) exact.Num {
	q, err := a.Quo(b)
	if err != nil {
		panic("internal error: a unit of no size")
	}
	return q
}

// unitNamed is the unit spelled so, exactly or, if fold is set, in other capitals.
func unitNamed(word string, fold bool) (measure, bool) {
	if m, ok := unitSpelled(word); ok || !fold || refused[word][0] != "" {
		return m, ok
	}
	for _, force := range []string{"N", "kN", "MN", "lb", "kip"} {
		for _, rest := range []string{"", "m", "mm", "cm", "ft", "in"} {
			if m, ok := unitSpelled(force + rest); ok && strings.EqualFold(force+rest, word) {
				return m, true
			}
		}
	}
	return unitSpelled(strings.ToLower(word))
}

// unitSpelled is the unit of that word: a unit, another word for one, or a force and a length run together.
func unitSpelled(word string) (measure, bool) {
	if m, ok := units[word]; ok {
		return m, true
	}
	for _, words := range []map[string]string{reserved, spellings} {
		if w, ok := words[word]; ok {
			force, length, isRatio := strings.Cut(w, "/")
			if isRatio {
				return units[force].times(units[length], -1), true
			}
			return units[force], true
		}
	}
	return moment(word)
}

// moment is a force and a length run together: kNm, lbft, and ftlb with a length of the foot and inch first.
func moment(word string) (measure, bool) {
	for i := 1; i < len(word); i++ {
		x, y := units[word[:i]], units[word[i:]]
		first := word[:i]
		if x.force == 1 && y.length == 1 || y.force == 1 && (first == "ft" || first == "in") {
			return x.times(y, 1), true
		}
	}
	return measure{}, false
}
