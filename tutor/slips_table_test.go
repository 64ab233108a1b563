package tutor

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"unpin/statics/slip"
)

// documentSlips holds the tables in DEVELOPERS.md to what was measured, and the catalogue to rows that all occur.
func documentSlips(t *testing.T, all []measure, by map[*slip.Slip]*tally) {
	const name = "../DEVELOPERS.md"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	for part, table := range map[string]string{"measures": measureTable(all), "slips": slipTable(t, by)} {
		begin, end := "<!-- table of "+part+" -->\n", "<!-- end of the table of "+part+" -->\n"
		before, rest, _ := strings.Cut(text, begin)
		_, after, found := strings.Cut(rest, end)
		if !found {
			t.Fatalf("%s has no place for the table of %s", name, part)
		}
		text = before + begin + table + end + after
	}
	switch {
	case text == string(data):
	case *update:
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		t.Errorf("the tables of slips in %s are out of date: go test ./tutor -run TestSlips$ -update", name)
	}
}

func measureTable(all []measure) string {
	var table strings.Builder
	table.WriteString("| measured | cases | of | result | wanted |\n|---|--:|--:|--:|--:|\n")
	for _, m := range all {
		cases, of := fmt.Sprint(m.count), m.of
		if m.of == 0 {
			cases, of = "", m.count
		}
		fmt.Fprintf(&table, "| %s | %s | %d | %.2f %% | %s |\n", m.what, cases, of, m.percent(), m.wanted())
	}
	return table.String()
}

func slipTable(t *testing.T, by map[*slip.Slip]*tally) string {
	var table strings.Builder
	table.WriteString("| slip | kind | source | named | asked | broadly | missed | taken for another | hidden |\n")
	table.WriteString("|---|---|---|--:|--:|--:|--:|--:|--:|\n")
	line := func(name, kind, source string, of tally) {
		fmt.Fprintf(&table, "| %s | %s | %s | %d | %d | %d | %d | %d | %d |\n",
			name, kind, source, of.named, of.asked, of.broadly, of.missed, of.wrong, of.hidden)
	}
	var all tally
	for _, s := range slip.Catalogue() {
		of := by[s]
		all.add(*of)
		if of.found() == 0 {
			t.Errorf("%s is never found", s.ID)
		}
		line(s.ID, s.Group.String(), s.Source, *of)
	}
	line(fmt.Sprintf("all %d", len(by)), "", "", all)
	return table.String()
}
