package worksheet

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// byPartsForm is what is said of a member's M by parts, in units.
var byPartsForm = regexp.MustCompile(`M has two parts: the straight line from (\S+)(?: \S+)? at (\S+) to (\S+)(?: \S+)? at (\S+), and the parabola of a simple beam, (\S+)·(\S+)²/8 = (\S+)`)

// TestByParts reads what is said of M by parts and adds it up by hand: at mid-span the mean of the moments at the ends and w·L²/8
// are M there, which is read off the diagram; to the three figures that are printed.
func TestByParts(t *testing.T) {
	t.Parallel()
	said := 0
	number := func(text string) float64 {
		x, err := strconv.ParseFloat(strings.NewReplacer("−", "-", ",", ".").Replace(text), 64)
		if err != nil {
			t.Error(err)
		}
		return x
	}
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		if s.Values == nil || p.Units.Letters() {
			return
		}
		text := strings.Join(strings.Fields(Text(One(p, s), Options{Only: []string{"diagrams"}})), " ")
		for _, k := range byPartsForm.FindAllStringSubmatch(text, -1) {
			said++
			from, to, w, long, most := number(k[1]), number(k[3]), number(k[5]), number(k[6]), number(strings.TrimSuffix(k[7], "~"))
			scale := math.Max(math.Max(math.Abs(from), math.Abs(to)), math.Abs(most))
			if math.Abs(w*long*long/8-most) > 0.01*math.Abs(most) {
				t.Errorf("%s: not so", k[0])
			}
			found := false
			for _, g := range s.Diagrams {
				m := s.Frame.Members[g.Member]
				if s.Frame.Joints[m.From].Name != k[2] || s.Frame.Joints[m.To].Name != k[4] || len(g.Stretches) != 1 {
					continue
				}
				mid := g.Stretches[0].M.At(g.Length.Mul(exact.MustParse("0.5"))).Float()
				found = found || math.Abs((from+to)/2+most-mid) < 0.01*scale
			}
			if !found {
				t.Error(fmt.Sprint(k[0], ": M at mid-span is another"))
			}
		}
	})
	if said < 20 && !testing.Short() {
		t.Errorf("said of %d members only", said)
	}
	t.Logf("%d members", said)
}
