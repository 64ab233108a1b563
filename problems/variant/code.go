package variant

import (
	"fmt"
	"strings"
	"unicode"
)

// alphabet are the signs of a code: digits and capitals without 0, 1, I, L and O, which are taken for each other.
const alphabet = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"

// A code has eight signs: the place, six for the draw, the highest first, and a check. With cᵢ the place of the i-th sign in
// the alphabet, Σ i·cᵢ and a number of the set come to 0 modulo 31. 31 is prime and the factors 1 to 8 differ, so one wrong
// sign and two exchanged neighbours are always seen.
const codeLength = 8

// Code writes down a draw for the problem at the source's place.
func (s Source) Code(d Draw) string {
	signs := make([]int, codeLength)
	signs[0] = s.Place - 1
	for i, rest := codeLength-2, int(d); i > 0; i-- {
		signs[i], rest = rest%31, rest/31
	}
	const eighth = 4 // 8·4 is 1 modulo 31
	signs[codeLength-1] = (31 - s.weigh(signs)) * eighth % 31
	var code strings.Builder
	for _, c := range signs {
		code.WriteByte(alphabet[c])
	}
	return code.String()
}

// weigh is what the signs and the set come to, modulo 31.
func (s Source) weigh(signs []int) int {
	sum := int(hashed("unpin code 1", s.Set) % 31)
	for i, c := range signs {
		sum += (i + 1) * c
	}
	return sum % 31
}

// Decode reads a code of this set: the place in it and the draw. Small letters, blanks and hyphens are let pass. The error says
// what is wrong with it.
func (s Source) Decode(code string) (place int, d Draw, err error) {
	text := strings.ToUpper(strings.Map(func(c rune) rune {
		if unicode.IsSpace(c) || strings.ContainsRune("-‐–", c) {
			return -1
		}
		return c
	}, code))
	if len([]rune(text)) != codeLength {
		return 0, 0, fmt.Errorf("the code %q has %d signs, not %d", code, len([]rune(text)), codeLength)
	}
	signs := make([]int, 0, codeLength)
	for _, c := range text {
		at := strings.IndexRune(alphabet, c)
		if at < 0 {
			return 0, 0, fmt.Errorf("%q is no sign of a code; %q may be misread (no code has 0, 1, I, L or O)", c, code)
		}
		signs = append(signs, at)
	}
	if s.weigh(signs) != 0 {
		return 0, 0, fmt.Errorf("the code %q is mistyped, or of another set than %s", code, s.Set)
	}
	for _, c := range signs[1 : codeLength-1] {
		d = d*31 + Draw(c)
	}
	return signs[0] + 1, d, nil
}
