package statics

import (
	"fmt"
	"testing"
	"time"

	"unpin/statics/exact"
)

// onFrames runs a benchmark on each of the shapes at each size.
func onFrames(b *testing.B, shapes []string, sizes []int, run func(*testing.B, Frame)) {
	for _, parts := range sizes {
		for _, shape := range shapes {
			b.Run(fmt.Sprintf("%s/%d", shape, parts), func(b *testing.B) {
				f := shaped(b, shape, parts)
				b.ReportAllocs()
				run(b, f)
			})
		}
	}
}

// BenchmarkSolve is the whole way from a frame to its forces, plan and internal forces.
func BenchmarkSolve(b *testing.B) {
	onFrames(b, chains, []int{3, 10, 30, 100}, wholeWay)
}

// BenchmarkSolveAndRead reads besides what is made when it is read first: the terms of all sums of the plan, and the stations.
func BenchmarkSolveAndRead(b *testing.B) {
	onFrames(b, chains, []int{3, 30, 100}, func(b *testing.B, f Frame) {
		for b.Loop() {
			s, err := Solve(f)
			if err != nil {
				b.Fatal(err)
			}
			for _, step := range s.Plan {
				for _, sum := range step.Sums {
					sum.Terms()
				}
			}
			for _, d := range s.Diagrams {
				d.Stations()
			}
		}
	})
}

// BenchmarkGrowth is the whole way from a hundred parts to a thousand. The numbers do not grow with the frame.
func BenchmarkGrowth(b *testing.B) {
	onFrames(b, chains, []int{100, 1000}, wholeWay)
}

func wholeWay(b *testing.B, f Frame) {
	for b.Loop() {
		if s, err := Solve(f); err != nil || s.Values == nil {
			b.Fatal("not solved", err)
		}
	}
}

// BenchmarkPhases takes the whole way apart, in µs a phase, and compares it with dense elimination in float64 of the
// same sums, factors and solution only. All take turns, so that a busy machine slows all alike.
func BenchmarkPhases(b *testing.B) {
	onFrames(b, chains, []int{3, 10, 30, 100, 300}, phases)
}

func phases(b *testing.B, f Frame) {
	a, err := Cut(f)
	if err != nil {
		b.Fatal(err)
	}
	matrix, right := dense(a)
	s := &Solution{}
	all := []struct {
		name string
		run  func()
		took time.Duration
	}{
		{name: "cut", run: func() { s.Assembly, _ = Cut(f) }},
		{name: "forces", run: func() {
			count, sums := s.count()
			s.Count, s.Values = count, s.forces(sums)
		}},
		{name: "plan", run: func() { s.Plan = s.plan(s.Values) }},
		{name: "NVM", run: func() { s.Diagrams = s.diagrams(s.Values) }},
		{name: "LU", run: func() { luSolve(matrix, right) }},
	}
	for b.Loop() {
		for i := range all {
			start := time.Now()
			all[i].run()
			all[i].took += time.Since(start)
		}
	}
	var whole time.Duration
	for i, phase := range all {
		b.ReportMetric(phase.took.Seconds()*1e6/float64(b.N), phase.name+"-µs")
		if i < len(all)-1 {
			whole += phase.took
		}
	}
	b.ReportMetric(float64(whole)/float64(all[len(all)-1].took), "×LU")
}

// BenchmarkLU is what dense elimination in float64 takes for the same sums: factors and solution only. A thousand parts
// make a matrix of 3,000 rows, which takes it seconds.
func BenchmarkLU(b *testing.B) {
	onFrames(b, []string{"beam", "bays"}, []int{3, 10, 30, 100, 1000}, func(b *testing.B, f Frame) {
		a, err := Cut(f)
		if err != nil {
			b.Fatal(err)
		}
		matrix, right := dense(a)
		for b.Loop() {
			if _, err := luSolve(matrix, right); err != nil {
				b.Fatal(err)
			}
		}
	})
}

// BenchmarkNotDeterminate is what a refusal takes, with its motions and what stays open.
func BenchmarkNotDeterminate(b *testing.B) {
	f := build(b, compoundBeam(30))
	f.Supports = append(f.Supports[:20:20], f.Supports[21:]...)
	f.Supports = append(f.Supports, Support{Joint: f.Connections[3].Joint, Kind: Roller, Along: Vector{exact.Int(0), exact.Int(1)}, On: None})
	for b.Loop() {
		s, err := Solve(f)
		if err != nil || s.Count.Determinacy() != IndeterminateUnstable {
			b.Fatal(s.Count, err)
		}
		s.Motions()
		s.Undetermined()
	}
}
