package problems

import (
	"flag"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// pulleyFrames is how many frames with pulleys are held against the reference.
var pulleyFrames = flag.Int("pulleys", 120, "how many frames with pulleys are held against the reference")

// TestPulleysAgainstReference holds frames with pulleys, made by chance and written as files, against a solver that shares
// nothing with the engine: it knows only what the file says, puts each pull where it leaves the rim, and solves the sums of all
// parts and pins at once in float64.
func TestPulleysAgainstReference(t *testing.T) {
	t.Parallel()
	frames := *pulleyFrames
	var worst float64
	solved, pulleys, values := 0, 0, 0
	for seed := uint64(0); solved < frames && seed < uint64(40*frames); seed++ {
		f := newRefFrame(rand.New(rand.NewPCG(seed, 11)))
		x, ok := f.solve()
		if !ok {
			continue
		}
		solved++
		p, err := Read("made.yaml", []byte(f.file()))
		if err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, f.file())
		}
		s, err := statics.Solve(p.Frame)
		if err != nil || s.Values == nil {
			t.Fatalf("seed %d: not solved: %v\n%s", seed, err, f.file())
		}
		for _, l := range f.loads {
			if l.rope {
				pulleys++
			}
		}
		off, n := f.compare(t, s, x)
		if values += n; off > 1e-9 {
			t.Errorf("seed %d: off by %.2g of the largest load\n%s", seed, off, f.file())
		}
		worst = max(worst, off)
	}
	t.Logf("%d frames, %d pulleys, %d values; the largest difference is %.2g of the largest value", solved, pulleys, values, worst)
	if solved < frames || pulleys < frames {
		t.Errorf("only %d frames with %d pulleys", solved, pulleys)
	}
}

// compare tells by how much forces and N, V, M differ, as a share of the largest, and how many were compared.
func (f *refFrame) compare(t *testing.T, s *statics.Solution, x []float64) (off float64, n int) {
	t.Helper()
	largest := 1.0
	for _, v := range x {
		largest = max(largest, math.Abs(v))
	}
	note := func(got, want float64, what string) {
		n++
		if d := math.Abs(got-want) / largest; d > off {
			if off = d; d > 1e-9 {
				t.Logf("%s is %.9g, want %.9g", what, got, want)
			}
		}
	}
	for i, force := range s.Forces {
		part := f.partOf(s.Frame.Members[s.Parts[force.On].Members[0]].Name)
		joint := s.Frame.Joints[force.Joint].Name
		var want float64
		switch u := f.at(force.Kind, joint, part); {
		case force.Couple:
			want = x[u.first+2]
		case u.roller:
			want = x[u.first]
		default:
			dx, dy := force.Along.X.Float(), force.Along.Y.Float()
			want = (dx*x[u.first] + dy*x[u.first+1]) / math.Hypot(dx, dy)
		}
		note(s.Values[i].Float(), want, force.Name)
	}
	for _, d := range s.Diagrams {
		member := s.Frame.Members[d.Member].Name
		for _, p := range d.Stretches {
			at := p.From.Add(p.Until.Sub(p.From).Mul(exact.MustParse("0.5"))) // clear of all that stands on the member
			v := p.At(at)
			want := f.section(x, member, at.Float())
			for q, got := range []float64{v.N.Float(), v.V.Float(), v.M.Float()} {
				note(got, want[q], fmt.Sprintf("%c of %s at %.3f", "NVM"[q], member, at.Float()))
			}
		}
	}
	return off, n
}
