package judging

import (
	"os"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// TestRules types values just inside and just outside each edge of the rules of judging, as testdata/rules.txt has them:
// problem, what is asked, the student's own values of what came before, what is typed, the verdict's code. -update rewrites
// the codes.
func TestRules(t *testing.T) {
	const name = "testdata/rules.txt"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	sheets := map[string]*sheet{}
	lines := strings.Split(strings.TrimSuffix(string(data), "\n"), "\n")
	now := slices.Clone(lines)
	for i, line := range lines {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		row := strings.Split(line, " | ")
		if len(row) != 5 {
			t.Fatalf("%s:%d: a row has five fields: %s", name, i+1, line)
		}
		row[4] = ruled(t, sheets, row)
		now[i] = strings.Join(row, " | ")
		if now[i] != line && !*update {
			t.Errorf("%s:%d: %s\nis %s", name, i+1, line, row[4])
		}
	}
	if *update {
		if err := os.WriteFile(name, []byte(strings.Join(now, "\n")+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// ruled is the code of the verdict on a row.
func ruled(t *testing.T, sheets map[string]*sheet, row []string) string {
	l := sheets[row[0]]
	if l == nil {
		l = newSheet(t, ruleProblem(t, row[0]))
		sheets[row[0]] = l
	}
	l.Own, l.Found = slices.Clone(l.Solution.Values), nil
	for _, own := range strings.Split(row[2], "; ") {
		if name, value, ok := strings.Cut(own, " = "); ok {
			l.find(t, name, value)
		}
	}
	if rest, ok := strings.CutPrefix(row[1], "x"); ok {
		return l.placed(t, "M"+rest, row[3])
	}
	q := l.asked(t, row[1])
	return l.caseOf(q).Verdict(l.read(t, q, row[3])).Code()
}

// placed is the code of the verdict on where the shear is zero, at the place of a question for M.
func (l *sheet) placed(t *testing.T, name, line string) string {
	q := l.asked(t, name)
	for _, in := range l.Solution.Diagrams[q.member].Stretches {
		if q.station.At.Cmp(in.Until) < 0 {
			v := l.read(t, question{Asked: Asked{Name: "x", Dim: notation.Length}}, line)
			return l.Place(q.member, q.station, in).Verdict(v).Code()
		}
	}
	t.Fatalf("%s: no stretch at %s", l.name, name)
	return ""
}

// ruleProblem is a problem of the library, or one of testdata/rules.
func ruleProblem(t *testing.T, name string) *problems.Problem {
	file := "testdata/rules/" + name + ".yaml"
	data, err := os.ReadFile(file)
	if err != nil {
		return libraryProblem(t, name)
	}
	p, err := problems.Read(file, data)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// asked is the question of a name; of a section without before or after, the first at that place.
func (l *sheet) asked(t *testing.T, name string) question {
	t.Helper()
	for _, q := range l.questions {
		if q.Name == name || strings.TrimSuffix(strings.TrimSuffix(q.Name, " before)"), " after)")+")" == name {
			return q
		}
	}
	t.Fatalf("%s does not ask for %s", l.name, name)
	return question{}
}

// find takes a value as accepted.
func (l *sheet) find(t *testing.T, name, value string) {
	t.Helper()
	q, v := l.asked(t, name), exact.MustParse(value)
	if q.step >= 0 {
		l.Own[q.force] = v
		return
	}
	l.Found = append(l.Found, Found{q.member, q.station, q.quantity, v})
}
