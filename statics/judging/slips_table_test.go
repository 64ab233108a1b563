package judging

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"unpin/statics/slip"
)

// documentSlips holds testdata/slips.md to what was measured, and the catalogue to rows that all occur.
func documentSlips(t *testing.T, all []measure, by map[*slip.Slip]*tally) {
	const name = "testdata/slips.md"
	text := slipsHead + measureTable(all) + "\n" + slipTable(t, by)
	data, err := os.ReadFile(name)
	switch {
	case text == string(data):
	case *update:
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		t.Errorf("%s is out of date (%v): go test ./statics/judging -run TestSlips$ -update", name, err)
	}
}

const slipsHead = `# What is made of slips

Written by TestSlips. First, how often simulated students are told what they did; then each slip of the catalogue with
what became of it, typed as a value with four figures.

`

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
