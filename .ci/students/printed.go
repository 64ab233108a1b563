package main

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// product is one term of a sum as it stands on the page: 4*3*9.5 or Cx*5.
type product struct {
	text    string // without its sign
	sign    float64
	factors []string
	name    string // of the force in it, if any
}

// worth is what it comes to; a force not known counts as 1.
func (p product) worth(known map[string]float64) float64 {
	w := p.sign
	for _, f := range p.factors {
		w *= fraction(f)
	}
	if v, ok := known[p.name]; ok {
		w *= v
	}
	return w
}

// written is a factor as it is printed: a decimal, or a ratio such as 12/13.
var written = regexp.MustCompile(`^\d+(\.\d+)?(/\d+(\.\d+)?)?$`)

// printedSum reads a line such as "-Cx*6 + 2*3*1.5 - 17 = 0"; nil if it is none.
func printedSum(line string) []product {
	left, ok := strings.CutSuffix(line, " = 0")
	if !ok {
		return nil
	}
	var all []product
	s := 1.0
	for _, word := range strings.Fields(left) {
		switch word {
		case "+":
			s = 1
			continue
		case "-":
			s = -1
			continue
		}
		if rest, ok := strings.CutPrefix(word, "-"); ok {
			s, word = -s, rest
		}
		p := product{text: word, sign: s}
		for _, f := range strings.Split(word, "*") {
			if written.MatchString(f) {
				p.factors = append(p.factors, f)
			} else if p.name == "" && !strings.ContainsAny(f, "()/") {
				p.name = f
			} else {
				return nil
			}
		}
		all = append(all, p)
		s = 1
	}
	return all
}

// sums gives the printed sums of a page.
func sums(page []string) [][]product {
	var all [][]product
	for _, line := range page {
		if p := printedSum(line); p != nil {
			all = append(all, p)
		}
	}
	return all
}

// handling is a mistake in working out a printed sum: one product comes to something else.
type handling struct {
	kind  string
	i     int // which product
	worth float64
}

// handlings lists the mistakes with products of a printed sum; the products of the unknowns sought stand.
func handlings(sum []product, sought []string, known map[string]float64) []handling {
	var all []handling
	for i, p := range sum {
		if contains(sought, p.name) {
			continue
		}
		w := p.worth(known)
		add := func(kind string, worth float64) {
			if differ(worth, w) {
				all = append(all, handling{kind, i, worth})
			}
		}
		add("product left out", 0)
		add("product moved with its sign", -w)
		for _, s := range slipped(figures(w, 3)) {
			add("arithmetic of a product", value(s))
		}
		if len(p.factors) > 1 || p.name != "" {
			for _, f := range p.factors {
				if v := fraction(f); !zero(v) && differ(v, 1) {
					add("factor left out", w/v)
				}
			}
		}
		for _, f := range p.factors {
			if strings.Contains(f, "/") {
				continue
			}
			for _, s := range swaps(f) {
				add("figures of a number exchanged", w/value(f)*value(s))
			}
			for _, s := range slipped(f) {
				add("one figure of a number miscopied", w/value(f)*value(s))
			}
		}
		if v, ok := known[p.name]; ok && !zero(v) {
			for name, other := range known {
				if name != p.name && name[0] != 'M' && p.name[0] != 'M' && !zero(other) && differ(other, v) && differ(other, -v) {
					add("value of another force put in", w/v*other)
				}
			}
			if v < 0 {
				add("minus of a known force lost", -w)
			}
		}
	}
	return all
}

// slipped gives a written number with one of its first two figures one too high or too low.
func slipped(s string) []string {
	var all []string
	n := 0
	for i := 0; i < len(s) && n < 2; i++ {
		if s[i] < '0' || s[i] > '9' || n == 0 && s[i] == '0' {
			continue
		}
		n++
		for _, by := range []int{1, -1} {
			c := int(s[i]-'0') + by
			if c < 0 || c > 9 || n == 1 && c == 0 {
				continue
			}
			all = append(all, s[:i]+strconv.Itoa(c)+s[i+1:])
		}
	}
	return all
}

func contains(all []string, s string) bool {
	for _, a := range all {
		if a == s {
			return true
		}
	}
	return false
}

// settle solves m sums of m unknowns with rests; false where they have no single answer.
func settle(k [][]float64, rest []float64) ([]float64, bool) {
	if len(k) == 1 {
		return []float64{-rest[0] / k[0][0]}, !zero(k[0][0])
	}
	if len(k) != 2 {
		return nil, false
	}
	d := k[0][0]*k[1][1] - k[0][1]*k[1][0]
	if math.Abs(d) < 1e-6 {
		return nil, false
	}
	return []float64{(-rest[0]*k[1][1] + rest[1]*k[0][1]) / d, (-k[0][0]*rest[1] + k[1][0]*rest[0]) / d}, true
}
