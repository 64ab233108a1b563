package slip

import (
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

var update = flag.Bool("update", false, "write the sentences of testdata/worked anew; the values there are worked by hand")

// A workedSlip is one mistake at one question, worked by hand: the right value and the wrong one, which the comment above it
// derives from the problem alone. What is said is written by -update, everything else by hand.
type workedSlip struct {
	lines []string // as they stand in the file
	field map[string]string
	sums  []string
	frame testFrame
}

// readWorked reads the worked slips of a file, one a paragraph.
func readWorked(t *testing.T, name string, frames map[string]testFrame) (heading string, all []workedSlip) {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	paragraphs := strings.Split(strings.TrimSpace(string(data)), "\n\n")
	for _, p := range paragraphs[1:] {
		w := workedSlip{lines: strings.Split(p, "\n"), field: map[string]string{}}
		for _, line := range w.lines {
			key, value, found := strings.Cut(line, ": ")
			switch {
			case strings.HasPrefix(line, "#"):
				w.field["#"] += line
			case !found:
				t.Fatalf("%s: %q is no line of a worked slip", name, line)
			case key == "sum":
				w.sums = append(w.sums, value)
			default:
				w.field[key] = value
			}
		}
		of, _, _ := strings.Cut(w.field["section"]+strings.Join(w.sums, ""), ",")
		var known bool
		if w.frame, known = frames[of]; !known {
			t.Fatalf("%s: there is no frame %q", name, of)
		}
		all = append(all, w)
	}
	return paragraphs[0], all
}

// target is what a worked slip asks for.
func (w workedSlip) target(t *testing.T) interface {
	Value() exact.Num
	Candidates() []Candidate
	Slight() []Candidate
} {
	t.Helper()
	if w.field["section"] != "" {
		return w.section(t)
	}
	q := Question{Assembly: w.frame.Assembly, Values: w.frame.Values}
	for _, line := range w.sums {
		sum, unknowns, _ := strings.Cut(line, " -> ")
		q.Sums, q.Gives = append(q.Sums, w.sum(t, strings.SplitN(sum, ", ", 3)[1:])), nil
		for _, name := range strings.Split(unknowns, ", ") {
			q.Gives = append(q.Gives, w.frame.force(t, name))
		}
	}
	q.Force = q.Gives[0]
	q.Known = func(f int) bool { return !slices.Contains(q.Gives, f) }
	q.Stands, q.Customary = w.with(t, "the sum on the page"), w.with(t, "feet and pounds")
	return q
}

// with reports whether a question is asked with something.
func (w workedSlip) with(t *testing.T, what string) bool {
	t.Helper()
	if h := w.field["with"]; h != "" && h != "the sum on the page" && h != "feet and pounds" {
		t.Fatalf("with %q?", h)
	}
	return w.field["with"] == what
}

// sum reads a body and a sum: "ABC" or "whole", and "moments about A" or "forces along 0 1".
func (w workedSlip) sum(t *testing.T, words []string) statics.Sum {
	t.Helper()
	a := w.frame.Assembly
	body := a.Whole()
	if words[0] != "whole" {
		body = slices.DeleteFunc(body, func(b int) bool { return a.BodyName(b) != words[0] })
	}
	if len(body) == 0 {
		t.Fatalf("no body %q", words[0])
	}
	r := frameReader{frame: a.Frame, words: strings.Fields(words[1])[2:]}
	if strings.HasPrefix(words[1], "moments about ") {
		return a.MomentSum(body, a.Frame.Joints[r.joint()].At)
	}
	return a.ForceSum(body, r.direction())
}

// section reads a place: "V in AB at 3 after", "M in AB at 4 from the end".
func (w workedSlip) section(t *testing.T) Section {
	t.Helper()
	_, text, _ := strings.Cut(w.field["section"], ", ")
	text, fromEnd := strings.CutSuffix(text, " from the end")
	words := strings.Fields(text)
	r := frameReader{frame: w.frame.Frame, words: append([]string{words[2]}, words[4])}
	c := Section{Solution: w.frame.Solution, Quantity: statics.Quantity(strings.Index("NVM", words[0])), Member: r.member(),
		Values: w.frame.Values, Station: statics.Station{At: r.number(), Exact: true}}
	if fromEnd {
		c.Side = statics.ToEnd
	}
	for _, s := range w.frame.Diagrams[c.Member].Stations() {
		if s.At.Equal(c.Station.At) && (len(words) == 5 || words[5] == [...]string{"both", "before", "after"}[s.Side]) {
			c.Station = s
			break
		}
	}
	return c
}

// Every slip of the catalogue leads to the wrong value that was worked by hand, alone or with the others that are named.
func TestWorkedSlips(t *testing.T) {
	t.Parallel()
	files, err := filepath.Glob("testdata/worked/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	frames, worked := readFrames(t), map[string]bool{}
	for _, name := range files {
		if filepath.Base(name) == "frames.txt" {
			continue
		}
		heading, all := readWorked(t, name, frames)
		text := heading
		for i := range all {
			all[i].check(t)
			worked[all[i].field["slip"]] = true
			text += "\n\n" + strings.Join(all[i].lines, "\n")
		}
		if *update {
			if err := os.WriteFile(name, []byte(text+"\n"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	for _, s := range Catalogue() {
		if !worked[s.ID] {
			t.Errorf("%s is not worked by hand in testdata/worked", s.ID)
		}
	}
}

// check holds the catalogue to a worked slip.
func (w *workedSlip) check(t *testing.T) {
	t.Helper()
	at := w.field["slip"] + ", " + w.field["section"] + strings.Join(w.sums, " and ")
	if w.field["#"] == "" {
		t.Errorf("%s: it is not told how the wrong value was worked", at)
	}
	target := w.target(t)
	if right := exact.MustParse(w.field["right"]); !target.Value().Equal(right) {
		t.Errorf("%s: the right value is %s, by hand %s", at, target.Value(), right)
	}
	wrong, within := typedWrong(w.field["wrong"])
	var also []string
	var named *Slip
	for _, c := range append(target.Candidates(), target.Slight()...) {
		switch {
		case c.Value.Sub(wrong).Abs().Cmp(within) > 0:
		case c.Slip.ID == w.field["slip"]:
			named = c.Slip
		case !slices.Contains(also, c.Slip.ID):
			also = append(also, c.Slip.ID)
		}
	}
	if named == nil {
		t.Errorf("%s does not lead to %s, worked by hand", at, w.field["wrong"])
		return
	}
	slices.Sort(also)
	if got := strings.Join(also, ", "); got != w.field["also"] {
		t.Errorf("%s: %s comes from %s as well\nby hand: %s", at, w.field["wrong"], got, w.field["also"])
	}
	w.says(t, at, named.Says)
}

// typedWrong is a wrong value, and how far from it a candidate may be: "about" allows half a unit of the last place.
func typedWrong(text string) (v, within exact.Num) {
	number, about := strings.CutPrefix(text, "about ")
	v = exact.MustParse(number)
	if _, places, _ := strings.Cut(number, "."); about {
		within = exact.MustParse("0." + strings.Repeat("0", len(places)) + "5")
	}
	return v, within
}

// says holds what is said to what the file has, or notes it.
func (w *workedSlip) says(t *testing.T, at, says string) {
	t.Helper()
	if *update {
		w.lines = slices.DeleteFunc(w.lines, func(line string) bool { return strings.HasPrefix(line, "says: ") })
		w.lines = append(w.lines, "says: "+says)
		return
	}
	if says != w.field["says"] {
		t.Errorf("%s: says %q, in the file %q", at, says, w.field["says"])
	}
}

// Slips that cannot be made at a question lead to nothing there.
func TestAbsentSlips(t *testing.T) {
	t.Parallel()
	_, all := readWorked(t, "testdata/absent.txt", readFrames(t))
	for _, w := range all {
		at := w.field["section"] + strings.Join(w.sums, " and ")
		candidates := w.target(t).Candidates()
		for _, id := range strings.Split(w.field["never"], ", ") {
			if !slices.ContainsFunc(catalogue, func(s *Slip) bool { return s.ID == id }) {
				t.Errorf("%s: no slip %q", at, id)
			}
			if slices.ContainsFunc(candidates, func(c Candidate) bool { return c.Slip.ID == id }) {
				t.Errorf("%s: %s can be made", at, id)
			}
		}
	}
}
