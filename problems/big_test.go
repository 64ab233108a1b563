package problems

import (
	"errors"
	"fmt"
	"strings"
	"testing"
)

// repeated writes the numbered text n times.
func repeated(n int, format, between string) string {
	parts := make([]string, n)
	for i := range parts {
		parts[i] = fmt.Sprintf(format, i)
	}
	return strings.Join(parts, between)
}

// stairs is n keys, each further right than the one before.
func stairs(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.Repeat(" ", i) + "a:\n")
	}
	return b.String()
}

const bigHead = "title: Big\nunits: kN m\n"

// TestBig reads what is too large to lie in testdata: each is refused with a short word, at once.
func TestBig(t *testing.T) {
	t.Parallel()
	const beam = "joints: {A: [0, 0], B: [6, 0]}\nmembers: [AB]\n"
	tests := []struct{ name, text, want string }{
		{"2 MiB", bigHead + strings.Repeat("# comment\n", 210_000), "the file has more than 1 MiB"},
		{"10⁵ joints", bigHead + "joints: {" + repeated(100_000, "J%d: [1, 0]", ", ") + "}", "the file has more than 1 MiB"},
		{"25 000 joints in a line", bigHead + "joints: {" + repeated(25_000, "J%d: [1, 0]", ", ") + "}", "the file is far larger than a problem"},
		{"15 000 joints in a line", bigHead + "joints: {" + repeated(15_000, "J%d: [1, 0]", ", ") + "}\nmembers: [J0J1]", "there are 15000 joints"},
		{"15 000 joints on lines", bigHead + "joints:\n" + repeated(15_000, "  J%d: [1, 0]", "\n"), "more than 5000 entries stand in one block"},
		{"2001 joints", bigHead + "joints: {" + repeated(2001, "J%[1]d: [%[1]d, 0]", ", ") + "}\nmembers: [J0J1]", "there are 2001 joints"},
		{"4001 members", bigHead + "joints: {A: [0, 0], B: [6, 0]}\nmembers: [" + repeated(4001, "A%dB", ", ") + "]", "there are 4001 members"},
		{"5001 loads", bigHead + beam + "loads:\n" + strings.Repeat("- {point: 1, to: up, joint: A}\n", 5001), "there are 5001 loads"},
		{"title of 1 MB", "title: " + strings.Repeat("x", 1_000_000) + "\nunits: kN m\n" + beam, "title has more than 200 characters"},
		{"number of 1 MB", bigHead + "joints: {A: [0, " + strings.Repeat("9", 1_000_000) + "], B: [1, 0]}\nmembers: [AB]", "this is longer than 4096 characters"},
		{"name of 1 MB", bigHead + strings.Repeat("x", 1_000_000) + ": 1", "a problem has no field"},
		{"line of 1 MB, open", bigHead + "members: [" + strings.Repeat("AB, ", 50_000), "the [ opened here is never closed"},
		{"quote of 1 MB, open", `title: "` + strings.Repeat("x", 1_000_000), "the quotes opened here are never closed"},
		{"brackets", strings.Repeat("[", 500_000), "the file is far larger than a problem"},
		{"brackets, fewer", strings.Repeat("[", 100_000), "this is nested deeper than anything in a problem"},
		{"braces", strings.Repeat("{a: ", 40_000), "this is nested deeper than anything in a problem"},
		{"dashes", strings.Repeat("- ", 100_000), "this is nested deeper than anything in a problem"},
		{"colons", strings.Repeat("a: ", 60_000), "two names on one line"},
		{"stairs", stairs(1000), "this is nested deeper than anything in a problem"},
		{"anchors", strings.Repeat("&a ", 50_000), "an anchor (&) has no use in a problem file"},
		{"30 000 names alike in a line", bigHead + "joints: {" + strings.Repeat("A: 1, ", 30_000) + "B: 1}", "stands here a second time"},
		{"30 000 colons without space", bigHead + "joints: {" + repeated(30_000, "A%d:1", ", ") + "}", "a space is missing after the colon"},
		{"30 000 marked keys", bigHead + "joints: {" + repeated(30_000, "? A%d : 1", ", ") + "}", "a key marked with ?"},
		{"bad bytes", strings.Repeat("\xff", 1_000_000), "the byte 0xff is not UTF-8 text"},
		{"line ends", strings.Repeat("\n", 1_000_000), "the file is empty"},
		{"letters", strings.Repeat("a", 1_000_000), "the file is not a list of fields"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			p, err := Read("big.yaml", []byte(test.text))
			faults := (*Faults)(nil)
			if !errors.As(err, &faults) {
				t.Fatalf("read %v, error %v", p, err)
			}
			if !strings.Contains(err.Error(), test.want) {
				t.Errorf("got %.300s\nwant %s", err, test.want)
			}
			if len(err.Error()) > 400*(len(faults.List)+1) {
				t.Errorf("%d faults in %d bytes", len(faults.List), len(err.Error()))
			}
		})
	}
}

// TestManyFaults counts what is not listed.
func TestManyFaults(t *testing.T) {
	text := bigHead + "joints: {A: [0, 0], B: [6, 0]}\nmembers: [AB]\nloads:\n" + strings.Repeat("- {point: 1, to: up, joint: Q}\n", 250)
	_, err := Read("many.yaml", []byte(text))
	faults := (*Faults)(nil)
	if !errors.As(err, &faults) {
		t.Fatal(err)
	}
	if len(faults.List) != 100 || faults.More != 150 {
		t.Errorf("%d faults and %d more, want 100 and 150", len(faults.List), faults.More)
	}
	for _, want := range []string{"97 more of this, in lines 9 to 105\n", "many.yaml: and 150 more faults"} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("the text has no %q:\n%s", want, err)
		}
	}
}

// bigFrame is a lattice of bays, each a square with one diagonal.
func bigFrame(bays int) []byte {
	var b strings.Builder
	b.WriteString(bigHead + "joints:\n")
	for i := range bays + 1 {
		fmt.Fprintf(&b, "  A%[1]d: [%[1]d, 0]\n  B%[1]d: [%[1]d, 3]\n", i)
	}
	b.WriteString("members:\n")
	for i := range bays {
		fmt.Fprintf(&b, "  - A%[1]dA%[2]d\n  - B%[1]dB%[2]d\n  - A%[1]dB%[1]d\n  - A%[1]dB%[2]d\n", i, i+1)
	}
	b.WriteString("supports: {A0: fixed}\nloads:\n")
	for i := range bays {
		fmt.Fprintf(&b, "  - {uniform: 2, to: down, on: A%[1]dB%[2]d, per: run}\n  - {point: 3, to: left, on: B%[2]dB%[1]d, at: 1/3 length}\n", i, i+1)
	}
	return []byte(b.String())
}

func TestBigFrame(t *testing.T) {
	t.Parallel()
	p, err := Read("big.yaml", bigFrame(900))
	if err != nil {
		t.Fatalf("%.500s", err)
	}
	if got := len(p.Frame.Members); got != 3600 {
		t.Errorf("%d members, want 3600", got)
	}
	if len(p.Warnings) > 0 {
		t.Errorf("warned: %s", p.Warnings[0])
	}
}

func BenchmarkRead(b *testing.B) {
	for _, name := range []string{"examples/canopy.yaml", "examples/shelter.yaml", "read/every-field.yaml"} {
		data := readFile(b, "../testdata/"+name)
		b.Run(name, func(b *testing.B) { benchmarkRead(b, data) })
	}
	for _, bays := range []int{10, 100, 900} {
		data := bigFrame(bays)
		b.Run(fmt.Sprintf("bays=%d", bays), func(b *testing.B) { benchmarkRead(b, data) })
	}
}

func benchmarkRead(b *testing.B, data []byte) {
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		if _, err := Read("bench.yaml", data); err != nil {
			b.Fatal(err)
		}
	}
}
