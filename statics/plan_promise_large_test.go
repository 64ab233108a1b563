package statics

import (
	"fmt"
	"testing"
)

// TestPromiseOfLargeFrames holds the plans of frames of 8 to 20 parts against all sums of their parts, of the whole and of
// all connected groups of two and three bodies, searched by brute force: where a step says that none of these has only one
// unknown, none has (S10).
func TestPromiseOfLargeFrames(t *testing.T) {
	t.Parallel()
	frames, said := 500, map[Choice]int{}
	if testing.Short() {
		frames = 60
	}
	for seed := uint64(0); frames > 0; seed++ {
		pick := seeded(seed)
		s, err := Solve(randomFrame(pick, pick(8, 20)))
		if err != nil {
			t.Fatal(err)
		}
		if s.Values == nil || len(s.Parts) < 8 {
			continue
		}
		frames--
		if err := claimsAreTrue(s, said); err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, write(s.Frame))
		}
	}
	t.Logf("groups: %d, together: %d", said[SeveralParts], said[SolvedTogether])
	if said[SeveralParts] < 5 || said[SolvedTogether] < 5 {
		t.Errorf("too few steps say that a search found nothing: %v", said)
	}
}

// claimsAreTrue searches, at every step that says what was searched in vain, just that.
func claimsAreTrue(s *Solution, said map[Choice]int) error {
	b := newSmallFamily(s.Assembly)
	known := make([]bool, len(s.Forces))
	for n, step := range s.Plan {
		said[step.Why]++
		upTo := 0
		switch step.Why {
		case SeveralParts:
			upTo = 1
		case SolvedTogether:
			upTo = s.EveryGroupOf()
		}
		for _, body := range b.bodies {
			if whole := len(body) == s.Bodies(); upTo == 0 || len(body) > upTo && !whole {
				continue
			}
			if i := b.alone(body, known); i != None {
				return fmt.Errorf("step %d: a sum of %s has only %s unknown", n+1, bodyNames(s.Assembly, body), s.Forces[i].Name)
			}
		}
		for _, i := range step.Gives {
			known[i] = true
		}
	}
	return nil
}

// newSmallFamily has every body, every connected group of two and three, and the whole.
func newSmallFamily(a *Assembly) *bruteFamily {
	b := &bruteFamily{a: a}
	add := func(body FreeBody) {
		if b.connected(body) {
			b.bodies = append(b.bodies, body)
		}
	}
	for i := range a.Bodies() {
		add(FreeBody{i})
		for j := i + 1; j < a.Bodies(); j++ {
			add(FreeBody{i, j})
			for k := j + 1; k < a.Bodies(); k++ {
				add(FreeBody{i, j, k})
			}
		}
	}
	b.bodies = append(b.bodies, a.Whole())
	return b
}

// alone is an unknown that some sum of a body holds as its only one, or None.
func (b *bruteFamily) alone(body FreeBody, known []bool) int {
	var lines []int
	for i := range b.a.Forces {
		if !known[i] && b.sense(body, i) != 0 {
			lines = append(lines, i)
		}
	}
	found := None
	b.each(body, lines, func(factor bruteFactor) {
		held := None
		for _, i := range lines {
			if factor(b.a.Forces[i]).IsZero() {
				continue
			}
			if held != None {
				return
			}
			held = i
		}
		if held != None {
			found = held
		}
	})
	return found
}
