package statics

import "math/bits"

// A marks is a set of small numbers.
type marks []uint64

func newMarks(n int) marks { return make(marks, (n+63)/64) }

func (m marks) set(i int) { m[i/64] |= 1 << (i % 64) }

func (m marks) clear(i int) { m[i/64] &^= 1 << (i % 64) }

// turn takes i in, or out if it was in.
func (m marks) turn(i int) { m[i/64] ^= 1 << (i % 64) }

// next is the least member from i on, or None.
func (m marks) next(i int) int {
	for n := i / 64; n < len(m); n++ {
		word := m[n]
		if n == i/64 {
			word = word >> (i % 64) << (i % 64)
		}
		if word != 0 {
			return 64*n + bits.TrailingZeros64(word)
		}
	}
	return None
}

func (m marks) isEmpty() bool { return m.next(0) == None }

// inCommon is how many members both have.
func (m marks) inCommon(o marks) int {
	n := 0
	for w := range m {
		n += bits.OnesCount64(m[w] & o[w])
	}
	return n
}

// takeAway takes out the members of the other.
func (m marks) takeAway(o marks) {
	for w := range m {
		m[w] &^= o[w]
	}
}

// list lists the members in rising order.
func (m marks) list() []int {
	all := make([]int, 0, m.inCommon(m))
	for w, word := range m {
		for ; word != 0; word &= word - 1 {
			all = append(all, 64*w+bits.TrailingZeros64(word))
		}
	}
	return all
}
