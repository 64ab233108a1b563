package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
)

// newDraft draws a frame and its loads; the same seed gives the same file.
func newDraft(seed uint64) *draft {
	d := &draft{r: rand.New(rand.NewPCG(seed, 0x5eed)), places: map[string]vec{}, used: map[string]bool{}}
	shapes[d.r.IntN(len(shapes))](d)
	n := 2 + d.r.IntN(3) + len(d.pins)/2
	for range n {
		d.addLoad()
	}
	return d
}

// amount draws a number not used before in this frame, so that a load can be known by it.
func (d *draft) amount(lo, hi int) string {
	for {
		v := float64(lo + d.r.IntN(hi-lo+1))
		if d.chance(30) {
			v += float64(1+d.r.IntN(9)) / 10
		}
		s := strconv.FormatFloat(v, 'g', -1, 64)
		if !d.used[s] {
			d.used[s] = true
			return s
		}
	}
}

func (d *draft) span(m string) vec { return d.places[m[1:]].sub(d.places[m[:1]]) }

func (d *draft) addLoad() {
	m := d.members[d.r.IntN(len(d.members))]
	span := d.span(m)
	level, upright := zero(span.y), zero(span.x)
	switch k := d.r.IntN(100); {
	case k < 34:
		d.addPoint(m, span, level, upright)
	case k < 46:
		d.loads = append(d.loads, fmt.Sprintf("{couple: %s, to: %s, on: %s, at: %s}", d.amount(5, 40), d.pick("cw", "ccw"), m, d.along(span.length())))
	case k < 54 && len(d.chains) > 0:
		d.addLong()
	case k < 78:
		d.loads = append(d.loads, fmt.Sprintf("{uniform: %s, to: %s, on: %s%s%s}", d.amount(2, 12), d.across(level, upright), m, d.stretch(span.length()), d.per(level, upright)))
	default:
		a, b := d.amount(2, 12), d.amount(2, 14)
		if d.chance(35) {
			a = "0"
		} else if d.chance(35) {
			b = "0"
		}
		d.loads = append(d.loads, fmt.Sprintf("{ramp: [%s, %s], to: %s, on: %s%s%s}", a, b, d.across(level, upright), m, d.stretch(span.length()), d.per(level, upright)))
	}
}

func (d *draft) addPoint(m string, span vec, level, upright bool) {
	to := d.pick("down", "down", "right", "[3, -4]", "[-4, -3]", "[5, -12]", "[-1, -2]", "250deg", "300deg", "225deg", "215deg", "290deg", "normal")
	if level && d.chance(40) {
		to = "down"
	}
	if upright && d.chance(60) {
		to = d.pick("right", "left")
	}
	if d.chance(15) {
		d.loads = append(d.loads, fmt.Sprintf("{point: %s, to: %s, joint: %s, on: %s}", d.amount(5, 40), to, d.pick(m[:1], m[1:]), m))
		return
	}
	at := d.along(span.length())
	if !level && !upright && d.chance(40) {
		at = d.along(math.Abs(span.x)) + " run"
	}
	d.loads = append(d.loads, fmt.Sprintf("{point: %s, to: %s, on: %s, at: %s}", d.amount(5, 40), to, m, at))
}

// along draws a distance well within a length.
func (d *draft) along(length float64) string {
	steps := int(length*10) - 8
	return strconv.FormatFloat(float64(4+d.r.IntN(max(steps, 1)))/10, 'g', -1, 64)
}

func (d *draft) across(level, upright bool) string {
	switch {
	case level:
		return d.pick("down", "down", "down", "normal")
	case upright:
		return d.pick("right", "left", "right")
	}
	return d.pick("down", "down", "normal", "right")
}

func (d *draft) per(level, upright bool) string {
	if level || upright || d.chance(45) {
		return ""
	}
	return ", per: " + d.pick("run", "run", "rise")
}

// stretch is now and then only a piece of the member.
func (d *draft) stretch(length float64) string {
	if length < 2 || d.chance(60) {
		return ""
	}
	cut := strconv.FormatFloat(float64(5+d.r.IntN(int(length*10)-10))/10, 'g', -1, 64)
	if d.chance(50) {
		return ", from: " + cut
	}
	return ", until: " + cut
}

// addLong is one load over several members of a walk.
func (d *draft) addLong() {
	chain := d.chains[d.r.IntN(len(d.chains))]
	if len(chain) < 2 {
		return
	}
	i := d.r.IntN(len(chain) - 1)
	n := 2 + d.r.IntN(len(chain)-i-1)
	d.loads = append(d.loads, fmt.Sprintf("{uniform: %s, to: down, on: [%s]}", d.amount(2, 12), strings.Join(chain[i:i+n], ", ")))
}
