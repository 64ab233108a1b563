package main

import (
	"math"
	"strconv"
	"strings"
)

// vec is a point or a direction in the plane: x to the right, y up.
type vec struct{ x, y float64 }

func (a vec) add(b vec) vec         { return vec{a.x + b.x, a.y + b.y} }
func (a vec) sub(b vec) vec         { return vec{a.x - b.x, a.y - b.y} }
func (a vec) times(k float64) vec   { return vec{a.x * k, a.y * k} }
func (a vec) dot(b vec) float64     { return a.x*b.x + a.y*b.y }
func (a vec) cross(b vec) float64   { return a.x*b.y - a.y*b.x }
func (a vec) length() float64       { return math.Hypot(a.x, a.y) }
func (a vec) unit() vec             { return a.times(1 / a.length()) }
func (a vec) left() vec             { return vec{-a.y, a.x} }
func polar(degrees float64) vec     { return turned(degrees * math.Pi / 180) }
func turned(radians float64) vec    { return vec{math.Cos(radians), math.Sin(radians)} }
func near(a, b, scale float64) bool { return math.Abs(a-b) <= 1e-9*math.Max(scale, 1e-9) }
func zero(v float64) bool           { return math.Abs(v) < 1e-7 }
func largest(vs ...float64) (m float64) {
	for _, v := range vs {
		m = math.Max(m, math.Abs(v))
	}
	return m
}

// figures rounds v to n significant figures and writes them all, without an exponent.
func figures(v float64, n int) string {
	if zero(v) {
		return "0"
	}
	s := strconv.FormatFloat(v, 'e', n-1, 64)
	f, _ := strconv.ParseFloat(s, 64)
	_, power, _ := strings.Cut(s, "e")
	e, _ := strconv.Atoi(power)
	return strconv.FormatFloat(f, 'f', max(0, n-1-e), 64)
}

func value(s string) float64 {
	f, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic(err)
	}
	return f
}

// rounded is v as it stands once written with n significant figures.
func rounded(v float64, n int) float64 { return value(figures(v, n)) }

// halfUnit is half a unit in the nth significant figure of v, or zero where v ends within n figures.
func halfUnit(v float64, n int) float64 {
	if zero(v) || near(v, rounded(v, n), math.Abs(v)*1e-3) {
		return 0
	}
	return 0.5 * math.Pow(10, math.Floor(math.Log10(math.Abs(v)))-float64(n-1))
}

// swaps gives the numbers that arise when two neighbouring figures of a written number change places.
func swaps(s string) []string {
	var all []string
	for i := 0; i+1 < len(s); i++ {
		j := i + 1
		if s[j] == '.' {
			j++
		}
		if j >= len(s) || s[i] == '.' || s[i] == '-' || s[i] == s[j] {
			continue
		}
		b := []byte(s)
		b[i], b[j] = b[j], b[i]
		t := string(b)
		if lead := strings.TrimPrefix(t, "-"); len(lead) > 1 && lead[0] == '0' && lead[1] != '.' {
			continue
		}
		all = append(all, t)
	}
	return all
}
