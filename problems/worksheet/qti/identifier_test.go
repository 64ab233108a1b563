package qti

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

// ncName is a name without colons of Namespaces in XML 1.0, of ASCII.
var ncName = regexp.MustCompile(`^[A-Za-z_][A-Za-z0-9._-]*$`)

func TestIdentifier(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		"Cy": "Cy", "V(BC, 2.4 after)": "V_BC_2.4_after", "x of V = 0 in BC from 0 to 20/3": "x_of_V_0_in_BC_from_0_to_20_3",
		"F_BD": "F_BD", "riding-hall": "riding-hall", "": "n", "..": "n", "3 bays": "n3_bays", "Träger": "Tr_ger",
	} {
		if got := identifier(text); got != want {
			t.Errorf("%q becomes %q, want %q", text, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		id := identifier(rapid.String().Draw(t, "text"))
		if !ncName.MatchString(id) || identifier(id) != id {
			t.Fatalf("%q is no name", id)
		}
	})
}

func TestUnique(t *testing.T) {
	t.Parallel()
	used := map[string]bool{}
	for _, want := range []string{"MA", "MA_2", "Ma_3"} {
		if got := unique(used, want[:2]); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
