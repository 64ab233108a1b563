package variant

import (
	"context"
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// handedOut is a problem of the library as it was when codes of copies were first handed out: in testdata/handed, no file of which
// is ever changed. The library's own may since have other numbers, and more that vary.
func handedOut(t testing.TB, name string) *problems.Problem {
	t.Helper()
	data, err := os.ReadFile("testdata/handed/" + name + ".yaml")
	if err != nil {
		t.Fatal(err)
	}
	p, err := problems.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// maker is a maker for a problem that was handed out.
func maker(t testing.TB, name string) *Maker {
	t.Helper()
	m, err := New(handedOut(t, name))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// tried are problems that have good copies: some say what may vary, for the others it is found.
var tried = []string{"jetty-deck", "potting-lean-to", "harbour-sign", "gravel-platform", "park-footbridge", "mill-bridge", "balcony-prop",
	"orchard-gate", "sawmill-portal", "bell-frame", "painters-trestle", "stage-lift", "butterfly-roof", "camp-table", "grain-chute"}

// Every copy, read from its file, keeps all that the screen asks for, found anew and by other ways: values that end, as many
// negative ones within one, the same zeros and steps, no mistake hidden, every sum of every body in equilibrium.
func TestCopiesAreGood(t *testing.T) {
	t.Parallel()
	for _, name := range tried {
		m := maker(t, name)
		own := m.screen.own
		copies, err := m.Copies(t.Context(), Job{Source: Source{Set: name, Place: 1}, Wishes: Numbered(4), Distinct: true})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for _, c := range copies {
			p, err := problems.Read(name+".yaml", []byte(mustAt(t, m, c.Draw).Source()))
			if err != nil {
				t.Fatal(err)
			}
			s, err := statics.Solve(p.Frame)
			if err != nil || s.Count.Determinacy() != statics.Determinate {
				t.Fatalf("%s, %s is not determinate", name, c.Code)
			}
			for _, fault := range faultsOf(own, problems.Solved{Problem: p, Solution: s}) {
				t.Errorf("%s, %s: %s", name, c.Code, fault)
			}
			if long := longest(s.Values); long != c.Long && !longest(own.Values) {
				t.Errorf("%s, %s: its forces are %v, and that one of them is long is said to be %v", name, c.Code, s.Values, c.Long)
			}
		}
	}
}

// longest reports whether one of some values has more than two decimals and is no eighth, as its digits show.
func longest(values []exact.Num) bool {
	return slices.ContainsFunc(values, func(v exact.Num) bool {
		_, decimals, _ := strings.Cut(v.Decimal(12), ".")
		return v.Terminates() && len(decimals) > 2 && !slices.Contains([]string{"125", "375", "625", "875"}, decimals)
	})
}

func mustAt(t testing.TB, m *Maker, d Draw) *problems.Problem {
	t.Helper()
	p, err := m.At(d)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// faultsOf lists what is not as it should be with a copy.
func faultsOf(own, p problems.Solved) (faults []string) {
	if len(p.Plan) != len(own.Plan) {
		faults = append(faults, "another number of steps")
	}
	negative := 0
	for i, v := range p.Values {
		if !v.Terminates() && own.Values[i].Terminates() {
			faults = append(faults, fmt.Sprintf("%s is %v", p.Forces[i].Name, v))
		}
		if v.IsZero() != own.Values[i].IsZero() {
			faults = append(faults, p.Forces[i].Name+" is zero in one of the two")
		}
		negative += v.Sign() - own.Values[i].Sign()
	}
	if negative < -2 || negative > 2 {
		faults = append(faults, "more than one force has changed its sign")
	}
	hidden, _ := p.Hidden()
	before, _ := own.Hidden()
	if len(hidden) > len(before) {
		faults = append(faults, "a mistake is hidden")
	}
	for body := range p.Assembly.Bodies() {
		for _, along := range []statics.Vector{p.Assembly.Frame.Span(0), p.Assembly.Frame.Span(0).Left()} {
			if s := p.Assembly.ForceSum(statics.FreeBody{body}, along); !s.Residual(p.Values).IsZero() {
				faults = append(faults, "a body is not in equilibrium")
			}
		}
		if s := p.Assembly.MomentSum(statics.FreeBody{body}, statics.Point{}); !s.Residual(p.Values).IsZero() {
			faults = append(faults, "a body turns")
		}
	}
	return faults
}

// Copies are distinct where they are to be; in a class they may be equal, and then it is marked; who comes late or not at all
// changes nobody's numbers.
func TestDistinctAndEqual(t *testing.T) {
	t.Parallel()
	m := maker(t, "gravel-platform")
	source := Source{Set: "w5", Seed: "s", Place: 3}
	all, err := m.Copies(t.Context(), Job{Source: source, Wishes: Numbered(15), Distinct: true})
	if err != nil {
		t.Fatal(err)
	}
	keys := map[string]bool{}
	for _, c := range all {
		if key := m.key(c.Draw); keys[key] || c.Equal {
			t.Errorf("%s has the numbers of another", c.Code)
		} else {
			keys[key] = true
		}
	}
	class := Numbered(40)
	some, err := m.Copies(t.Context(), Job{Source: source, Wishes: class})
	if err != nil {
		t.Fatal(err)
	}
	seen, equal := map[string]bool{}, 0
	for _, c := range some {
		key := m.key(c.Draw)
		if seen[key] != c.Equal {
			t.Errorf("%s: equal is %v", c.Code, c.Equal)
		}
		if seen[key] = true; c.Equal {
			equal++
		}
	}
	if equal < 40-28 {
		t.Errorf("%d of 40 are equal to others, where there are 28 copies at most", equal)
	}
	late, err := m.Copies(t.Context(), Job{Source: source, Wishes: []Wish{class[30], class[2]}})
	if err != nil {
		t.Fatal(err)
	}
	if late[0].Code != some[30].Code || late[1].Code != some[2].Code {
		t.Error("the copies of two depend on the others")
	}
}

// TestShortage asks for more than there are.
func TestShortage(t *testing.T) {
	t.Parallel()
	_, err := maker(t, "potting-lean-to").Copies(t.Context(), Job{Source: Source{Set: "x", Place: 1}, Wishes: Numbered(20), Distinct: true})
	var short *Shortage
	if !errors.As(err, &short) {
		t.Fatalf("20 copies of 25 combinations: %v", err)
	}
	want := "there are only 7 good copies among the 25 sets of numbers that it allows, and 20 are wanted. Excluded are the other 18:\n" +
		"     17 because this would not hold: all forces are terminating decimals\n" +
		"      1 because they have the numbers of the problem itself\n" +
		"What would give more: other values in place of those with which none is good: w 1.5; and more values of w."
	if short.Error() != want {
		t.Errorf("it says\n%v\nnot\n%s", short, want)
	}
}

// TestStopped ends the search when its context does, with the cause.
func TestStopped(t *testing.T) {
	t.Parallel()
	cause := errors.New("enough")
	ctx, cancel := context.WithCancelCause(t.Context())
	job := Job{Source: Source{Set: "x", Place: 1}, Wishes: Numbered(2000), Distinct: true}
	job.Progress = func(int) { cancel(cause) }
	if _, err := maker(t, "jetty-deck").Copies(ctx, job); !errors.Is(err, cause) {
		t.Errorf("after a stop: %v", err)
	}
}

// TestNothingVaries refuses what has no copies.
func TestNothingVaries(t *testing.T) {
	t.Parallel()
	const frame = "title: T\nunits: kN m\njoints: {A: [0, 0], B: [%s, 0]}\nmembers: [AB]\nsupports: {A: %s}\n"
	for text, want := range map[string]string{
		fmt.Sprintf(frame, "1/7", "fixed"): "nothing in it can change",
		fmt.Sprintf(frame, "4", "pin"):     "not determinate",
	} {
		p, err := problems.Read("t.yaml", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		if _, err := New(p); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v, want %s", text, err, want)
		}
	}
}

// BenchmarkCopies makes 1,000 distinct copies of each of some problems for which what may vary is found.
func BenchmarkCopies(b *testing.B) {
	for _, name := range []string{"jetty-deck", "mill-bridge", "sawmill-portal"} {
		p := handedOut(b, name)
		b.Run(name, func(b *testing.B) { benchmarkCopies(b, p) })
	}
	for _, st := range problems.Starters() {
		if !slices.Contains([]string{"compound-beam", "fixed-frame", "three-pinned-frame", "ring"}, st.Kind) {
			continue
		}
		p, err := problems.Read(st.Kind, []byte(st.Text))
		if err != nil {
			b.Fatal(err)
		}
		b.Run(st.Kind, func(b *testing.B) { benchmarkCopies(b, p) })
	}
}

func benchmarkCopies(b *testing.B, p *problems.Problem) {
	for b.Loop() {
		m, err := New(p)
		if err != nil {
			b.Fatal(err)
		}
		if _, err := m.Copies(b.Context(), Job{Source: Source{Set: p.Name, Place: 1}, Wishes: Numbered(1000), Distinct: true}); err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(len(m.glanced)), "judged")
	}
}
