package wording_test

import (
	"fmt"
	"math/rand/v2"
	"path/filepath"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

var style = notation.Style{}

// TestReasonsAreTrue reads every reason of every step, of problems and of frames grown by chance, plain and with two-force
// members used at once, and holds each claim in it against the frame. A sentence that says something else fails.
func TestReasonsAreTrue(t *testing.T) {
	t.Parallel()
	said := map[string]int{}
	for name, f := range problemFrames(t) {
		if err := reasonsAreTrue(f, said); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	frames := 400
	if testing.Short() {
		frames = 60
	}
	sound := 0
	for seed := uint64(0); sound < frames; seed++ {
		f := grown(rand.New(rand.NewPCG(seed, 7)))
		if s, err := statics.Solve(f); err != nil || s.Values == nil {
			continue
		}
		sound++
		if err := reasonsAreTrue(f, said); err != nil {
			t.Errorf("seed %d: %v", seed, err)
		}
	}
	t.Log(said)
	for _, c := range append(claims, out...) {
		if said[c.name] == 0 {
			t.Errorf("nothing says %q", c.name)
		}
	}
}

func problemFrames(t *testing.T) map[string]statics.Frame {
	all := map[string]statics.Frame{}
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		all[name] = p.Frame
	}
	for _, pattern := range []string{"../figure/testdata/frames/*.yaml", "../../testdata/solutions/*.yaml", "../../testdata/examples/*.yaml"} {
		files, _ := filepath.Glob(pattern)
		for _, file := range files {
			p, err := problems.Load(file)
			if err != nil {
				t.Fatal(err)
			}
			all[file] = p.Frame
		}
	}
	return all
}

func reasonsAreTrue(f statics.Frame, said map[string]int) error {
	s, err := statics.Solve(f)
	if err != nil || s.Values == nil {
		return err
	}
	for _, s := range []*statics.Solution{s, s.WithPulls()} {
		if s == nil {
			continue
		}
		known := make([]bool, len(s.Forces))
		for n, step := range s.Plan {
			text := wording.New(s.Assembly, style).Because(step, func(i int) bool { return known[i] })
			r := &reading{s.Assembly, step, known, said}
			if err := r.read(text); err != nil {
				return fmt.Errorf("step %d: %w\n%s", n+1, err, text)
			}
			for _, i := range step.Gives {
				known[i] = true
			}
		}
	}
	return nil
}

// grown is a frame that grows part by part: each hangs on the ground or on what is there, by two legs that meet at a pin, by a
// pin and a roller, on a fixed support or on three rollers. About half are determinate.
func grown(pick *rand.Rand) statics.Frame {
	g := &growing{pick: pick}
	for n := 1 + pick.IntN(4); n > 0; n-- {
		switch pick.IntN(6) {
		case 0:
			g.leg(g.joint(), g.foot(statics.Fixed))
		case 5:
			corner := g.foot(statics.Roller)
			g.member(g.foot(statics.Roller), corner)
			g.member(corner, g.foot(statics.Roller))
		case 1:
			g.leg(g.foot(statics.Roller), g.hold())
		default:
			top := g.joint()
			g.hinge(top, g.leg(top, g.hold()))
			g.hinge(top, g.leg(top, g.hold()))
		}
	}
	for n := pick.IntN(4); n > 0; n-- {
		g.load()
	}
	return g.f
}

type growing struct {
	pick *rand.Rand
	f    statics.Frame
}

func (g *growing) joint() int {
	for {
		at := statics.Point{X: exact.Int(int64(g.pick.IntN(13))), Y: exact.Int(int64(g.pick.IntN(9)))}
		taken := false
		for _, j := range g.f.Joints {
			taken = taken || j.At.Equal(at)
		}
		if !taken {
			g.f.Joints = append(g.f.Joints, statics.Joint{Name: string(rune('A' + len(g.f.Joints))), At: at})
			return len(g.f.Joints) - 1
		}
	}
}

// foot is a new joint on the ground.
func (g *growing) foot(kind statics.SupportKind) int {
	j := g.joint()
	s := statics.Support{Joint: j, Kind: kind, On: statics.None}
	if kind == statics.Roller {
		s.Along = statics.Vector{X: exact.Int(int64(g.pick.IntN(9) - 4)), Y: exact.Int(3)}
	}
	g.f.Supports = append(g.f.Supports, s)
	return j
}

// hold is what a leg may hang on: the ground, or a joint that is there.
func (g *growing) hold() int {
	if len(g.f.Members) == 0 || g.pick.IntN(3) == 0 {
		return g.foot(statics.Pinned)
	}
	m := g.f.Members[g.pick.IntN(len(g.f.Members))]
	return [2]int{m.From, m.To}[g.pick.IntN(2)]
}

// leg is a part of one or two members from a joint, hinged to what is at the other; it tells its first member.
func (g *growing) leg(from, to int) int {
	first := len(g.f.Members)
	if g.pick.IntN(3) == 0 {
		knee := g.joint()
		g.member(from, knee)
		from = knee
	}
	last := g.member(from, to)
	if g.meets(to) > 1 {
		g.hinge(to, last)
	}
	return first
}

func (g *growing) member(from, to int) int {
	g.f.Members = append(g.f.Members, statics.Member{Name: g.f.Joints[from].Name + g.f.Joints[to].Name, From: from, To: to})
	return len(g.f.Members) - 1
}

func (g *growing) meets(j int) int {
	n := 0
	for _, m := range g.f.Members {
		if m.From == j || m.To == j {
			n++
		}
	}
	return n
}

// hinge frees a member from all others at a joint.
func (g *growing) hinge(j, m int) {
	for n := range g.f.Connections {
		if c := &g.f.Connections[n]; c.Joint == j {
			c.Pieces = append(c.Pieces, []int{m})
			return
		}
	}
	var others []int
	for i, k := range g.f.Members {
		if i != m && (k.From == j || k.To == j) {
			others = append(others, i)
		}
	}
	if len(others) > 0 {
		g.f.Connections = append(g.f.Connections, statics.Connection{Joint: j, Main: statics.None, Pieces: [][]int{others, {m}}})
	}
}

func (g *growing) load() {
	m := g.pick.IntN(len(g.f.Members))
	half, _ := g.f.Length(m).Quo(exact.Int(2))
	l := statics.Load{Entry: len(g.f.Loads), Joint: statics.None, Member: m, Size: exact.Int(int64(1 + g.pick.IntN(20))), At: half,
		Along: statics.Vector{X: exact.Int(int64(g.pick.IntN(3) - 1)), Y: exact.Int(-1)}}
	if g.pick.IntN(3) == 0 {
		l.Kind, l.First, l.Last, l.End = statics.SpreadLoad, l.Size, l.Size, g.f.Length(m)
	}
	g.f.Loads = append(g.f.Loads, l)
}
