package main

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// draft is a frame being made: the fields of a problem file in their text.
type draft struct {
	r        *rand.Rand
	joints   []string // "A: [0, 0]"
	places   map[string]vec
	members  []string
	pins     []string
	supports []string
	loads    []string
	chains   [][]string // members in one line or walk, for a load over several
	used     map[string]bool
}

func (d *draft) joint(name string, x, y float64) {
	d.joints = append(d.joints, fmt.Sprintf("%s: [%g, %g]", name, x, y))
	d.places[name] = vec{x, y}
}

// halves draws a length between lo and hi in steps of 0.5.
func (d *draft) halves(lo, hi float64) float64 {
	return lo + 0.5*float64(d.r.IntN(int(2*(hi-lo))+1))
}

func (d *draft) pick(words ...string) string { return words[d.r.IntN(len(words))] }

func (d *draft) chance(percent int) bool { return d.r.IntN(100) < percent }

// roller draws a roller, upright more often than not.
func (d *draft) roller(joint string) string {
	return joint + ": {roller: " + d.pick("up", "up", "up", "60deg", "120deg", "75deg", "[3, 4]", "[-3, 4]", "[5, 12]", "[-1, 2]", "70deg") + "}"
}

var shapes = []func(*draft){
	overhang, bracket, inclined, compound, compound, portal, portal, gable, aframe, prop, propped, portalWithBeam, twoGables, leaning,
}

// overhang is a beam on a pin and a roller that goes on beyond one or both.
func overhang(d *draft) {
	x := 0.0
	d.joint("A", 0, 0)
	left := d.chance(40)
	last := "A"
	for _, name := range []string{"B", "C", "D"} {
		if name == "D" && !left {
			break
		}
		x += d.halves(1.5, 6)
		d.joint(name, x, 0)
		d.member(last, name)
		last = name
	}
	if left {
		d.supports = []string{"B: pin", d.roller("C")}
	} else {
		d.supports = []string{"A: pin", d.roller("B")}
	}
	d.chains = [][]string{d.members}
}

// member joins two joints; now and then it is named the other way round.
func (d *draft) member(a, b string) {
	if d.chance(12) {
		a, b = b, a
	}
	d.members = append(d.members, a+b)
}

// bracket is fixed at its foot and bent once or twice.
func bracket(d *draft) {
	h := d.halves(2, 5)
	d.joint("A", 0, 0)
	d.joint("B", 0, h)
	x := d.halves(2, 5)
	d.joint("C", x, h+d.halves(-1, 2))
	d.member("A", "B")
	d.member("B", "C")
	if d.chance(40) {
		d.joint("D", x+d.halves(1, 3), h-d.halves(0, 1.5))
		d.member("C", "D")
	}
	d.supports = []string{"A: fixed"}
}

// inclined is one or two members in a slope, with a roller at the top or at the foot.
func inclined(d *draft) {
	d.joint("A", 0, 0)
	slope := [][2]float64{{4, 3}, {3, 4}, {6, 2.5}, {5, 2}, {4, 1.5}, {2.5, 6}, {3, 2}, {4, 4}}[d.r.IntN(8)]
	d.joint("B", slope[0], slope[1])
	d.member("A", "B")
	last := "B"
	if d.chance(50) {
		d.joint("C", slope[0]+d.halves(2, 4), slope[1]+d.halves(-1, 1.5))
		d.member("B", "C")
		last = "C"
	}
	if d.chance(25) {
		d.supports = []string{"A: {roller: up}", last + ": pin"}
		return
	}
	d.supports = []string{"A: pin", d.roller(last)}
	if d.chance(30) {
		d.supports[1] = last + ": {roller: " + d.pick("left", "150deg", "[-4, 3]") + "}"
	}
}

// compound is a beam of two to six parts: the first is fixed or on a guide or on two supports, each further one hangs on a
// hinge and stands on a roller.
func compound(d *draft) {
	n := 2 + d.r.IntN(3)
	if d.chance(15) {
		n = 6
	}
	x, letter := 0.0, 0
	next := func() string {
		name := string(rune('A' + letter))
		letter++
		d.joint(name, x, 0)
		return name
	}
	at := next()
	step := func() {
		x += d.halves(1.5, 5)
		to := next()
		d.member(at, to)
		at = to
	}
	if d.chance(55) {
		d.supports = append(d.supports, "A: fixed")
	} else {
		d.supports = append(d.supports, "A: pin")
		step()
		d.supports = append(d.supports, d.roller(at))
	}
	for range n - 1 {
		step()
		d.pins = append(d.pins, at+": all")
		step()
		d.supports = append(d.supports, d.roller(at))
	}
	if d.chance(50) {
		step()
	}
	d.chains = [][]string{d.members}
}

// portal has pinned feet, level or not, and a pin in its beam or at a corner.
func portal(d *draft) {
	h := d.halves(3, 6)
	foot := 0.0
	if d.chance(60) {
		foot = d.halves(-1.5, 1.5)
	}
	x := d.halves(2, 5)
	d.joint("A", 0, 0)
	d.joint("B", 0, h)
	d.member("A", "B")
	if d.chance(25) { // the pin at the corner
		w := d.halves(4, 8)
		d.joint("C", w, h)
		d.joint("D", w+d.halves(0, 1), foot)
		d.member("B", "C")
		d.member("C", "D")
		d.pins = []string{"C: all"}
		d.supports = []string{"A: pin", "D: pin"}
		return
	}
	w := x + d.halves(2, 5)
	d.joint("C", x, h)
	d.joint("D", w, h)
	d.joint("E", w, foot)
	d.member("B", "C")
	d.member("C", "D")
	d.member("D", "E")
	d.pins = []string{"C: all"}
	d.supports = []string{"A: pin", "E: pin"}
	d.chains = [][]string{d.members[1:3]}
}

// gable is a three-pinned frame with sloping rafters.
func gable(d *draft) {
	h := d.halves(2.5, 4.5)
	foot := 0.0
	if d.chance(40) {
		foot = d.halves(-1, 1.5)
	}
	x := d.halves(2.5, 5)
	w := x + d.halves(2.5, 5)
	d.joint("A", 0, 0)
	d.joint("B", 0, h)
	d.joint("C", x, h+d.halves(1, 2.5))
	d.joint("D", w, h)
	d.joint("E", w, foot)
	for _, ab := range []string{"AB", "BC", "CD", "DE"} {
		d.member(ab[:1], ab[1:])
	}
	d.pins = []string{"C: all"}
	d.supports = []string{"A: pin", "E: pin"}
	d.chains = [][]string{d.members[1:3]}
}

// aframe has two legs pinned at the top, a tie between them, a pin and a roller at the feet.
func aframe(d *draft) {
	k := d.halves(1, 2)
	l := d.halves(1, 2)
	h := d.halves(1.5, 2.5)
	d.joint("A", 0, 0)
	d.joint("B", 2*k, 2*h)
	d.joint("C", 2*k+2*l, 0)
	d.joint("D", k, h)
	d.joint("E", 2*k+l, h)
	d.members = append(d.members, "AD", "DB", "BE", "EC", "DE")
	d.pins = []string{"B: all", "D: [DE]", "E: [DE]"}
	d.supports = []string{"A: pin", "C: {roller: up}"}
}

// prop is a beam pinned to a wall and carried by an inclined member from below or above.
func prop(d *draft) {
	a, b := d.halves(1.5, 3.5), d.halves(1, 2.5)
	d.joint("A", 0, 0)
	d.joint("B", a, 0)
	d.joint("C", a+b, d.halves(-1, 1))
	d.joint("D", 0, d.halves(1.5, 4)*float64(1-2*d.r.IntN(2)))
	d.member("A", "B")
	d.member("B", "C")
	d.members = append(d.members, "BD")
	d.pins = []string{"B: [BD]"}
	d.supports = []string{"A: pin", "D: pin"}
	if d.chance(30) {
		d.supports = []string{"A: pin", "D: pin"}
	}
}

// propped is a mast fixed at its foot with a beam hinged to it that stands on a roller or a leg.
func propped(d *draft) {
	h, w := d.halves(3, 5), d.halves(3, 6)
	d.joint("A", 0, 0)
	d.joint("B", 0, h)
	d.joint("C", w, h+d.halves(-1, 1.5))
	d.member("A", "B")
	d.member("B", "C")
	d.pins = []string{"B: all"}
	d.supports = []string{"A: fixed", d.roller("C")}
	if d.chance(40) {
		d.joint("D", w+d.halves(0, 2), d.halves(-1, 1))
		d.member("C", "D")
		d.supports[1] = d.roller("D")
	}
}

// portalWithBeam is a portal with a beam hinged to its side that goes out to a roller, and perhaps another beyond.
func portalWithBeam(d *draft) {
	portal(d)
	if len(d.joints) < 5 {
		return
	}
	e, x := d.places["D"], d.halves(2, 4)
	d.joint("F", e.x+x, e.y+d.halves(-1, 0.5))
	d.members = append(d.members, "DF")
	d.pins = append(d.pins, "D: [DF]")
	d.supports = append(d.supports, d.roller("F"))
	if d.chance(40) {
		d.joint("G", e.x+x+d.halves(1, 2), e.y)
		d.joint("H", e.x+x+d.halves(3, 5), e.y)
		d.member("F", "G")
		d.member("G", "H")
		d.pins = append(d.pins, "G: all")
		d.supports = append(d.supports, d.roller("H"))
	}
}

// twoGables is a gable with a lean-to hinged to its corner, whose post stands on a roller.
func twoGables(d *draft) {
	gable(d)
	c := d.places["D"]
	x := d.halves(2, 4)
	d.joint("F", c.x+x, c.y-d.halves(0.5, 1.5))
	d.joint("G", c.x+x, 0)
	d.members = append(d.members, "DF", "FG")
	d.pins = append(d.pins, "D: [DF]")
	d.supports = append(d.supports, d.roller("G"))
}

// leaning is a rigid portal on a pin and a roller, its posts inclined.
func leaning(d *draft) {
	h, w := d.halves(3, 5), d.halves(4, 7)
	d.joint("A", 0, 0)
	d.joint("B", d.halves(0.5, 2), h)
	d.joint("C", w, h+d.halves(-1, 1))
	d.joint("D", w+d.halves(-1, 1.5), d.halves(-1, 1))
	for _, ab := range []string{"AB", "BC", "CD"} {
		d.member(ab[:1], ab[1:])
	}
	d.supports = []string{"A: pin", d.roller("D")}
}

// text is the problem file.
func (d *draft) text(title string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "title: %s\nunits: kN m\njoints: {%s}\n", title, strings.Join(d.joints, ", "))
	fmt.Fprintf(&b, "members: [%s]\npins: {%s}\nsupports: {%s}\nloads:\n", strings.Join(d.members, ", "), strings.Join(d.pins, ", "), strings.Join(d.supports, ", "))
	for _, l := range d.loads {
		fmt.Fprintf(&b, "  - %s\n", l)
	}
	return b.String()
}
