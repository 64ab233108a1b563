package cells

import (
	"strings"
	"testing"

	"unpin/statics/figure"
)

// TestStand: a load stands off its line by what it stands on, a row more where that is inclined, and a row as a projection.
func TestStand(t *testing.T) {
	t.Parallel()
	level := figure.Spread{To: figure.Position{X: 6}, Toward: figure.Direction{Y: -1}, First: 1, Last: 0.5}
	inclined := level
	inclined.To.Y = 3
	p := &painter{lettering: &lettering{detail: detail{arms: 2}}, scene: &figure.Scene{Spreads: []figure.Spread{level, inclined}}}
	depth := 2 * p.depth(1, false)
	if depth <= 0 {
		t.Fatalf("a load is %g deep", depth)
	}
	for _, c := range []struct {
		of   figure.Spread
		want float64
	}{
		{figure.Spread{}, 0},
		{figure.Spread{Projected: true}, 2},
		{figure.Spread{On: []int{0}}, depth},
		{figure.Spread{On: []int{1}}, depth + 2},
		{figure.Spread{On: []int{0, 1}, Projected: true}, 2*depth + 4},
	} {
		if got := p.stand(c.of); got != c.want {
			t.Errorf("%+v stands off by %g, want %g", c.of, got, c.want)
		}
	}
}

// TestLoadAlongItsLine: heads run beside the member, at the left of an upright one and above a level one, whichever way the
// member is named.
func TestLoadAlongItsLine(t *testing.T) {
	t.Parallel()
	for _, ends := range [][2]figure.Position{{{}, {Y: 6}}, {{Y: 6}, {}}, {{}, {X: 6}}, {{X: 6}, {}}} {
		from, to := ends[0], ends[1]
		along := figure.NewDirection(to.X-from.X, to.Y-from.Y)
		g := Draw(figure.Scene{
			Strokes: []figure.Stroke{{From: from, To: to, Look: figure.Look{Role: figure.MemberLine}}},
			Spreads: []figure.Spread{{From: from, To: to, Toward: along, First: 1, Last: 1, Look: figure.Look{Role: figure.LoadMark}}},
		}, 40, 20, false)
		rows := strings.Split(g.Text(), "\n")
		heads, member := "▲▼◄►", "┃━╻╹╺╸"
		seen := 0
		for r, row := range rows {
			cells := []rune(row)
			for c, k := range cells {
				if !strings.ContainsRune(heads, k) {
					continue
				}
				seen++
				upright := along.Y != 0
				if upright && !strings.ContainsAny(string(cells[c:]), member) {
					t.Errorf("%v: a head is not at the left of the member:\n%s", ends, g.Text())
				}
				if !upright && !strings.ContainsAny(strings.Join(rows[r:], ""), member) {
					t.Errorf("%v: a head is not above the member:\n%s", ends, g.Text())
				}
			}
		}
		if seen == 0 {
			t.Errorf("%v: no heads:\n%s", ends, g.Text())
		}
	}
}
