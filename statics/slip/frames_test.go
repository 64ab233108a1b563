package slip

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// A testFrame is a small frame, solved, with the values that were worked by hand beside it.
type testFrame struct {
	*statics.Solution
	find map[string]exact.Num
}

// readFrames reads the frames of testdata/worked/frames.txt, by name, and solves them.
func readFrames(t testing.TB) map[string]testFrame {
	t.Helper()
	data, err := os.ReadFile("testdata/worked/frames.txt")
	if err != nil {
		t.Fatal(err)
	}
	all := map[string]testFrame{}
	_, text, _ := strings.Cut(string(data), "\nframe ")
	for _, block := range strings.Split(text, "\nframe ") {
		r := frameReader{find: map[string]exact.Num{}}
		lines := strings.Split(block, "\n")
		name := strings.Fields(lines[0])[0]
		for _, line := range lines[1:] {
			line, _, _ = strings.Cut(line, "#")
			if r.words = strings.Fields(line); len(r.words) == 0 {
				continue
			}
			if r.entry(); r.err != nil {
				t.Fatalf("frame %s: %s: %v", name, line, r.err)
			}
		}
		s, err := statics.Solve(r.frame)
		if err != nil {
			t.Fatalf("frame %s: %v", name, err)
		}
		all[name] = testFrame{s, r.find}
	}
	return all
}

// A frameReader reads a frame line by line; what it meets first that cannot be read is its error.
type frameReader struct {
	frame statics.Frame
	find  map[string]exact.Num
	words []string // left on the line
	err   error
}

// word takes the next word of the line.
func (r *frameReader) word() string {
	if len(r.words) == 0 {
		r.err = fmt.Errorf("a word is missing")
		return ""
	}
	w := r.words[0]
	r.words = r.words[1:]
	return w
}

func (r *frameReader) number() exact.Num {
	n, err := exact.Parse(r.word())
	if err != nil {
		r.err = err
	}
	return n
}

func (r *frameReader) joint() int {
	name := r.word()
	for i, j := range r.frame.Joints {
		if j.Name == name {
			return i
		}
	}
	r.err = fmt.Errorf("no joint %q", name)
	return 0
}

func (r *frameReader) member() int {
	name := r.word()
	for i, m := range r.frame.Members {
		if m.Name == name {
			return i
		}
	}
	r.err = fmt.Errorf("no member %q", name)
	return 0
}

// direction is two numbers, or an angle in degrees as 330deg.
func (r *frameReader) direction() statics.Vector {
	if len(r.words) > 0 {
		if angle, ok := strings.CutSuffix(r.words[0], "deg"); ok {
			r.word()
			a := exact.MustParse(angle)
			return statics.Vector{X: exact.Cos(a), Y: exact.Sin(a)}
		}
	}
	return statics.Vector{X: r.number(), Y: r.number()}
}

// entry reads one line.
func (r *frameReader) entry() {
	f := &r.frame
	switch kind := r.word(); kind {
	case "joint":
		f.Joints = append(f.Joints, statics.Joint{Name: r.word(), At: statics.Point{X: r.number(), Y: r.number()}})
	case "member":
		f.Members = append(f.Members, statics.Member{Name: r.word(), From: r.joint(), To: r.joint()})
	case "pin":
		f.Connections = append(f.Connections, r.pin())
	case "support":
		r.support()
	case "find":
		r.find[r.word()] = r.number()
	case "and":
		r.load(r.word(), f.Loads[len(f.Loads)-1].Entry)
	default:
		r.load(kind, len(f.Loads))
	}
	if len(r.words) > 0 && r.err == nil {
		r.err = fmt.Errorf("%q is left over", r.words)
	}
}

// pin reads a joint at which every member is hinged, or the pieces that are named, as AB+BF BC.
func (r *frameReader) pin() statics.Connection {
	c := statics.Connection{Joint: r.joint(), Kind: statics.Pin, Main: statics.None}
	pieces := r.words
	for _, m := range r.frame.Members {
		if len(pieces) == 0 && (m.From == c.Joint || m.To == c.Joint) {
			r.words = append(r.words, m.Name)
		}
	}
	pieces, r.words = r.words, nil
	for _, p := range pieces {
		var piece []int
		for r.words = strings.Split(p, "+"); len(r.words) > 0; {
			piece = append(piece, r.member())
		}
		c.Pieces = append(c.Pieces, piece)
	}
	return c
}

func (r *frameReader) support() {
	s := statics.Support{Joint: r.joint(), On: statics.None}
	switch kind := r.word(); kind {
	case "fixed":
		s.Kind = statics.Fixed
	case "pinned":
		s.Kind = statics.Pinned
	case "roller":
		s.Kind, s.Along = statics.Roller, r.direction()
	default:
		r.err = fmt.Errorf("no support %q", kind)
	}
	r.frame.Supports = append(r.frame.Supports, s)
}

func (r *frameReader) load(kind string, entry int) {
	l := statics.Load{Entry: entry, Joint: statics.None, Member: statics.None}
	switch kind {
	case "point":
		l.Kind, l.Size, l.Along = statics.PointLoad, r.number(), r.direction()
	case "couple":
		l.Kind, l.Size = statics.CoupleLoad, r.number()
	case "rope":
		l.Kind, l.Size, l.Along, l.Second, l.Radius = statics.RopeLoad, r.number(), r.direction(), r.direction(), r.number()
	case "spread":
		l.Kind, l.First, l.Last, l.Along = statics.SpreadLoad, r.number(), r.number(), r.direction()
	default:
		r.err = fmt.Errorf("no entry %q", kind)
		return
	}
	switch r.word() {
	case "at":
		if l.Joint = r.joint(); len(r.words) > 0 {
			l.Member = r.member()
		}
	case "on":
		if l.Member = r.member(); kind == "spread" {
			l.Start, l.End = r.number(), r.number()
		} else {
			l.At = r.number()
		}
	}
	r.frame.Loads = append(r.frame.Loads, l)
}

// The engine finds what was worked by hand beside each frame.
func TestWorkedFrames(t *testing.T) {
	for name, f := range readFrames(t) {
		if len(f.find) == 0 {
			t.Errorf("frame %s: nothing is worked by hand", name)
		}
		for force, v := range f.find {
			if got := f.Values[f.force(t, force)]; !got.Equal(v) {
				t.Errorf("frame %s: %s is %s, by hand %s", name, force, got, v)
			}
		}
	}
}

// force is the force of that name.
func (f testFrame) force(t testing.TB, name string) int {
	t.Helper()
	for i, x := range f.Forces {
		if x.Name == name {
			return i
		}
	}
	t.Fatalf("no force %q", name)
	return 0
}
