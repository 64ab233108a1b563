package worksheet

import (
	"fmt"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/statics/figure/cells"
	"unpin/statics/figure/figuretest"
	"unpin/statics/figure/paper"
)

// screens are thirty sizes of a terminal.
var screens = [][2]int{
	{46, 18}, {50, 18}, {54, 20}, {60, 18}, {60, 24}, {64, 20}, {66, 30}, {70, 24}, {72, 20}, {76, 26},
	{80, 24}, {80, 30}, {84, 24}, {90, 24}, {90, 40}, {96, 28}, {100, 30}, {100, 50}, {106, 28}, {110, 32},
	{116, 36}, {120, 40}, {126, 30}, {132, 43}, {140, 40}, {150, 50}, {160, 45}, {170, 48}, {180, 60}, {200, 60},
}

// A view is a scene and the size from which on all of it is drawn.
type view struct {
	name  string
	scene figure.Scene
	w, h  int
}

// viewsOf are all scenes of a problem: as given; each body and the whole, and all apart, before and after it is solved;
// each sum of the plan; the internal forces; each motion.
func viewsOf(p *problems.Problem, s *statics.Solution) []view {
	d := newDocument(p, s, false)
	o := drawing{d}.options()
	views := []view{{"given", figure.OfFrame(&s.Frame, o), 80, 24}, {"apart", figure.OfParts(s.Assembly, nil, o), 120, 40}}
	for i := range s.Bodies() {
		views = append(views, view{"body " + s.BodyName(i), figure.OfBody(s.Assembly, statics.FreeBody{i}, nil, o), 80, 24})
	}
	for i, m := range s.Motions() {
		views = append(views, view{fmt.Sprint("motion ", i+1), figure.OfMotion(s.Assembly, m, o), 80, 24})
	}
	if s.Values == nil {
		return views
	}
	known := map[int]exact.Num{}
	for n, step := range s.Plan {
		views = append(views, view{fmt.Sprint("sum ", n+1), figure.OfSum(s.Assembly, step.Sums[0], known, o), 120, 40})
		for _, i := range step.Gives {
			known[i] = s.Values[i]
		}
	}
	views = append(views,
		view{"whole, unsolved", figure.OfBody(s.Assembly, s.Whole(), nil, o), 80, 24},
		view{"whole", figure.OfBody(s.Assembly, s.Whole(), known, o), 80, 24},
		view{"apart, solved", figure.OfParts(s.Assembly, known, o), 120, 40})
	for _, q := range []figure.InternalForce{figure.AxialForce, figure.ShearForce, figure.BendingMoment} {
		views = append(views, view{q.Letter(), figure.OfDiagram(s, q, nil, o), 80, 24})
	}
	return views
}

// TestFigures draws all scenes of all problems, and once on paper: nothing is cut off, no two labels collide, and where there
// is room nothing is left out. Each has every third of the sizes, beginning with another one, with -whole all of them and in
// short mode every fifth.
func TestFigures(t *testing.T) {
	t.Parallel()
	step, scenes, drawings := 3, 0, 0
	unfit := map[string]bool{}
	switch {
	case librarytest.Whole():
		step = 1
	case testing.Short():
		step = 5
	}
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		for k, v := range viewsOf(p, s) {
			if err := paper.Layout(v.scene, figureWide, figureTall).Check(); err != nil {
				t.Errorf("%s on paper: %v", v.name, err)
			}
			scenes++
			for i := (k + len(p.Title)) % step; i < len(screens); i += step {
				drawings++
				w, h := screens[i][0], screens[i][1]
				g := cells.Draw(v.scene, w, h, false)
				if err := g.Check(); err != nil || g.Width != w || g.Height != h {
					t.Errorf("%s at %d × %d: %v", v.name, w, h, err)
				}
				switch {
				case w < v.w || h < v.h || g.Fits():
				case v.scene.IsApart() || figuretest.ManyArms(g.Dropped):
					unfit[p.Title+", "+v.name] = true // it says so, and who asked shows something else
				default:
					t.Errorf("%s at %d × %d leaves out %q", v.name, w, h, g.Dropped)
				}
			}
		}
	})
	t.Logf("%d scenes, %d drawings in cells; %d scenes do not fit where others do", scenes, drawings, len(unfit))
	if len(unfit) > 5 {
		t.Errorf("%d scenes do not fit where others do: %v", len(unfit), unfit)
	}
	if scenes < 1400 && !testing.Short() {
		t.Errorf("only %d scenes", scenes)
	}
}

// TestImages holds title and words of every image of three problems to the files in testdata/images, with what is said
// where there is none.
func TestImages(t *testing.T) {
	t.Parallel()
	for _, path := range []string{"examples/canopy.yaml", "solutions/unstable.yaml", "solutions/ring.yaml"} {
		p, s := solveFile(t, filepath.Join(testdata, path))
		var b strings.Builder
		show := func(name string, svg []byte, err error) {
			fmt.Fprintf(&b, "%s\n", name)
			if err != nil {
				fmt.Fprintf(&b, "  %v\n", err)
				return
			}
			m := imageWords.FindSubmatch(svg)
			if m == nil {
				t.Fatalf("%s has no title and words", name)
			}
			fmt.Fprintf(&b, "  %s\n    %s\n", m[1], strings.ReplaceAll(string(m[2]), "&#xA;", "\n    "))
		}
		for _, name := range Figures {
			svg, err := SVG(p, s, name)
			show(name, svg, err)
		}
		for step := range s.Plan {
			svg, err := StepSVG(p, s, step+1)
			show(fmt.Sprint("step ", step+1), svg, err)
		}
		if s.Values == nil {
			svg, err := StepSVG(p, s, 1)
			show("step 1", svg, err)
		}
		same(t, filepath.Join("testdata", "images", p.Name+".txt"), b.String())
	}
}

var imageWords = regexp.MustCompile(`(?s)<title>(.*?)</title>\n<desc>(.*?)</desc>`)
