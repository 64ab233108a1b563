package statics

import "math/bits"

// A marks is a set of small numbers.
type marks []uint64

func newMarks(n int) marks { return make(marks, (n+63)/64) }

func (m marks) set(i int) { m[i/64] |= 1 << (i % 64) }

func (m marks) clear(i int) { m[i/64] &^= 1 << (i % 64) }

// next is the least member from i on, or None.
func (m marks) next(i int) int {
	word := m[i/64] >> (i % 64) << (i % 64)
	for n := i / 64; ; word = m[n] {
		if word != 0 {
			return 64*n + bits.TrailingZeros64(word)
		}
		if n++; n == len(m) {
			return None
		}
	}
}
