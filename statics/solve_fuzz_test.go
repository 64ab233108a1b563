package statics

import "testing"

// FuzzSolve makes a frame of the bytes, each a choice of the generator, and solves it. It must agree with the oracle; a frame
// that is not determinate must be refused for reasons that hold, and mended by what is offered.
func FuzzSolve(f *testing.F) {
	for _, seed := range []string{"", "\x00", "pins and rollers", "\xff\x10\x80\x33\x07\x99\x42\x00\x01\x02", "slots, sleeves and guides on a ring of parts"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 400 {
			t.Skip("more choices than a frame of four parts takes")
		}
		pick := chosen(data)
		frame := randomFrame(pick, 4)
		if pick(0, 1) == 1 {
			frame = disturbed(pick, 4)
		}
		s, err := Solve(frame)
		if err != nil {
			t.Fatalf("%v\n%s", err, write(frame))
		}
		if err := agree(s, consult(frame)); err != nil {
			t.Fatalf("%v\n%s", err, write(frame))
		}
		if s.Values == nil {
			err = refusalFits(s)
		} else {
			err = followed(s)
		}
		if err != nil {
			t.Fatalf("%v\n%s", err, write(frame))
		}
	})
}

// chosen is a chooser that takes one byte for each choice, and where these end goes on as seeded does, so that every frame
// comes to an end.
func chosen(data []byte) chooser {
	rest := seeded(uint64(len(data)))
	return func(lo, hi int) int {
		if len(data) == 0 {
			return rest(lo, hi)
		}
		k := int(data[0]) % (hi - lo + 1)
		data = data[1:]
		return lo + k
	}
}

// followed reads the plan of a determinate frame step by step.
func followed(s *Solution) error {
	p := planReader{Solution: s, known: map[int]bool{}}
	for n, step := range s.Plan {
		if err := p.step(n, step); err != nil {
			return err
		}
	}
	return nil
}
