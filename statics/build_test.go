package statics

import (
	"strings"
	"testing"

	"unpin/statics/exact"
)

// build reads a frame for a test, one line an entry:
//
//	joint A 0 0
//	member AB A B
//	pin C             every member at C hinged;  pin C CD  or  pin C AC+CE CD: these pieces, the rest stay joined
//	slot C CD 1 0     free piece and line;  sleeve likewise
//	support A fixed   pinned; roller 3 4; guide 1 0; a member last: what it holds
//	point 30 0 -1 on BC 2.4     force along a direction at a distance; or  at C [member]
//	couple 5 on BC 2  or  at E [member]    counter-clockwise
//	spread 1 2 0 -1 on BC 0 4 [run|rise]   from intensity 1 at 0 to 2 at 4
func build(t testing.TB, text string) Frame {
	t.Helper()
	b := builder{t: t, joints: map[string]int{}, members: map[string]int{}}
	for _, line := range strings.Split(text, "\n") {
		if w := strings.Fields(line); len(w) > 0 {
			b.entry(w)
		}
	}
	return b.f
}

type builder struct {
	t               testing.TB
	f               Frame
	joints, members map[string]int
}

func (b *builder) entry(w []string) {
	b.t.Helper()
	n := exact.MustParse
	switch w[0] {
	case "joint":
		b.joints[w[1]] = len(b.f.Joints)
		b.f.Joints = append(b.f.Joints, Joint{w[1], Point{n(w[2]), n(w[3])}})
	case "member":
		b.members[w[1]] = len(b.f.Members)
		b.f.Members = append(b.f.Members, Member{w[1], b.joints[w[2]], b.joints[w[3]]})
	case "pin":
		b.f.Connections = append(b.f.Connections, b.connection(Pin, b.joints[w[1]], w[2:]))
	case "slot", "sleeve":
		kind := map[string]ConnectionKind{"slot": Slot, "sleeve": Sleeve}[w[0]]
		c := b.connection(kind, b.joints[w[1]], w[2:3])
		c.Along = Vector{n(w[3]), n(w[4])}
		b.f.Connections = append(b.f.Connections, c)
	case "support":
		b.support(w)
	case "point", "couple", "spread":
		b.load(w)
	default:
		b.t.Fatalf("unknown entry %q", w[0])
	}
}

func (b *builder) connection(kind ConnectionKind, j int, named []string) Connection {
	c := Connection{Joint: j, Kind: kind, Main: None}
	var rest []int
	taken := map[int]bool{}
	for _, piece := range named {
		var members []int
		for _, m := range strings.Split(piece, "+") {
			members = append(members, b.members[m])
			taken[b.members[m]] = true
		}
		c.Pieces = append(c.Pieces, members)
	}
	for _, m := range b.f.meeting()[j] {
		switch {
		case taken[m]:
		case len(named) == 0:
			c.Pieces = append(c.Pieces, []int{m})
		default:
			rest = append(rest, m)
		}
	}
	if len(rest) > 0 {
		c.Main = len(c.Pieces)
		c.Pieces = append(c.Pieces, rest)
	}
	return c
}

func (b *builder) support(w []string) {
	s := Support{Joint: b.joints[w[1]], On: None}
	rest := w[3:]
	switch w[2] {
	case "fixed":
		s.Kind = Fixed
	case "pinned":
		s.Kind = Pinned
	default:
		s.Kind = map[string]SupportKind{"roller": Roller, "guide": Guide}[w[2]]
		s.Along = Vector{exact.MustParse(rest[0]), exact.MustParse(rest[1])}
		rest = rest[2:]
	}
	if len(rest) > 0 {
		s.On = b.members[rest[0]]
	}
	b.f.Supports = append(b.f.Supports, s)
}

func (b *builder) load(w []string) {
	n := exact.MustParse
	l := Load{Entry: len(b.f.Loads), Joint: None, Member: None}
	kind, w := w[0], w[1:]
	l.Size = n(w[0])
	w = w[1:]
	if kind == "spread" {
		l.First, l.Last, l.Size = l.Size, n(w[0]), exact.Num{}
		l.Kind, w = SpreadLoad, w[1:]
	}
	if kind == "couple" {
		l.Kind = CoupleLoad
	} else {
		l.Along, w = Vector{n(w[0]), n(w[1])}, w[2:]
	}
	if w[0] == "at" {
		l.Joint = b.joints[w[1]]
		if len(w) > 2 {
			l.Member = b.members[w[2]]
		}
	} else {
		l.Member, l.At = b.members[w[1]], n(w[2])
		if kind == "spread" {
			l.Start, l.End, l.At = n(w[2]), n(w[3]), exact.Num{}
			if len(w) > 4 {
				l.Per = map[string]Per{"run": PerRun, "rise": PerRise}[w[4]]
			}
		}
	}
	b.f.Loads = append(b.f.Loads, l)
}
