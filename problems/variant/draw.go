package variant

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
)

// A Draw is a number from 0 to Draws−1, from which the numbers of a copy follow.
type Draw uint32

// Draws is how many draws there are: six signs of 31.
const Draws = 31 * 31 * 31 * 31 * 31 * 31

// Next is the draw that is tried when this one gives no good copy.
func (d Draw) Next() Draw { return (d + 1) % Draws }

// pick is which of n choices a draw makes for the change at a place.
func (d Draw) pick(place, n int) int {
	return int(hashed("unpin draw 1", fmt.Sprint(uint32(d)), fmt.Sprint(place)) % uint64(n))
}

// hashed is a number from texts, each of which is ended by a zero byte so that no two lists are one: the first eight bytes of their SHA-256, the
// highest first.
func hashed(texts ...string) uint64 {
	var all []byte
	for _, t := range texts {
		all = append(append(all, t...), 0)
	}
	sum := sha256.Sum256(all)
	return binary.BigEndian.Uint64(sum[:8])
}

// A Source is what the draws of a problem's copies are taken from.
type Source struct {
	Set   string // the id of the set, or the name of a problem by itself
	Seed  string // known to the instructor alone
	Place int    // of the problem in the set, 1 to MostPlaces
}

// MostPlaces is how many problems a set can have, since the place is one sign of a code.
const MostPlaces = 31

// First is the draw that is tried first for a student's attempt, which counts from 1.
func (s Source) First(student string, attempt int) Draw {
	return Draw(hashed("unpin first 1", s.Set, s.Seed, fmt.Sprint(s.Place), student, fmt.Sprint(attempt)) % Draws)
}
