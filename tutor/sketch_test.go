package tutor

import (
	"fmt"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// The answers of sketches are held against a slow look at the solution: moments at many places along each member, by sections and not by
// the list of places, and shapes by differences of four moments and not by degrees.
func TestSketchesAreTrue(t *testing.T) {
	t.Parallel()
	for i, name := range librarytest.Names() {
		p, _ := problems.Library(name)
		d, err := Sketch(p, uint64(i))
		if err != nil {
			t.Fatal(err)
		}
		most := mostMoment(d.about.solution)
		for _, q := range d.asks {
			says := q.says()
			for at, text := range says[1:] {
				r, _ := q.read(fmt.Sprint(at + 1))
				right, answer := r.verdict == judging.Exact, text[strings.Index(text, ": ")+2:]
				switch {
				case strings.HasPrefix(says[0], "Where is"):
					if got := strings.Contains(answer, " ") && nearly(momentAt(d.about, answer), most); got != right {
						t.Errorf("%s: %s is said to be %v: %s of %s", name, answer, right, momentAt(d.about, answer), most)
					}
				case strings.HasPrefix(says[0], "What is M along "):
					if got := looks(d.about, strings.TrimSuffix(strings.TrimPrefix(says[0], "What is M along "), "?")) == answer; got != right {
						t.Errorf("%s: %s %s is said to be %v", name, says[0], answer, right)
					}
				}
			}
		}
	}
}

// samples is in how many places of a stretch moments are looked at.
const samples = 60

// part is a place of a stretch, i of n.
func part(p statics.Stretch, i, n int64) exact.Num {
	share, _ := exact.Int(i).Quo(exact.Int(n))
	return p.From.Add(p.Until.Sub(p.From).Mul(share))
}

// mostMoment is the largest moment that is met along the members.
func mostMoment(s *statics.Solution) exact.Num {
	var most exact.Num
	for _, d := range s.Diagrams {
		for _, p := range d.Stretches {
			for i := range int64(samples + 1) {
				if m := p.M.At(part(p, i, samples)).Abs(); m.Cmp(most) > 0 {
					most = m
				}
			}
		}
	}
	return most
}

// nearly reports whether a moment is within a thousandth of the largest that was met, or above.
func nearly(m, most exact.Num) bool {
	return m.Mul(exact.Int(1000)).Cmp(most.Mul(exact.Int(999))) >= 0
}

// momentAt is the largest moment at a place in words: "at B", "on BC, 2.5 m from B".
func momentAt(m *matter, place string) exact.Num {
	var most exact.Num
	for _, d := range m.solution.Diagrams {
		on, along := "", place
		if cut, rest, found := strings.Cut(place, ", "); found {
			on, along = strings.TrimPrefix(cut, "on "), rest
		}
		if on != "" && on != m.solution.Frame.Members[d.Member].Name {
			continue
		}
		for _, st := range d.Stations() {
			if m.words().Along(d.Member, st.At) != along {
				continue
			}
			for _, side := range []statics.Side{statics.Before, statics.After} {
				if f, ok := d.Section(st.At, side); ok && f.M.Abs().Cmp(most) > 0 {
					most = f.M.Abs()
				}
			}
		}
	}
	return most
}

// looks is the shape of the moment along a stretch by its name, told from four moments.
func looks(m *matter, name string) string {
	for _, d := range m.solution.Diagrams {
		for _, p := range d.Stretches {
			if problems.StretchName(m.solution, d.Member, p) != name {
				continue
			}
			var at [4]exact.Num
			for i := range at {
				f, _ := d.Section(part(p, int64(i)+1, 5), statics.After)
				at[i] = f.M
			}
			first := at[1].Sub(at[0])
			bent := !at[2].Sub(at[1]).Equal(first) || !at[3].Sub(at[2]).Equal(first)
			switch {
			case bent:
				return "curved"
			case !first.IsZero():
				return "straight, and inclined"
			case !at[0].IsZero():
				return "constant"
			}
			return "zero"
		}
	}
	return "no such stretch"
}
