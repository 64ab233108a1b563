package statics

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestStations compares the critical points of members with those in the table, checked by hand.
func TestStations(t *testing.T) {
	eachCase(t, "testdata/stations.txt", func(t *testing.T, c textCase) string {
		s, err := Solve(build(t, c.input))
		if err != nil || s.Values == nil {
			t.Fatal("not solved", err)
		}
		var b strings.Builder
		for _, d := range s.Diagrams {
			for _, st := range d.Stations() {
				fmt.Fprintf(&b, "%s %s\n", s.Frame.Members[d.Member].Name, stationText(st))
			}
		}
		return b.String()
	})
}

func stationText(st Station) string {
	text := fmt.Sprintf("%s%s: N %s, V %s, M %s", numText(st.At), [...]string{"", " before", " after"}[st.Side],
		numText(st.N), numText(st.V), numText(st.M))
	if st.Extreme {
		text += ", extreme"
	}
	if st.Found {
		text += ", found"
	}
	return text
}

// TestStationsOfRandomFrames checks that stations come in order, agree with the sections there, miss no place where the
// shear changes sign, and that no moment between them is greater or less than at all of them
// (S14).
func TestStationsOfRandomFrames(t *testing.T) {
	t.Parallel()
	found := 0
	overSeeds(t, 1000, 150, func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values == nil {
			return err
		}
		for _, d := range s.Diagrams {
			stations := d.Stations()
			if d.Withheld {
				if len(stations) > 0 {
					return fmt.Errorf("%s is withheld and has stations", f.Members[d.Member].Name)
				}
				continue
			}
			for _, st := range stations {
				if st.Found {
					found++
				}
			}
			if err := stationsFit(d, stations); err != nil {
				return fmt.Errorf("%s: %w", f.Members[d.Member].Name, err)
			}
		}
		return nil
	})
	if found < 50 {
		t.Errorf("only %d places of no shear found", found)
	}
}

func stationsFit(d Diagram, stations []Station) error {
	for i, st := range stations {
		if i > 0 && st.At.Cmp(stations[i-1].At) < 0 {
			return fmt.Errorf("%s comes after %s", st.At, stations[i-1].At)
		}
		if at, ok := d.Section(st.At, st.Side); st.Exact && (!ok || !at.Equal(st.InternalForces)) {
			return fmt.Errorf("%s, but the section has %s", stationText(st), show(at))
		}
		if st.Found && st.Exact && !st.V.IsZero() {
			return fmt.Errorf("%s: the shear is not nought", stationText(st))
		}
	}
	moment := func(x, y Station) int { return x.M.Cmp(y.M) }
	least, most := slices.MinFunc(stations, moment).M, slices.MaxFunc(stations, moment).M
	for _, p := range d.Stretches {
		for k := int64(1); k < 12; k++ {
			x := p.From.Add(p.Until.Sub(p.From).Mul(frac(k, 12)))
			at := p.At(x)
			if at.M.Cmp(most) > 0 || at.M.Cmp(least) < 0 {
				return fmt.Errorf("M = %s at %s lies beyond those of all stations, %s to %s", at.M, x, least, most)
			}
			if at.V.Sign()*p.At(p.Until).V.Sign() < 0 && !crosses(stations, x, p.Until) {
				return fmt.Errorf("the shear changes sign between %s and %s, and no station is there", x, p.Until)
			}
		}
	}
	return nil
}

// crosses reports whether an extreme lies between two places.
func crosses(stations []Station, from, until exact.Num) bool {
	return slices.ContainsFunc(stations, func(s Station) bool {
		return s.Extreme && s.At.Cmp(from) >= 0 && s.At.Cmp(until) <= 0
	})
}

// TestSectionOffTheMember asks for sections that there are not.
func TestSectionOffTheMember(t *testing.T) {
	s, err := Solve(build(t, simple))
	if err != nil {
		t.Fatal(err)
	}
	d := s.Diagrams[0]
	for _, off := range []struct {
		x    string
		side Side
	}{{"-1", Both}, {"0", Before}, {"4", After}, {"4.001", Both}, {"5", Before}} {
		if at, ok := d.Section(exact.MustParse(off.x), off.side); ok {
			t.Errorf("at %s, side %d: %s", off.x, off.side, show(at))
		}
	}
	if before, _ := d.Section(exact.Int(1), Before); before.V.Equal(exact.Num{}) {
		t.Error("no shear before the load")
	}
}
