package marking

import (
	"bytes"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"unpin/problems/variant"
)

// classMarks are the marks of a made-up class on one problem: most forget a load in RB, and the true value of Ay is one that
// hardly anyone has.
func classMarks(papers int) string {
	rows := [][]string{Columns}
	for i := range papers {
		row := func(quantity, expected, given, verdict, slip, from, got string) {
			rows = append(rows, []string{fmt.Sprintf("s%03d", i), "beam", "", "1", quantity, expected, given, verdict, slip, from, got, "1", ""})
		}
		if i%3 == 0 {
			rows = append(rows, []string{fmt.Sprintf("s%03d", i), "beam", "", "1", "RB", "20.5", "6.25", Slip, "load-left-off", "", "0", "1", "is each load in your sum?; violates part AB, ΣM about A, which comes to −114 kN·m"})
			row("Ay", "11.5", "25.8", Carried, "", "RB", "1")
		} else {
			row("RB", "20.5", "20.5", Right, "", "", "1")
			row("Ay", "11.5", "12.5", Wrong, "", "", "0")
		}
		row("=M(AB, 0)", "0", "", Missing, "", "", "0")
	}
	rows = append(rows, []string{"<b>", "few", "", "1", "Cy", "1", "2", Slip, "load-left-off", "", "0", "1", ""})
	rows = append(rows, []string{"s001", "beam", "", "1", "Q = 3", "", "", "unread", "", "", "0", "0", "line 4: no"})
	return string(variant.WriteCSV(rows))
}

// TestReport holds reports on that class against texts.
func TestReport(t *testing.T) {
	t.Parallel()
	for _, papers := range []int{4, 30, 60} {
		r, err := ReadReport("marks.csv", strings.NewReader(classMarks(papers)), true)
		if err != nil {
			t.Fatal(err)
		}
		compare(t, fmt.Sprintf("testdata/report/%d.txt", papers), r.Text()+string(r.CSV()))
		if papers == 30 {
			compare(t, "testdata/report/30.html", r.HTML())
		}
		for i := range papers {
			if strings.Contains(r.Text()+r.HTML()+string(r.CSV()), fmt.Sprintf("s%03d", i)) {
				t.Errorf("s%03d is named", i)
			}
		}
	}
}

// TestNamedReport holds a report with names, of a class that is too small to be told of without.
func TestNamedReport(t *testing.T) {
	t.Parallel()
	r, err := ReadReport("marks.csv", strings.NewReader(classMarks(4)), false)
	if err != nil {
		t.Fatal(err)
	}
	compare(t, "testdata/report/named.txt", r.Text())
	if page := r.HTML(); !strings.Contains(page, "s003") || strings.Contains(page, "<b>") {
		t.Errorf("the page names nobody, or in a way that a browser takes for its own: %s", page)
	}
	pdf, err := r.PDF()
	if again, _ := r.PDF(); err != nil || !bytes.HasPrefix(pdf, []byte("%PDF-")) || !bytes.Equal(pdf, again) {
		t.Errorf("%v, %d bytes of PDF, the same again: %v", err, len(pdf), bytes.Equal(pdf, again))
	}
}

// A true value that most good papers contradict alike is told, however these write theirs, with what follows from it; on copies with
// other numbers, one that most good papers miss. Fewer than fifty papers tell nothing. By hand: all have two marks, so that the twenty best
// are the first by id, of which four have it right.
func TestSuspects(t *testing.T) {
	t.Parallel()
	written := []string{"12.5", "12.50 kN", "12,5 up", "12.5 kN up"}
	of := func(papers int, own bool) []string {
		rows := [][]string{Columns}
		for i := range papers {
			code := ""
			if own {
				code = fmt.Sprintf("K%03d", i)
			}
			id := []string{fmt.Sprintf("s%03d", i), "beam", code, "1"}
			rows = append(rows, append(slices.Clone(id), "RB", "20.5", "20.5", Right, "", "", "1", "1", ""))
			if i%5 == 0 {
				rows = append(rows, append(slices.Clone(id), "Ay", "11.5", "11.5", Right, "", "", "1", "1", ""))
				continue
			}
			rows = append(rows, append(slices.Clone(id), "Ay", "11.5", written[i%4], Wrong, "", "", "0", "1", ""))
			rows = append(rows, append(slices.Clone(id), "MA", "3", "4", Carried, "", "Ay", "1", "1", ""))
		}
		r, err := ReadReport("marks.csv", bytes.NewReader(variant.WriteCSV(rows)), false)
		if err != nil {
			t.Fatal(err)
		}
		var all []string
		for _, s := range r.Suspects {
			all = append(all, s.says())
		}
		return all
	}
	for _, row := range []struct {
		papers int
		own    bool
		want   string
	}{
		{49, false, ""},
		{60, false, "Look at the true value of Ay in beam: it is 11.5, and 16 of the 20 best papers have 12.5. MA, alike in them as well, follows from what they have. If they are right, mend the problem, or let the scheme accept the value, and mark again."},
		{49, true, ""},
		{60, true, "Look at the true values of Ay in beam: on copies of their own 16 of the 20 best papers go wrong there. Does the text say what the frame in the file is?"},
	} {
		if got := strings.Join(of(row.papers, row.own), "\n"); got != row.want {
			t.Errorf("%d papers, copies %v:\n%s\nnot\n%s", row.papers, row.own, got, row.want)
		}
	}
}

// Without names no group under five is told: every number of papers in the table is none, or five at least, whatever the class.
func TestAnonymousReport(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		rows := [][]string{Columns}
		for i := range rapid.IntRange(1, 30).Draw(t, "papers") {
			problem := rapid.SampledFrom([]string{"beam", "beam", "hall"}).Draw(t, "problem")
			for _, quantity := range []string{"RB", "M(AB, 2)", "V(AB, 2)", "terms for RB"} {
				verdict := rapid.SampledFrom([]string{Right, Right, Right, Carried, Slip, Wrong, Missing}).Draw(t, "verdict")
				id := map[string]string{Slip: rapid.SampledFrom([]string{"load-left-off", "turn-of-term"}).Draw(t, "slip")}[verdict]
				rows = append(rows, []string{fmt.Sprintf("s%03d", i), problem, "", "1", quantity, "20.5", "6.25", verdict, id, "", "0", "1", ""})
			}
		}
		r, err := ReadReport("marks.csv", bytes.NewReader(variant.WriteCSV(rows)), true)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(strings.TrimSpace(string(r.CSV())), "\n")[1:] {
			cells := strings.Split(strings.ReplaceAll(line, ", ", " "), ",")
			for _, cell := range cells[3:] {
				if n, err := strconv.Atoi(cell); err == nil && n > 0 && n < Few {
					t.Errorf("%s tells of %d papers", line, n)
				}
			}
		}
		if s := regexp.MustCompile(`\(([1-4]) papers?\)`).FindString(r.Text() + r.HTML()); s != "" {
			t.Errorf("an example of %s", s)
		}
	})
}

// Rows: a file of marks that is none, and what is said of it.
func TestBrokenMarks(t *testing.T) {
	t.Parallel()
	head := strings.Join(Columns, ",") + "\n"
	for text, want := range map[string]string{
		"":                                   "m.csv:1: these are no marks",
		"a,b\n":                              "m.csv:1: these are no marks",
		head + "a,b\n":                       "m.csv:2: there are 2 cells and 13 columns",
		head + "a,b,,1,c,1,1,right,,,x,1,\n": `m.csv:2: got and of are numbers, not "x" and "1"`,
		head + "\"a\"b,b,,1,c,1,1,right,,,1,1,\n": "m.csv:2: a quotation mark is not where a cell begins and ends",
	} {
		_, err := ReadReport("m.csv", strings.NewReader(text), false)
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, not %s", text, err, want)
		}
	}
}

// FuzzMarks reads any text as marks: it is refused, or told of in every form.
func FuzzMarks(f *testing.F) {
	f.Add(classMarks(6))
	data, _ := os.ReadFile("testdata/report/30.txt")
	f.Add(string(data))
	f.Fuzz(func(t *testing.T, text string) {
		if r, err := ReadReport("m.csv", strings.NewReader(text), false); err == nil {
			_, _, _ = r.Text(), r.HTML(), r.CSV()
		}
	})
}
