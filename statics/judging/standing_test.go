package judging

import (
	"os"
	"strings"
	"testing"
)

// What is said where the sum stands, worked by hand from the sum that is printed.
func TestStanding(t *testing.T) {
	t.Parallel()
	const name = "testdata/standing.txt"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var now strings.Builder
	for line := range strings.Lines(string(data)) {
		if cells := strings.SplitN(strings.TrimSuffix(line, "\n"), " | ", 4); len(cells) == 4 {
			cells[3] = saidStanding(t, cells)
			line = strings.Join(cells, " | ") + "\n"
		} else if !strings.HasPrefix(line, "#") {
			t.Errorf("%q is no row", line)
		}
		now.WriteString(line)
	}
	switch {
	case now.String() == string(data):
	case *update:
		if err := os.WriteFile(name, []byte(now.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		t.Errorf("what is said has changed; it is now\n%s", now.String())
	}
}

// saidStanding types one wrong value and returns what is said.
func saidStanding(t *testing.T, row []string) string {
	l := newSheet(t, libraryProblem(t, row[0]))
	for _, q := range l.questions {
		if q.Name != row[1] {
			continue
		}
		held, v := l.caseWith(q, true), l.read(t, q, row[2])
		verdict := held.Verdict(v)
		if verdict.Right() {
			t.Errorf("%s is right", strings.Join(row, " | "))
		}
		return held.Find(verdict, v).Says
	}
	t.Errorf("%s does not ask for %s", row[0], row[1])
	return ""
}
