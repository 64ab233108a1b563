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

func (m measure) powers() [3]int { return [3]int{m.force, m.length, m.angle} }

// times is m·o^power, for a power of +1 or −1.
func (m measure) times(o measure, power int) measure {
	size := m.size.Mul(o.size)
	if power < 0 {
		size = over(m.size, o.size)
	}
	return measure{size, m.force + power*o.force, m.length + power*o.length, m.angle + power*o.angle}
}

// over is a ÷ b for the size b of a unit, which is never zero.
func over(a, b exact.Num) exact.Num {
	q, err := a.Quo(b)
	if err != nil {
		panic("internal error: a unit of no size")
	}
	return q
}

// units are the units that may be read, in newtons, metres and degrees. Factors: NIST SP 811 (2008), appendix B; they
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

// reserved are the other words for a unit that no name of a problem may be spelled as.
var reserved = map[string]measure{
	"lbf": units["lb"], "lbs": units["lb"], "kips": units["kip"],
	"plf": units["lb"].times(units["ft"], -1), "klf": units["kip"].times(units["ft"], -1),
}

// spellings are words for a unit where no name is spelled so.
var spellings = map[string]measure{
	"k": units["kip"], "kipf": units["kip"], "kft": units["kip"].times(units["ft"], 1), "ftk": units["kip"].times(units["ft"], 1),
	"pli": units["lb"].times(units["in"], -1), "kli": units["kip"].times(units["in"], -1),
	"newton": units["N"], "newtons": units["N"], "kilonewton": units["kN"], "kilonewtons": units["kN"],
	"pound": units["lb"], "pounds": units["lb"],
	"metre": units["m"], "metres": units["m"], "meter": units["m"], "meters": units["m"],
	"foot": units["ft"], "feet": units["ft"], "inch": units["in"], "inches": units["in"], "ins": units["in"],
	"degree": units["deg"], "degrees": units["deg"], "°": units["deg"],
}

// refused are words for what is no unit here, and what to write instead.
var refused = map[string][2]string{
	"kg":   {"kg is a mass", "write the weight in N or kN"},
	"g":    {"g is a mass", "write the weight in N or kN"},
	"t":    {"t is a mass", "write the weight in kN"},
	"kgf":  {"kgf is not read here", "write the force in N or kN"},
	"ton":  {"there are several tons", "write the force in lb, kip or kN"},
	"tons": {"there are several tons", "write the force in lb, kip or kN"},
	"mN":   {"mN is a thousandth of a newton", "write MN or N"},
	"mn":   {"mn is not spelled as a unit", "write MN or N"},
	"psf":  {"psf is a load on an area", "a distributed load is here a force per length, such as lb/ft"},
	"ksf":  {"ksf is a load on an area", "a distributed load is here a force per length, such as kip/ft"},
	"psi":  {"psi is a stress", "a distributed load is here a force per length, such as lb/ft"},
	"ksi":  {"ksi is a stress", "a distributed load is here a force per length, such as kip/ft"},
	"Pa":   {"Pa is a load on an area", "a distributed load is here a force per length, such as N/m"},
	"kPa":  {"kPa is a load on an area", "a distributed load is here a force per length, such as kN/m"},
	"MPa":  {"MPa is a stress", "a distributed load is here a force per length, such as kN/m"},
	"km":   {"km is not read here", "write the length in m"},
	"yd":   {"yd is not read here", "write the length in ft"},
	"rad":  {"angles are in degrees", "write deg"},
}

// unitNamed is the unit spelled so; if fold is set also one in other capitals, but for MN, which mn might not mean.
func unitNamed(word string, fold bool) (measure, bool) {
	if m, ok := unitSpelled(word); ok || !fold || refused[word][0] != "" {
		return m, ok
	}
	for _, force := range []string{"N", "kN"} {
		for _, length := range append([]string{""}, lengthUnits...) {
			if strings.EqualFold(force+length, word) {
				return unitSpelled(force + length)
			}
		}
	}
	return unitSpelled(strings.ToLower(word))
}

// unitSpelled is the unit of that word: a unit, another word for one, or a force and a length run together.
func unitSpelled(word string) (measure, bool) {
	for _, words := range []map[string]measure{units, reserved, spellings} {
		if m, ok := words[word]; ok {
			return m, true
		}
	}
	return runTogether(word)
}

// runTogether is the unit of a moment without a sign in it: kNm, lbft; the foot and the inch may also stand first.
func runTogether(word string) (measure, bool) {
	for i := 1; i < len(word); i++ {
		first, x, y := word[:i], units[word[:i]], units[word[i:]]
		if x.force == 1 && y.length == 1 || y.force == 1 && (first == "ft" || first == "in") {
			return x.times(y, 1), true
		}
	}
	return measure{}, false
}
