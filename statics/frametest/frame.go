// Package frametest reads the frames of test files, which stand in lines for themselves, without the reader of problem files:
// so that what is tested below it needs nothing above.
package frametest

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A Text is a frame, read from a test file, and what the file asks about it, one item a line:
//
//	units kN m
//	joint A 0 0
//	member A B                     its name is AB
//	pin B AB | BC                  the pieces; a star after one marks that which was not named as hinged
//	slot B 0 1 BE | AB BC *        and sleeve: the line of sliding, then the pieces
//	support D roller -3 4 on CD    fixed, pinned, or roller or guide with its direction, which may be an angle: 20deg
//	load point 30 0 -1 on BC at 2.4
//	load point 15 0 -1 joint B on BC
//	load couple -20 joint E
//	load rope 12 0 -1 -1 0 joint D radius 0.3
//	load spread 0 12 0 -1 on BC from 1 to 7.2 per run
//	load and spread 12 9 0 -1 on CD        a stretch of the load before it
//
// Lines that begin with another word are what is asked.
type Text struct {
	Frame statics.Frame
	Style notation.Style
	Asks  [][]string // each line in words
}

// reader reads one item.
type reader struct {
	*Text
	words []string
}

// Read reads a text. Of what cannot be read the error names the line.
func Read(text string) (*Text, error) {
	t := &Text{}
	for i, line := range strings.Split(text, "\n") {
		if strings.TrimSpace(line) == "" {
			continue
		}
		r := &reader{t, strings.Fields(line)}
		if err := r.item(); err != nil {
			return nil, fmt.Errorf("line %d: %w", i+1, err)
		}
	}
	return t, nil
}

func (r *reader) item() (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("cannot read: %v", p)
		}
	}()
	switch word := r.next(); word {
	case "units":
		r.Style.Units, err = notation.ParseUnits(strings.Join(r.words, " "))
	case "joint":
		r.Frame.Joints = append(r.Frame.Joints, statics.Joint{Name: r.next(), At: statics.Point(r.vector())})
	case "member":
		a, b := r.next(), r.next()
		r.Frame.Members = append(r.Frame.Members, statics.Member{Name: a + b, From: r.joint(a), To: r.joint(b)})
	case "pin", "slot", "sleeve":
		r.connection(word)
	case "support":
		r.support()
	case "load":
		r.load()
	default:
		r.Asks = append(r.Asks, append([]string{word}, r.words...))
	}
	return err
}

func (r *reader) next() string {
	w := r.words[0]
	r.words = r.words[1:]
	return w
}

func (r *reader) number() exact.Num { return exact.MustParse(r.next()) }

func (r *reader) vector() statics.Vector {
	if angle, ok := strings.CutSuffix(r.words[0], "deg"); ok {
		r.next()
		a := exact.MustParse(angle)
		return statics.Vector{X: exact.Cos(a), Y: exact.Sin(a)}
	}
	x := r.number()
	return statics.Vector{X: x, Y: r.number()}
}

// after is the word that follows another, or nothing.
func (r *reader) after(word string) string {
	if i := slices.Index(r.words, word); i >= 0 {
		return r.words[i+1]
	}
	return ""
}

func (r *reader) joint(name string) int {
	i := slices.IndexFunc(r.Frame.Joints, func(j statics.Joint) bool { return j.Name == name })
	if i < 0 && name != "" {
		panic("no joint " + name)
	}
	return i
}

func (r *reader) member(name string) int {
	i := slices.IndexFunc(r.Frame.Members, func(m statics.Member) bool { return m.Name == name })
	if i < 0 && name != "" {
		panic("no member " + name)
	}
	return i
}

func (r *reader) connection(kind string) {
	c := statics.Connection{Joint: r.joint(r.next()), Main: statics.None}
	c.Kind = map[string]statics.ConnectionKind{"pin": statics.Pin, "slot": statics.Slot, "sleeve": statics.Sleeve}[kind]
	if c.Kind != statics.Pin {
		c.Along = r.vector()
	}
	c.Pieces = [][]int{nil}
	for _, w := range r.words {
		last := len(c.Pieces) - 1
		switch w {
		case "|":
			c.Pieces = append(c.Pieces, nil)
		case "*":
			c.Main = last
		default:
			c.Pieces[last] = append(c.Pieces[last], r.member(w))
		}
	}
	r.Frame.Connections = append(r.Frame.Connections, c)
}

func (r *reader) support() {
	s := statics.Support{Joint: r.joint(r.next())}
	kind := r.next()
	s.Kind = map[string]statics.SupportKind{"pinned": statics.Pinned, "fixed": statics.Fixed, "roller": statics.Roller, "guide": statics.Guide}[kind]
	if s.Kind == statics.Roller || s.Kind == statics.Guide {
		s.Along = r.vector()
	}
	s.On = r.member(r.after("on"))
	r.Frame.Supports = append(r.Frame.Supports, s)
}

func (r *reader) load() {
	l := statics.Load{Entry: len(r.Frame.Loads)}
	kind := r.next()
	if kind == "and" { // a stretch of the load before it
		l.Entry, kind = r.Frame.Loads[len(r.Frame.Loads)-1].Entry, r.next()
	}
	switch kind {
	case "couple":
		l.Kind, l.Size = statics.CoupleLoad, r.number()
	case "spread":
		l.Kind, l.First, l.Last = statics.SpreadLoad, r.number(), r.number()
		l.Along = r.vector()
	case "rope":
		l.Kind, l.Size, l.Along, l.Second = statics.RopeLoad, r.number(), r.vector(), r.vector()
		if radius := r.after("radius"); radius != "" {
			l.Radius = exact.MustParse(radius)
		}
	default:
		l.Size, l.Along = r.number(), r.vector()
	}
	l.Joint, l.Member = r.joint(r.after("joint")), r.member(r.after("on"))
	if at := r.after("at"); at != "" {
		l.At = exact.MustParse(at)
	}
	if l.Kind == statics.SpreadLoad {
		l.End = r.Frame.Length(l.Member)
		if from := r.after("from"); from != "" {
			l.Start, l.End = exact.MustParse(from), exact.MustParse(r.after("to"))
		}
		l.Per = map[string]statics.Per{"run": statics.PerRun, "rise": statics.PerRise}[r.after("per")]
	}
	r.Frame.Loads = append(r.Frame.Loads, l)
}
