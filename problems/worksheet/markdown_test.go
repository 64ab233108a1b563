package worksheet

import (
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// TestMarkdown compares solutions as Markdown with files: an example, a frame with letters, and one that can move.
func TestMarkdown(t *testing.T) {
	for _, path := range []string{"examples/canopy.yaml", "solutions/letters.yaml", "solutions/unstable.yaml"} {
		p, s := solveFile(t, filepath.Join(testdata, path))
		golden(t, p.Name+".md", Markdown(One(p, s), Options{}))
	}
}

// image is a figure of a problem as an SVG image.
func image(t *testing.T, p *problems.Problem, s *statics.Solution, name string) string {
	t.Helper()
	svg, err := SVG(p, s, name)
	if err != nil {
		t.Fatal(err)
	}
	return string(svg)
}

// TestPictures holds the images that README shows.
func TestPictures(t *testing.T) {
	p, s := solveFile(t, filepath.Join("..", "library", "21-sawmill-portal.yaml"))
	pictures := map[string]string{"forces": image(t, p, s, "forces"), "M": image(t, p, s, "M")}
	step, err := StepSVG(p, s, 4)
	if err != nil {
		t.Fatal(err)
	}
	pictures["step-4"] = string(step)
	for name, svg := range pictures {
		golden(t, filepath.Join("..", "pictures", "sawmill-portal-"+name+".svg"), svg)
	}
}

// TestMarkdownIsWhole holds every document to what Markdown needs: code blocks end, the rows of a table are as long as
// its head, a table and a code block have a free line before them, and outside of code no sign is taken for markup.
func TestMarkdownIsWhole(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		text := Markdown(One(p, s), Options{})
		if !strings.HasPrefix(text, "# ") || !strings.HasSuffix(text, "\n") {
			t.Error("the document does not begin with its title, or not end its last line")
		}
		fenced, columns, before := false, 0, ""
		for i, line := range strings.Split(text, "\n") {
			switch {
			case strings.HasPrefix(line, "```"):
				if !fenced && before != "" {
					t.Errorf("line %d begins a code block after %q", i+1, before)
				}
				fenced = !fenced
			case fenced:
			case strings.HasPrefix(line, "|"):
				n := strings.Count(strings.ReplaceAll(line, `\|`, ""), "|")
				if columns != 0 && n != columns || columns == 0 && before != "" {
					t.Errorf("line %d has %d bars, after %q", i+1, n, before)
				}
				columns = n
			default:
				columns = 0
			}
			before = line
		}
		if fenced {
			t.Error("a code block does not end")
		}
	})
}

// TestMarkdownEscapes: what a problem says is shown as it is written.
func TestMarkdownEscapes(t *testing.T) {
	p, s := solve(t, "marks", []byte("title: '*Beam* <b>_1_ [a](b) # `c`'\nunits: kN m\njoints: {A: [0, 0], B: [1, 0]}\nmembers: [AB]\nsupports: {A: fixed}\n"))
	want := "# \\*Beam\\* \\<b\\>\\_1\\_ \\[a\\](b) \\# \\`c\\`\n"
	if text := Markdown(One(p, s), Options{}); !strings.HasPrefix(text, want) {
		t.Errorf("the title is %q", text[:strings.IndexByte(text, '\n')])
	}
}
