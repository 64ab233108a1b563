package statics

import (
	"sync"
	"testing"
)

// TestGeneratedFrames sees to it that the frames on which most other tests rest are of every kind.
func TestGeneratedFrames(t *testing.T) {
	t.Parallel()
	seen := map[string]int{}
	const frames = 400
	for seed := range uint64(frames) {
		f := generated(seed)
		text := write(f)
		again, err := read(text)
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		if write(again) != text {
			t.Fatalf("seed %d: the text of the frame reads differently:\n%s\nagain\n%s", seed, text, write(again))
		}
		a, err := Cut(f)
		if err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, text)
		}
		note(seen, a)
	}
	t.Log(seen)
	for _, kind := range kinds {
		if seen[kind] < frames/100 {
			t.Errorf("only %d of %d frames have %s", seen[kind], frames, kind)
		}
	}
}

// generated is the frame of a seed: up to 5 parts, every tenth up to 12; every fourth disturbed. Each is made once, since most
// tests want the first of them.
func generated(seed uint64) Frame {
	frame, made := generatedFrames.Load(seed)
	if !made {
		frame, _ = generatedFrames.LoadOrStore(seed, generate(seed))
	}
	return clone(frame.(Frame))
}

var generatedFrames sync.Map // from seeds to frames

func generate(seed uint64) Frame {
	pick := seeded(seed)
	most := 5
	if seed%10 == 9 {
		most = 12
	}
	parts := pick(1, most)
	if seed%4 == 3 {
		return disturbed(pick, parts)
	}
	return randomFrame(pick, parts)
}

// kinds are the features that the generated frames must have.
var kinds = []string{
	"pinned", "fixed", "roller", "guide", "a support on a member at a connection", "a support on a pin",
	"a pin of all", "a pin of some", "a piece of several members", "two pieces of several members", "a pin inside a line", "three parts at a pin", "a load on a pin",
	"a slot", "a sleeve", "a ring", "a ring hinged to itself", "a branched part", "a bent part", "more than 6 parts", "a group",
	"a point load at a joint", "a point load on a member", "a couple at a joint", "a couple on a member", "a spread load", "per run", "per rise",
	"a load that changes sense", "a rope over a wheel", "a wheel on a pin", "a rope that runs back", "an irrational direction",
}

// note counts what a frame has of the kinds.
func note(seen map[string]int, a *Assembly) {
	has := map[string]bool{
		"more than 6 parts": len(a.Parts) > 6,
		"a group":           len(bodyGroups{a}.groups()) > 0,
	}
	for _, p := range a.Parts {
		has["a branched part"] = has["a branched part"] || p.Name[len(p.Name)-1] == '+'
		has["a bent part"] = has["a bent part"] || a.bent(p)
		has["a ring"] = has["a ring"] || p.Inner > 0
		has["a ring hinged to itself"] = has["a ring hinged to itself"] || p.Inner%3 != 0
	}
	for _, s := range a.Frame.Supports {
		has[map[SupportKind]string{Pinned: "pinned", Fixed: "fixed", Roller: "roller", Guide: "guide"}[s.Kind]] = true
		has["a support on a member at a connection"] = has["a support on a member at a connection"] || s.On != None
		has["an irrational direction"] = has["an irrational direction"] || !s.Along.X.IsRational()
	}
	for _, c := range a.Frame.Connections {
		noteConnection(has, a, c)
	}
	for _, l := range a.Frame.Loads {
		noteLoad(has, a, l)
	}
	for kind, yes := range has {
		if yes {
			seen[kind]++
		}
	}
}

func noteConnection(has map[string]bool, a *Assembly, c Connection) {
	has[map[ConnectionKind]string{Pin: "a pin", Slot: "a slot", Sleeve: "a sleeve"}[c.Kind]] = true
	if c.Kind != Pin {
		return
	}
	if c.Main == None {
		has["a pin of all"] = true
	} else {
		has["a pin of some"] = true
	}
	has["three parts at a pin"] = has["three parts at a pin"] || len(c.Pieces) > 2
	several := 0
	for _, piece := range c.Pieces {
		if len(piece) > 1 {
			several++
		}
		has["a piece of several members"] = has["a piece of several members"] || several > 0
		has["two pieces of several members"] = has["two pieces of several members"] || several > 1
		if len(piece) == 2 && a.Frame.Span(piece[0]).Cross(a.Frame.Span(piece[1])).IsZero() {
			has["a pin inside a line"] = true
		}
	}
	for _, s := range a.Frame.Supports {
		if s.Joint == c.Joint && s.On == None {
			has["a support on a pin"] = true
		}
	}
	for _, l := range a.Frame.Loads {
		if l.Joint == c.Joint && l.Member == None {
			has["a load on a pin"] = true
		}
	}
}

func noteLoad(has map[string]bool, a *Assembly, l Load) {
	where := map[bool]string{true: "on a member", false: "at a joint"}[l.Joint == None]
	switch l.Kind {
	case PointLoad:
		has["a point load "+where] = true
	case CoupleLoad:
		has["a couple "+where] = true
	case RopeLoad:
		has["a rope over a wheel"] = true
		has["a wheel on a pin"] = has["a wheel on a pin"] || l.Member == None && a.Frame.isPin(l.Joint)
		has["a rope that runs back"] = has["a rope that runs back"] || l.Along.Cross(l.Second).IsZero()
	case SpreadLoad:
		has["a spread load"] = true
		has["a load that changes sense"] = has["a load that changes sense"] || l.First.Sign()*l.Last.Sign() < 0
	}
	has[map[Per]string{PerRun: "per run", PerRise: "per rise"}[l.Per]] = true
}

// bent reports whether the part has members in two directions.
func (a *Assembly) bent(p Part) bool {
	for _, m := range p.Members {
		if !a.Frame.Span(m).Cross(a.Frame.Span(p.Members[0])).IsZero() {
			return true
		}
	}
	return false
}
