package cells_test

import (
	"maps"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"unpin/statics/figure"
	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
)

// sizes are thirty sizes from one cell to a large screen.
var sizes = [][2]int{
	{1, 1}, {2, 1}, {1, 2}, {3, 3}, {5, 4}, {7, 2}, {8, 8}, {10, 3}, {12, 40}, {20, 6},
	{24, 10}, {30, 8}, {40, 12}, {46, 18}, {50, 14}, {60, 18}, {64, 20}, {70, 24}, {79, 10}, {80, 6},
	{80, 24}, {80, 30}, {90, 24}, {100, 30}, {110, 28}, {120, 40}, {132, 43}, {160, 45}, {200, 60}, {200, 24},
}

// TestSizes draws every scene of every test file at every size, under -short at every sixth. From 80 × 24 on nothing is clipped or left out; of a sum
// with all its arms from 100 × 30 on, of a sum on six storeys from 120 × 40 on, of up to four parts apart from 160 × 45 on.
func TestSizes(t *testing.T) {
	t.Parallel()
	unfit := map[string]bool{}
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		for _, ascii := range []bool{false, true} {
			for name, s := range d.Scenes(t, ascii) {
				for i, size := range sizes {
					if ascii && i%3 > 0 || testing.Short() && i%6 > 0 {
						continue
					}
					g := cells.Draw(s, size[0], size[1], ascii)
					fault := checkGrid(s, g, size[0], size[1], ascii)
					enough := size[0] >= 80 && size[1] >= 24
					if strings.HasPrefix(name, "sum") {
						enough = size[0] >= 100 && size[1] >= 30
					}
					if s.IsApart() { // up to four parts
						enough = size[0] >= 160 && size[1] >= 45 && len(s.Parts) <= 4
					}
					if filepath.Base(file) == "tower.txt" && strings.HasPrefix(name, "sum") {
						enough = size[0] >= 120 && size[1] >= 40
					}
					switch {
					case !enough || g.Fits():
					case s.IsApart() || figuretest.ManyArms(g.Dropped):
						unfit[filepath.Base(file)+" "+name] = true // it says so, and who asked shows something else
					default:
						fault = "clipped, or left out " + strings.Join(g.Dropped, ", ")
					}
					if fault != "" {
						t.Errorf("%s, %s at %d × %d: %s", filepath.Base(file), name, size[0], size[1], fault)
					}
				}
			}
		}
	}
	if len(unfit) > 7 {
		t.Errorf("%d scenes do not fit where others do: %v", len(unfit), slices.Sorted(maps.Keys(unfit)))
	}
}

// checkGrid reports what is wrong with a grid, or nothing: it looks at the text, the runes, and where each label of the
// scene has gone.
func checkGrid(s figure.Scene, g cells.Grid, w, h int, ascii bool) string {
	if err := g.Check(); err != nil {
		return err.Error()
	}
	lines := strings.Split(g.Text(), "\n")
	if len(lines) != h {
		return strconv.Itoa(len(lines)) + " lines"
	}
	for _, line := range lines {
		if n := len([]rune(line)); n != w {
			return "a line of " + strconv.Itoa(n) + " runes"
		}
		for _, r := range line {
			if ascii && r > 0x7e || !narrow(r) {
				return "the rune " + strconv.QuoteRune(r)
			}
		}
	}
	for text, n := range figuretest.Texts(s) {
		if found := placed(g, text, ascii); found < n {
			return "label " + text + " is lost"
		}
	}
	return ""
}

// narrow reports whether a rune takes one cell: ASCII, box drawing, braille, and the few signs of the figures, by
// Unicode Standard Annex 11 narrow, neutral, or ambiguous (one cell outside East Asian terminals). From memory.
func narrow(r rune) bool {
	return r >= 0x20 && r < 0x7f || r >= 0x2500 && r < 0x2580 || r >= 0x2800 && r < 0x2900 ||
		strings.ContainsRune("○◉▼▲►◄∨∧▽△▷◁↗↖↘↙↺↻∩∪·−°Σ", r)
}

// ratio is a slope within a label, which a triangle may tell in its place.
var ratio = regexp.MustCompile(` \d+:\d+`)

// placed counts where a label has gone: into the figure, to its numbers in the key, or among those left out.
func placed(g cells.Grid, text string, ascii bool) int {
	shown := text
	if ascii {
		shown = cells.ASCIIText(text)
	}
	n, tag := 0, ""
	for _, l := range g.Labels {
		if l.Text == shown || l.Text == ratio.ReplaceAllString(shown, "") {
			n++
		}
		if number, rest, _ := strings.Cut(l.Text, " "); l.Role == figure.KeyMark && rest == shown {
			tag = number
		}
	}
	for _, l := range g.Labels {
		if tag != "" && l.Text == tag {
			n++
		}
	}
	for _, d := range g.Dropped {
		if d == text {
			n++
		}
	}
	return n
}

// TestDimensionsStay holds the dimensions to their numbers: in a grid with nothing left out, each is written as often
// as the scene has it, with or without its unit, or stands in the key.
func TestDimensionsStay(t *testing.T) {
	t.Parallel()
	for _, file := range figuretest.Files(t, "../testdata") {
		d, _, _ := figuretest.Load(t, file)
		for name, s := range d.Scenes(t, false) {
			g := cells.Draw(s, 120, 40, false)
			text := g.Text()
			for _, k := range s.Dimensions {
				if !strings.Contains(text, k.Short) {
					t.Errorf("%s, %s: dimension %s is missing:\n%s", file, name, k.Text, text)
				}
			}
		}
	}
}

func BenchmarkCells(b *testing.B) {
	for _, name := range []string{"portal", "gable", "compound", "storeys", "tower"} {
		d, _, _ := figuretest.Load(b, filepath.Join("..", "testdata", name+".txt"))
		s := figure.OfFrame(&d.Frame, figure.Options{Style: d.Style})
		for _, size := range [][2]int{{80, 24}, {120, 40}} {
			b.Run(name+"/"+strconv.Itoa(size[0])+"x"+strconv.Itoa(size[1]), func(b *testing.B) {
				for b.Loop() {
					cells.Draw(s, size[0], size[1], false)
				}
			})
		}
	}
}
