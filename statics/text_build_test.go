package statics

import (
	"fmt"
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
//
// A direction is two numbers or an angle, 60deg. A distance may be a share of the member's length, 1/2L.
func build(t testing.TB, text string) Frame {
	t.Helper()
	f, err := read(text)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// read is build for texts that come from files.
func read(text string) (Frame, error) {
	b := builder{joints: map[string]int{}, members: map[string]int{}}
	for i, line := range strings.Split(text, "\n") {
		line, _, _ = strings.Cut(line, "#")
		b.words = strings.Fields(line)
		if len(b.words) > 0 {
			b.entry()
		}
		if b.err != nil {
			return Frame{}, fmt.Errorf("frame text, line %d: %q: %w", i+1, line, b.err)
		}
	}
	return b.f, nil
}

type builder struct {
	f               Frame
	joints, members map[string]int
	words           []string // left on the line
	err             error
}

func (b *builder) fail(format string, args ...any) {
	if b.err == nil {
		b.err = fmt.Errorf(format, args...)
	}
}

// word takes the next word of the line.
func (b *builder) word() string {
	if len(b.words) == 0 {
		b.fail("a word is missing")
		return ""
	}
	w := b.words[0]
	b.words = b.words[1:]
	return w
}

func (b *builder) number() exact.Num {
	n, err := exact.Parse(b.word())
	if err != nil {
		b.fail("%v", err)
	}
	return n
}

func (b *builder) direction() Vector {
	if len(b.words) > 0 {
		if angle, ok := strings.CutSuffix(b.words[0], "deg"); ok {
			b.word()
			a := exact.MustParse(angle)
			return Vector{exact.Cos(a), exact.Sin(a)}
		}
	}
	return Vector{b.number(), b.number()}
}

// distance is a number, or a share of the length of member m.
func (b *builder) distance(m int) exact.Num {
	if len(b.words) > 0 {
		if share, ok := strings.CutSuffix(b.words[0], "L"); ok {
			b.word()
			return b.f.Length(m).Mul(exact.MustParse(share))
		}
	}
	return b.number()
}

func (b *builder) joint() int { return b.named(b.joints, b.word()) }

func (b *builder) member() int { return b.named(b.members, b.word()) }

func (b *builder) named(among map[string]int, name string) int {
	i, ok := among[name]
	if !ok {
		b.fail("nothing is named %q", name)
	}
	return i
}

func (b *builder) entry() {
	switch kind := b.word(); kind {
	case "joint":
		name := b.word()
		b.joints[name] = len(b.f.Joints)
		b.f.Joints = append(b.f.Joints, Joint{name, Point{b.number(), b.number()}})
	case "member":
		name := b.word()
		b.members[name] = len(b.f.Members)
		b.f.Members = append(b.f.Members, Member{name, b.joint(), b.joint()})
	case "pin":
		b.f.Connections = append(b.f.Connections, b.connection(Pin, b.joint(), b.words))
		b.words = nil
	case "slot", "sleeve":
		c := b.connection(map[string]ConnectionKind{"slot": Slot, "sleeve": Sleeve}[kind], b.joint(), []string{b.word()})
		c.Along = b.direction()
		b.f.Connections = append(b.f.Connections, c)
	case "support":
		b.support()
	case "point", "couple", "spread", "rope":
		b.load(kind)
	default:
		b.fail("unknown entry %q", kind)
	}
	if len(b.words) > 0 {
		b.fail("%q is left over", b.words)
	}
}

func (b *builder) connection(kind ConnectionKind, j int, named []string) Connection {
	c := Connection{Joint: j, Kind: kind, Main: None}
	var rest []int
	taken := map[int]bool{}
	for _, piece := range named {
		var members []int
		for _, name := range strings.Split(piece, "+") {
			m := b.named(b.members, name)
			members, taken[m] = append(members, m), true
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

func (b *builder) support() {
	s := Support{Joint: b.joint(), On: None}
	switch kind := b.word(); kind {
	case "fixed":
		s.Kind = Fixed
	case "pinned":
		s.Kind = Pinned
	case "roller":
		s.Kind, s.Along = Roller, b.direction()
	case "guide":
		s.Kind, s.Along = Guide, b.direction()
	default:
		b.fail("unknown support %q", kind)
	}
	if len(b.words) > 0 {
		s.On = b.member()
	}
	b.f.Supports = append(b.f.Supports, s)
}

func (b *builder) load(kind string) {
	l := Load{Entry: len(b.f.Loads), Joint: None, Member: None}
	switch kind {
	case "point":
		l.Size, l.Along = b.number(), b.direction()
	case "couple":
		l.Kind, l.Size = CoupleLoad, b.number()
	case "rope":
		l.Kind, l.Size, l.Along, l.Second, l.Radius = RopeLoad, b.number(), b.direction(), b.direction(), b.number()
	case "spread":
		l.Kind, l.First, l.Last, l.Along = SpreadLoad, b.number(), b.number(), b.direction()
	}
	if b.word() == "at" {
		l.Joint = b.joint()
		if len(b.words) > 0 {
			l.Member = b.member()
		}
	} else {
		l.Member = b.member()
		b.place(&l)
	}
	b.f.Loads = append(b.f.Loads, l)
}

// place reads where on its member a load stands or stretches.
func (b *builder) place(l *Load) {
	if l.Kind != SpreadLoad {
		l.At = b.distance(l.Member)
		return
	}
	l.Start, l.End = b.distance(l.Member), b.distance(l.Member)
	if len(b.words) > 0 {
		per := b.word()
		l.Per = map[string]Per{"run": PerRun, "rise": PerRise}[per]
		if l.Per == PerLength {
			b.fail("unknown basis %q", per)
		}
	}
}
