package marking

import (
	"encoding/csv"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/statics"
)

// A mark is what a person gave for a value of a paper: the verdict, the points, and the values that they thought may be at fault instead.
type mark struct{ verdict, points, or string }

// TestForty holds the marks of four times forty papers against those of two people each, who marked them by a page of rules from the answers and the true
// values alone, and saw neither each other's marks nor these. How often they agree, and where they do not, is agreement.txt beside them.
func TestForty(t *testing.T) {
	t.Parallel()
	if testing.Short() {
		t.Skip("ten seconds of arithmetic")
	}
	for _, folder := range []string{"testdata/forty", "testdata/forty-again", "testdata/forty-third", "testdata/forty-fourth"} {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			t.Parallel()
			tellForty(t, folder)
		})
	}
}

// tellForty tells how often the marks of the papers in a folder agree.
func tellForty(t *testing.T, folder string) {
	people := []map[string]mark{marksOf(t, folder+"/one.csv"), marksOf(t, folder+"/two.csv")}
	ours := markForty(t, folder)
	if len(people[0]) != len(people[1]) || len(people[0]) < 250 {
		t.Fatalf("%d and %d values", len(people[0]), len(people[1]))
	}
	var text strings.Builder
	tellAgreement(&text, "the two people", people[0], people[1])
	tellAgreement(&text, "the program and the first", ours, people[0])
	tellAgreement(&text, "the program and the second", ours, people[1])
	fmt.Fprintf(&text, "\nWhere the three differ, with what each gave and may be at fault instead:\n")
	for _, key := range keysOf(people[0]) {
		a, b, c := people[0][key], people[1][key], ours[key]
		if halves(a.points) != halves(b.points) || halves(a.points) != halves(c.points) {
			fmt.Fprintf(&text, "%-8s first %s %s [%s]; second %s %s [%s]; program %s %s [%s]\n", key, a.points, a.verdict, a.or, b.points, b.verdict, b.or, c.points, c.verdict, c.or)
		}
	}
	compare(t, folder+"/agreement.txt", text.String())
}

// marksOf reads what a person gave, by paper and quantity.
func marksOf(t *testing.T, name string) map[string]mark {
	t.Helper()
	file, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatalf("%s: %d rows, %v", name, len(rows), err)
	}
	all := map[string]mark{}
	for _, r := range rows[1:] {
		all[r[0]+" "+r[1]] = mark{r[2], r[3], r[4]}
	}
	return all
}

// markForty is what the program gives for the forces of the same papers.
func markForty(t *testing.T, folder string) map[string]mark {
	t.Helper()
	all := map[string]mark{}
	files, err := filepath.Glob(folder + "/*.yaml")
	if err != nil || len(files) != 10 {
		t.Fatalf("%d frames, %v", len(files), err)
	}
	for _, path := range files {
		m := beside(t, strings.TrimSuffix(path, ".yaml"), "")
		file, err := os.Open(strings.TrimSuffix(path, ".yaml") + ".txt")
		if err != nil {
			t.Fatal(err)
		}
		answers, err := ReadAnswers(path, file)
		file.Close()
		if err != nil || len(answers.Papers) != 4 {
			t.Fatalf("%s: %d papers, %v", path, len(answers.Papers), err)
		}
		scheme := DefaultScheme()
		for _, paper := range answers.Papers {
			for _, a := range m.Mark(paper, scheme, ten).Answers {
				if a.Item.Force != statics.None {
					all[paper.Student+" "+a.Item.Name] = mark{a.Verdict, pointsOf(scheme, a.Verdict), strings.Join(a.Or, " ")}
				}
			}
		}
	}
	return all
}

// pointsOf is what of a value's points its verdict earns, as the people write it. That a sense is charged once a problem was not among their rules.
func pointsOf(s *Scheme, verdict string) string {
	earns := s.Verdicts[verdict]
	return earns.Decimal(1)
}

// keysOf lists what was marked, in order.
func keysOf(all map[string]mark) []string { return slices.Sorted(maps.Keys(all)) }

// tellAgreement tells how often two have given the same points: for values, and for whole papers.
func tellAgreement(text *strings.Builder, who string, a, b map[string]mark) {
	same := 0
	papers := map[string]int{} // by how many half points one gave more
	for key, mine := range a {
		paper, _, _ := strings.Cut(key, " ")
		papers[paper] += halves(mine.points) - halves(b[key].points)
		if halves(mine.points) == halves(b[key].points) {
			same++
		}
	}
	alike, near := 0, 0
	for _, more := range papers {
		switch more {
		case 0:
			alike++
			near++
		case -1, 1:
			near++
		}
	}
	n := float64(len(a))
	fmt.Fprintf(text, "%s: the same points for %.1f %% of %d values; %d papers of %d alike, %d within half a point\n", who, 100*float64(same)/n, len(a), alike, len(papers), near)
}

// halves counts half points.
func halves(points string) int { return map[string]int{"0": 0, "0.5": 1, "1": 2}[points] }
