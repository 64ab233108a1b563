package judging

import (
	"testing"

	"unpin/statics/slip"
)

// What is asked of several terms is asked once; what is asked of one alone, or of none, stays as it is.
func TestPutAll(t *testing.T) {
	t.Parallel()
	term := func(text string, several bool, works ...slip.Work) query {
		s := standingTerm{text: text, several: several, works: map[slip.Work]bool{}}
		for _, w := range works {
			s.works[w] = true
		}
		return s.ask()
	}
	a, b, c := term("4*3", true, slip.Copying), term("2*5", true, slip.Copying), term("7*6", true, slip.Multiplying)
	both, too := term("4*3", true, slip.Copying, slip.Moving), term("9*2", true, slip.Copying, slip.Moving)
	moved, divide := term("20", false, slip.Moving), plain("with RB*8 in the sum, what do you divide by")
	for want, all := range map[string][]query{
		"what is the product 4*3?":                                                           {a},
		"what are the products 4*3 and 2*5?":                                                 {a, b},
		"what are the products 4*3, 2*5 and 7*6?":                                            {a, b, c},
		"what are the products 4*3 and 2*5, and which sign does 20 have on the other side?":  {a, moved, b},
		"what is the product 4*3 and which sign does it have on the other side?":             {both},
		"what are the products 4*3 and 9*2, and which signs do they have on the other side?": {both, too},
		"what is the product 4*3, and with RB*8 in the sum, what do you divide by?":          {a, divide},
		"with RB*8 in the sum, what do you divide by, and what is the product 4*3?":          {divide, a, divide},
		"which signs do 20 and 3*1 have on the other side?":                                  {moved, term("3*1", true, slip.Moving)},
	} {
		if got := putAll(all); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
