package judging

import (
	"os"
	"slices"
	"strings"
	"testing"
)

// Wrong values that were worked out by hand, with no help from the catalogue: the slip made is found.
func TestWorkedSlips(t *testing.T) {
	const name = "testdata/slips.txt"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(string(data), "\n"), "\n")
	now := slices.Clone(lines)
	for i, line := range lines {
		if !strings.HasPrefix(line, "#") {
			now[i] = workedSlip(t, strings.Split(line, " | "))
		}
	}
	if text := strings.Join(now, "\n") + "\n"; text != string(data) {
		if !*update {
			t.Fatalf("what the lesson finds has changed; it is now\n%s", text)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// workedSlip types one worked value and returns its line with what the lesson finds.
func workedSlip(t *testing.T, row []string) string {
	l := newSheet(t, libraryProblem(t, row[0]))
	for _, q := range l.questions {
		if q.Name == row[1] {
			return strings.Join(append(row[:4], workedOutcome(t, l, q, row)), " | ")
		}
	}
	t.Fatalf("%s does not ask for %s", row[0], row[1])
	return ""
}

func workedOutcome(t *testing.T, l *sheet, q question, row []string) string {
	v := l.read(t, q, row[2])
	var found []string
	held := l.caseOf(q)
	d := held.Diagnosis(v)
	for _, m := range d.Matches {
		if !slices.Contains(found, m.Slip.ID) {
			found = append(found, m.Slip.ID)
		}
	}
	if held.Verdict(v).Right() || !slices.Contains(found, row[3]) {
		t.Errorf("%s: finds %v", strings.Join(row, " | "), found)
	}
	if d.Named() != nil {
		return "named"
	}
	others := slices.DeleteFunc(found, func(id string) bool { return id == row[3] })
	return strings.Join(append([]string{"asked, with"}, others...), " ")
}
