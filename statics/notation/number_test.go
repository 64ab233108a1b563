package notation

import (
	"slices"
	"testing"
)

func TestReadNumber(t *testing.T) {
	transcript(t, "numbers.txt", func(s setting, text string) string {
		n, err := ReadNumber(text, s.names, s.units, s.want)
		if err != nil {
			return faultText(err, text)
		}
		return n.String()
	})
}

func TestNames(t *testing.T) {
	for text, want := range map[string][]string{
		"4.5":                   nil,
		"h":                     {"h"},
		"h + w/2 - h":           {"h", "w"},
		"2h + 3 kN/m*sqrt(w_1)": {"h", "w_1"},
		"8 kN/m":                nil,
		"sin(a) lb ft kip plf":  {"a"},
		"h1'(h2)":               {"h1'", "h2"},
		"3/8 P":                 {"P"},
		"%":                     nil,
		"h +":                   {"h"},
		"":                      nil,
		"18 ft + h":             {"h"},
		"größe*2":               {"größe"},
	} {
		if got := Names(text); !slices.Equal(got, want) {
			t.Errorf("Names(%q) = %q, want %q", text, got, want)
		}
	}
}

func TestReservedWord(t *testing.T) {
	for _, word := range []string{"N", "kN", "MN", "lb", "lbf", "kip", "kips", "mm", "cm", "m", "in", "ft", "plf", "klf", "deg", "kNm", "Nmm", "lbft", "ftlb", "sqrt", "sin", "cos", "tan"} {
		if !ReservedWord(word) {
			t.Errorf("%s should be reserved", word)
		}
	}
	for _, word := range []string{"h", "w", "H", "M", "n", "k", "P", "L", "PL", "a1", "x", "kn", "min", "mN", "up", ""} {
		if ReservedWord(word) {
			t.Errorf("%s should not be reserved", word)
		}
	}
	letters := Units{"P", "L"}
	if !letters.Reserved("P") || !letters.Reserved("PL") || !letters.Reserved("m") || letters.Reserved("h") {
		t.Error("with letters, P and L are reserved beside the units")
	}
	if (Units{"kN", "m"}).Reserved("L") {
		t.Error("without letters, L is a name like any other")
	}
}
