package notation

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"unpin/statics/exact"
)

func TestReadSum(t *testing.T) {
	transcript(t, "sums.txt", func(s setting, text string) string {
		sum, err := ReadSum(text, s.units, func(name string) bool {
			return slices.ContainsFunc(s.forms, func(force string) bool { return NameMatches(name, force) })
		})
		if err != nil {
			return faultText(err, text)
		}
		return sumText(text, sum)
	})
}

// sumText has a line for every term: its sign, its factors as typed with their values, and what they come to.
func sumText(text string, s TypedSum) string {
	var lines []string
	for i, side := range [][]TypedTerm{s.Left, s.Right} {
		for _, t := range side {
			line := fmt.Sprintf("%s %+d [%s]", [2]string{"left ", "right"}[i], t.Sign, text[t.Start:t.End])
			for _, f := range t.Factors {
				line += fmt.Sprintf(" %s%s=%s", map[bool]string{true: "/"}[f.Under], text[f.Start:f.End], f.Value)
			}
			lines = append(lines, strings.TrimSpace(line+" "+t.Force)+" → "+t.Value.String())
		}
	}
	if len(lines) == 0 {
		return "no terms"
	}
	return strings.Join(lines, "\n")
}

// A term's value is its sign times its factors, and the sum's coefficients are those of its terms.
func TestTypedSumAddsUp(t *testing.T) {
	forces := func(name string) bool { return name == "Cy" || name == "Cx" || name == "C_y" }
	s, err := ReadSum("6*2.4 + 15(7.2)/2 - 2(Cy - 3)*7.2 = -C_y*1.2 + 4 - 3Cx", Units{"kN", "m"}, forces)
	if err != nil {
		t.Fatal(err)
	}
	for _, term := range s.Terms() {
		v := exact.MustParse(fmt.Sprint(term.Sign))
		for _, f := range term.Factors {
			if f.Under {
				v = over(v, f.Value)
			} else {
				v = v.Mul(f.Value)
			}
		}
		if !v.Equal(term.Value) {
			t.Errorf("term %v comes to %s", term, v)
		}
	}
	// −14.4 + 1.2, and 14.4 + 54 + 43.2 − 4 by hand
	for name, want := range map[string]string{"Cy": "-13.2", "Cx": "3", "": "107.6", "Dy": "0"} {
		if got := s.Coefficient(name); !got.Equal(exact.MustParse(want)) {
			t.Errorf("coefficient of %q is %s, not %s", name, got, want)
		}
	}
}
