package statics

import (
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestUnfitFrames compares the errors of frames that cannot be cut with those written in the table.
func TestUnfitFrames(t *testing.T) {
	eachCase(t, "testdata/unfit.txt", func(t *testing.T, c textCase) string {
		_, err := Cut(build(t, c.input))
		if err == nil {
			t.Fatal("the frame was cut")
		}
		return err.Error()
	})
}

const simple = `
	joint A 0 0
	joint B 4 0
	joint C 8 0
	member AB A B
	member BC B C
	pin B
	support A fixed
	support C roller 0 1
	point 3 0 -1 on AB 1`

// TestIndexesOutOfRange breaks a frame in ways that no text can, one at a time.
func TestIndexesOutOfRange(t *testing.T) {
	tests := []struct {
		spoil func(*Frame)
		want  string
	}{
		{func(f *Frame) { f.Members = nil }, "at least one member"},
		{func(f *Frame) { f.Members[1].To = 9 }, `member "BC" ends at a joint that does not exist`},
		{func(f *Frame) { f.Members[1].From = -1 }, `member "BC" ends at a joint that does not exist`},
		{func(f *Frame) { f.Connections[0].Joint = 3 }, "a connection is at a joint that does not exist"},
		{func(f *Frame) { f.Connections[0].Main = 2 }, "the main piece at joint B does not exist"},
		{func(f *Frame) { f.Connections[0].Pieces[0] = nil }, "a piece at joint B has no member"},
		{func(f *Frame) { f.Connections[0].Pieces = [][]int{{0}, {0, 1}} }, "the pieces at joint B do not share out its members"},
		{func(f *Frame) { f.Connections[0].Pieces = [][]int{{0, 1}} }, "the pieces at joint B do not share out its members"},
		{func(f *Frame) { f.Connections[0].Pieces = [][]int{{0}, {7}} }, "the pieces at joint B do not share out its members"},
		{func(f *Frame) { f.Connections[0].Kind = Slot }, "the slot or sleeve at joint B needs a line"},
		{func(f *Frame) { f.Supports[0].Joint = 17 }, "a support is at a joint where no member ends"},
		{func(f *Frame) { f.Supports[1].Along = Vector{} }, "the support at C needs a direction"},
		{func(f *Frame) { f.Supports[1].On = 5 }, "the support at C holds a member that does not end there"},
		{func(f *Frame) { f.Loads[0].Member = 2 }, "load 1 is on a member that does not exist"},
		{func(f *Frame) { f.Loads[0].Joint = 8 }, "load 1 is at a joint where no member ends"},
		{func(f *Frame) { f.Loads[0].Along = Vector{} }, "load 1 needs a direction"},
		{func(f *Frame) { f.Loads[0].At = exact.Int(-1) }, "load 1 lies beyond its member"},
	}
	for _, test := range tests {
		f := build(t, simple)
		if _, err := Cut(f); err != nil {
			t.Fatal(err)
		}
		test.spoil(&f)
		if _, err := Solve(f); err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("error %v, want %q", err, test.want)
		}
	}
}

// TestLoadAtAnInexactEnd lets a load stand a last place beyond a member whose length is not exact.
func TestLoadAtAnInexactEnd(t *testing.T) {
	f := build(t, simple)
	f.Joints[1].At.Y = exact.MustParse("0.1").MarkInexact()
	f.Loads[0].At = f.Length(0).Add(exact.MustParse("0.00000000000000000000000000000000001"))
	if _, err := Solve(f); err != nil {
		t.Error(err)
	}
}
