package main

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestBrokenLine(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		width int
		line  string
		want  []string
	}{
		{24, "not yet: which way does it act?", []string{"not yet: which way does", "  it act?"}},
		{24, "  Ax = 3 kN, right, and Ay = 4 kN, up", []string{"  Ax = 3 kN, right, and", "    Ay = 4 kN, up"}},
		{31, "not yet: which way does it act?", []string{"not yet: which way does it act?"}},
		{20, "see abcdefghijklmnopqrstuvwxyz now", []string{"see", "  abcdefghijklmnopqrstuvwxyz", "  now"}},
		{0, "not yet: which way does it act?", []string{"not yet: which way does it act?"}},
		{19, "not yet: which way does it act?", []string{"not yet: which way does it act?"}},
	} {
		if got := brokenLine(c.line, c.width); !slices.Equal(got, c.want) {
			t.Errorf("%q at %d: %q, want %q", c.line, c.width, got, c.want)
		}
	}
}

// Breaking loses no word and makes no line longer than it may be, unless one word is.
func TestWrappedKeepsWords(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`([a-z*=.]{1,12} ?|\n){0,40}`).Draw(t, "text")
		width := rapid.IntRange(narrowest, 60).Draw(t, "width")
		var out bytes.Buffer
		if n, err := (&wrapper{&out, func() int { return width }}).Write([]byte(text)); n != len(text) || err != nil {
			t.Fatalf("%d of %d, %v", n, len(text), err)
		}
		if got, want := strings.Fields(out.String()), strings.Fields(text); !slices.Equal(got, want) {
			t.Fatalf("%q, want %q", got, want)
		}
		for line := range strings.Lines(out.String()) {
			if line = strings.TrimRight(line, "\n"); len(line) > width && strings.Contains(strings.TrimSpace(line), " ") {
				t.Fatalf("%q is longer than %d", line, width)
			}
		}
	})
}
