package notation

import (
	"fmt"
	"strings"
	"testing"

	"unpin/statics/exact"
)

func TestReadAnswer(t *testing.T) {
	transcript(t, "answers.txt", func(s setting, text string) string {
		a, err := ReadAnswer(text, s.units, s.want)
		if err != nil {
			return faultText(err, text)
		}
		return answerText(a)
	})
}

// answerText tells all that an answer holds.
func answerText(a Answer) string {
	parts := []string{a.Value.String()}
	if a.Literal == a.Expression {
		parts = append(parts, "LITERAL AND EXPRESSION AT ONCE")
	}
	if a.Literal {
		parts = append(parts, fmt.Sprintf("written %s to %d places and %d figures", a.Written, a.Places, a.Figures))
		if !a.Scale.Equal(one) {
			parts = append(parts, "scale "+a.Scale.String())
		}
	}
	if a.Unit != "" {
		parts = append(parts, "unit "+a.Unit)
	}
	if a.Sense != NoSense {
		parts = append(parts, a.Sense.String())
	}
	if a.Side != NoSense {
		parts = append(parts, "side "+a.Side.String())
	}
	return strings.Join(parts, ", ")
}

// A literal's Value is Written times Scale, so that a judge may round in the unit that was typed.
func TestLiteralScale(t *testing.T) {
	u := Units{"kip", "ft"}
	for _, text := range []string{"9.5", "-9,5 lb", "12000 N", "3 kN up", "+0.5 kip", "−0.250"} {
		a, err := ReadAnswer(text, u, Force)
		if err != nil {
			t.Fatal(err)
		}
		written := exact.MustParse(a.Written.String())
		if !a.Literal || !a.Value.Equal(written.Mul(a.Scale)) {
			t.Errorf("%s: value %s is not %s × %s", text, a.Value, written, a.Scale)
		}
	}
}

// A text that asks for much work is refused, or comes to a number that is not long. A test that hangs here has lost a bound.
func TestHostileText(t *testing.T) {
	for name, text := range hostile() {
		a, err := ReadAnswer(text, Units{"kN", "m"}, Force)
		switch {
		case strings.HasPrefix(name, "bad") && err == nil:
			t.Errorf("%s is read", name)
		case err == nil && len(a.Value.String()) > 5000:
			t.Errorf("%s comes to %d digits", name, len(a.Value.String()))
		}
	}
}

// hostile are texts that ask for much work; those named bad are refused.
func hostile() map[string]string {
	digits := strings.Repeat("9", maxDigits)
	primes := []int{2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97}
	var roots, factors, over strings.Builder
	for _, p := range primes {
		fmt.Fprintf(&roots, "+sqrt(%d)", p)
		fmt.Fprintf(&factors, "(1+sqrt(%d))", p)
		fmt.Fprintf(&over, "/(1+sqrt(%d))", p)
	}
	return map[string]string{
		"bad brackets":       strings.Repeat("(", 4000),
		"bad nested pairs":   strings.Repeat("(", 200) + "1" + strings.Repeat(")", 200),
		"bad signs":          strings.Repeat("-", 4000),
		"bad roots of roots": strings.Repeat("√", 4000) + "2",
		"bad long number":    strings.Repeat("9", 4000),
		"bad long name":      strings.Repeat("x", 4000),
		"bad long text":      strings.Repeat("1+", 4000) + "1",
		"bad many numbers":   strings.Repeat("1+", 1000) + "1",
		"bad unit powers":    "1 " + strings.Repeat("lb*", 1000) + "lb",
		"bad many words":     strings.Repeat("up ", 1000),
		"bad products":       strings.TrimSuffix(strings.Repeat(digits+"*", 90), "*"),
		"quotients":          strings.TrimSuffix(strings.Repeat("1/"+digits+"/", 45), "/"),
		"sum of roots":       roots.String(),
		"over sum of roots":  "1/(" + roots.String() + ")",
		"product of roots":   factors.String(),
		"over roots":         "1" + over.String(),
		"big roots":          strings.TrimSuffix(strings.Repeat("sqrt("+digits+"*"+digits+")*", 45), "*"),
		"sines":              strings.TrimSuffix(strings.Repeat("sin("+digits+"/7)+", 90), "+"),
	}
}

// testdata/functions.txt holds functions of x as they are typed, with the polynomial read, lowest power first.
func TestReadFunction(t *testing.T) {
	t.Parallel()
	transcript(t, "functions.txt", func(s setting, text string) string {
		p, err := ReadFunction(text, s.units, s.want)
		if err != nil {
			return faultText(err, text)
		}
		var powers []string
		for _, k := range p {
			powers = append(powers, k.String())
		}
		return strings.Join(powers, " ")
	})
}
