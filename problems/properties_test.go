package problems

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics"
	"unpin/statics/exact"
)

// mustRead reads a text that has no fault.
func mustRead(t *rapid.T, text string) *Problem {
	p, err := Read("made.yaml", []byte(text))
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return p
}

// reactions solves a frame and lists its forces by name.
func reactions(t *rapid.T, p *Problem) map[string]exact.Num {
	s, err := statics.Solve(p.Frame)
	if err != nil || s.Values == nil {
		t.Fatalf("not solved: %v", err)
	}
	values := map[string]exact.Num{}
	for i, f := range s.Forces {
		values[f.Name] = s.Values[i]
	}
	return values
}

func sameForces(t *rapid.T, a, b map[string]exact.Num, why string) {
	if len(a) != len(b) {
		t.Fatalf("%s: %v and %v", why, a, b)
	}
	for name, v := range a {
		if !v.Equal(b[name]) {
			t.Errorf("%s: %s is %v and %v", why, name, v, b[name])
		}
	}
}

// slopes are directions with whole, and with irrational, lengths.
var slopes = [][2]int{{1, 0}, {0, 1}, {3, 4}, {-4, 3}, {1, 1}, {-2, 1}, {1, -3}}

// chainFile is a cantilever along a slope whose joints lie at the whole distances cuts, each once, from A.
func chainFile(slope [2]int, cuts []int, loads string) string {
	var joints, members []string
	for i, c := range cuts {
		joints = append(joints, fmt.Sprintf("J%d: [%d, %d]", i, slope[0]*c, slope[1]*c))
		if i > 0 {
			members = append(members, fmt.Sprintf("J%dJ%d", i-1, i))
		}
	}
	return fmt.Sprintf("title: Chain\nunits: kN m\njoints: {%s}\nmembers: [%s]\nsupports: {J0: fixed}\nloads:\n%s",
		strings.Join(joints, ", "), strings.Join(members, ", "), loads)
}

// TestChain: a spread load over a line of members is what it is on one member of the same length. The reactions of the
// two, found by the engine, are the judge.
func TestChain(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.SampledFrom(slopes).Draw(t, "slope")
		cuts := []int{0}
		for range rapid.IntRange(2, 4).Draw(t, "members") {
			cuts = append(cuts, cuts[len(cuts)-1]+rapid.IntRange(1, 4).Draw(t, "bay"))
		}
		end := cuts[len(cuts)-1]
		var chain, backward []string
		for i := range len(cuts) - 1 {
			chain = append(chain, fmt.Sprintf("J%dJ%d", i, i+1))
			backward = append([]string{fmt.Sprintf("J%dJ%d", i+1, i)}, backward...)
		}
		first, last := rapid.IntRange(-9, 9).Draw(t, "first"), rapid.IntRange(-9, 9).Draw(t, "last")
		from := rapid.IntRange(0, 9).Draw(t, "from")
		until := rapid.IntRange(from+1, 10).Draw(t, "until")
		to := rapid.SampledFrom([]string{"down", "normal", "along", "[3, -4]"}).Draw(t, "to")
		per := rapid.SampledFrom([]string{"length", "run", "rise"}).Draw(t, "per")
		load := func(on string) string {
			return fmt.Sprintf("- {ramp: [%d, %d], to: %s, on: [%s], from: %d/10 length, until: %d/10 length, per: %s}\n", first, last, to, on, from, until, per)
		}
		whole := []int{0, end}
		many := reactions(t, mustRead(t, chainFile(slope, cuts, load(strings.Join(chain, ", ")))))
		one := reactions(t, mustRead(t, chainFile(slope, whole, load("J0J1"))))
		many, one = oneNamed(many), oneNamed(one)
		sameForces(t, many, one, "chain and member")
		back := oneNamed(reactions(t, mustRead(t, chainFile(slope, cuts, load(strings.Join(backward, ", "))))))
		oneBack := oneNamed(reactions(t, mustRead(t, chainFile(slope, whole, load("J1J0")))))
		sameForces(t, back, oneBack, "chain and member backward")
	})
}

// oneNamed keeps the reactions at J0.
func oneNamed(values map[string]exact.Num) map[string]exact.Num {
	kept := map[string]exact.Num{}
	for name, v := range values {
		if strings.Contains(name, "J0") {
			kept[name] = v
		}
	}
	return kept
}

// TestTurnedRound: what stands at x on AB stands at L − x on BA, with the direction along, and the values of a ramp, the
// other way round.
func TestTurnedRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.SampledFrom(slopes).Draw(t, "slope")
		cuts := []int{0, rapid.IntRange(1, 9).Draw(t, "length")}
		from := rapid.IntRange(0, 7).Draw(t, "from")
		until := rapid.IntRange(from+1, 8).Draw(t, "until")
		q := rapid.IntRange(-9, 9).Draw(t, "q")
		way := rapid.SampledFrom([]string{"along", "normal"}).Draw(t, "way")
		forward := mustRead(t, chainFile(slope, cuts, fmt.Sprintf(
			"- {ramp: [%[1]d, 5], to: down, on: J0J1, from: %[2]d/8 length, until: %[3]d/8 length}\n- {point: %[1]d, to: %[4]s, on: J0J1, at: %[2]d/8 length}\n- {couple: %[1]d, to: cw, on: J0J1, at: %[2]d/8 length}\n", q, from, until, way)))
		backward := mustRead(t, chainFile(slope, cuts, fmt.Sprintf(
			"- {ramp: [5, %[1]d], to: down, on: J1J0, from: %[3]d/8 length, until: %[2]d/8 length}\n- {point: -%[1]d, to: %[4]s, on: J1J0, at: %[2]d/8 length}\n- {couple: -%[1]d, to: ccw, on: J1J0, at: %[2]d/8 length}\n", q, 8-from, 8-until, way)))
		for i, l := range forward.Frame.Loads {
			b := backward.Frame.Loads[i]
			same := l.At.Equal(b.At) && l.Start.Equal(b.Start) && l.End.Equal(b.End) && l.First.Equal(b.First) && l.Last.Equal(b.Last)
			if !same || l.Member != b.Member {
				t.Errorf("load %d: %+v and %+v", i, l, b)
			}
		}
		sameForces(t, reactions(t, forward), reactions(t, backward), "named either way")
	})
}

// TestDecimals: every decimal is read as the fraction it stands for.
func TestDecimals(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole, part := rapid.StringMatching(`-?[1-9][0-9]{0,17}`).Draw(t, "whole"), rapid.StringMatching(`[0-9]{1,18}`).Draw(t, "part")
		text := whole + "." + part
		p := mustRead(t, fmt.Sprintf("title: Number\nunits: kN m\ngiven: {a: %s, b: %q}\njoints: {A: [0, 0], B: [a, 1]}\nmembers: [AB]\n", text, text))
		digits, err := exact.Parse(whole + part)
		if err != nil {
			t.Fatal(err)
		}
		scale, err := exact.Parse("1" + strings.Repeat("0", len(part)))
		if err != nil {
			t.Fatal(err)
		}
		for _, v := range []exact.Num{p.Given[0].Value, p.Given[1].Value, p.Frame.Joints[1].At.X} {
			if !v.Mul(scale).Equal(digits) {
				t.Errorf("%s was read as %v", text, v)
			}
		}
	})
}

// TestEditDistance checks the distance against counting every way to edit.
func TestEditDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.StringMatching(`[abc]{0,5}`).Draw(t, "a"), rapid.StringMatching(`[abc]{0,5}`).Draw(t, "b")
		if got, want := editDistance(a, b, 20), slowDistance(a, b); got != want {
			t.Errorf("%q to %q: %d, want %d", a, b, got, want)
		}
	})
}

// slowDistance tries every edit of the first letters.
func slowDistance(a, b string) int {
	if a == "" || b == "" {
		return len(a) + len(b)
	}
	change := 1
	if a[0] == b[0] {
		change = 0
	}
	best := min(change+slowDistance(a[1:], b[1:]), 1+slowDistance(a[1:], b), 1+slowDistance(a, b[1:]))
	if len(a) > 1 && len(b) > 1 && a[0] == b[1] && a[1] == b[0] {
		best = min(best, 1+slowDistance(a[2:], b[2:]))
	}
	return best
}

// TestFractions checks that a fraction of the run, of the rise and of the length, by a stroke or per cent, is the same place
// of a member, and that it is the one whose distance across is that part of the run.
func TestFractions(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		dx, dy := rapid.SampledFrom([]int{-12, -5, 3, 4, 8, 20}).Draw(t, "dx"), rapid.SampledFrom([]int{-15, 3, 4, 12, 21}).Draw(t, "dy")
		percent := rapid.IntRange(0, 100).Draw(t, "percent")
		var places []exact.Num
		for _, at := range []string{
			fmt.Sprintf("%d/100 length", percent), fmt.Sprintf("%d%% length", percent), fmt.Sprintf("%d/100 run", percent), fmt.Sprintf("%d%% run", percent),
			fmt.Sprintf("(%d/100) rise", percent), fmt.Sprintf("%d %% rise", percent), fmt.Sprintf("w*%d/100 run", percent), fmt.Sprintf("%d.%02d length", percent/100, percent%100),
		} {
			p := mustRead(t, fmt.Sprintf("title: T\nunits: kN m\ngiven: {w: %d}\njoints: {A: [0, 0], B: [%d, %d]}\nmembers: [AB]\nsupports: {A: fixed}\nloads: [{point: 1, to: down, on: AB, at: %q}]\n",
				max(dx, -dx), dx, dy, at))
			places = append(places, p.Frame.Loads[0].At)
		}
		for i, place := range places {
			if !place.Equal(places[0]) {
				t.Fatalf("writing %d of %d %% comes to %v, not %v", i, percent, place, places[0])
			}
		}
	})
}

// TestWalks checks that a walk through a pin is the list of its two members.
func TestWalks(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		ends := rapid.SampledFrom([]string{"ABCD", "ACBD", "BADC", "DACB", "CDAB"}).Draw(t, "ends")
		two := rapid.Bool().Draw(t, "two walks")
		file := func(first, second string) string {
			pieces := first
			if two {
				pieces += ", " + second
			}
			return "title: T\nunits: kN m\njoints: {A: [0, 0], B: [4, 3], C: [0, 3], D: [4, 0], X: [2, 1.5]}\nmembers: [AX, XB, CX, XD]\npins: {X: [" + pieces + "]}\nsupports: {A: fixed}\n"
		}
		a, b, c, d := ends[:1], ends[1:2], ends[2:3], ends[3:]
		walks := mustRead(t, file(a+"X"+b, c+"X"+d))
		lists := mustRead(t, file("["+a+"X, X"+b+"]", "[X"+c+", "+d+"X]"))
		if got, want := describe(walks), describe(lists); got != want {
			t.Fatalf("got\n%s\nwant\n%s", got, want)
		}
	})
}
