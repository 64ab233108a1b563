package problems

import (
	"fmt"
	"strings"
	"testing"
)

// Rows: a scheme, and what is read of it, or what is said against it.
func TestReadScheme(t *testing.T) {
	t.Parallel()
	rows := []struct{ text, want string }{
		{DefaultScheme, "50 [10 20 20] [10 15 10 5] carried 1 close 1/2 rounded 1 sense 1/2 unit 1/2 [sense unit] 1/2 last [] map[]"},
		{"round: 1", "50 [10 20 20] [10 15 10 5] carried 1 close 1/2 rounded 1 sense 1/2 unit 1/2 [sense unit] 1 last [] map[]"},
		{"forces: 100\ndiagrams: {M: 0}\nverdicts: {right: 1}\nonce: []\nvoid: [Cx, M(BC, 2.4)]\naccept: {Cx: [6.5, -6.5], Cy: 8.2}",
			"100 [10 20 0] [10 15 10 5] [] 1/2 last [Cx M(BC, 2.4)] map[Cx:[13/2 -13/2] Cy:[41/5]]"},
		{"verdicts: {right: 2}", `right is from 0 to 1, not "2"`},
		{"verdicts: {good: 1}", `verdicts has no entry "good"`},
		{"attempts: second", `attempts cannot be "second"`},
		{"diagrams: 50", `diagrams is a group of fields { }, not a single value`},
		{"forces: half", `half`},
		{"point: 3", `a scheme has no field "point"`},
		{"working: {body: 60, terms: 30}", `the parts of working come to 110 % together`},
		{"working: {sums: 60}", `working has no entry "sums"`},
		{"forces: x", `"x" is not a number`},
		{"forces: 50 %", "Write the number alone: forces: 50"},
		{"forces: “50”", "Write the number alone: forces: 50"},
		{"round: up", "Write one, such as round: 0.5"},
		{"round: 0.5 points", "Write the number alone: round: 0.5"},
		{"round: 1 2", "Write one number, such as round: 0.5"},
		{"verdicts: {right: yes}", "Write one, such as right: 0.5"},
		{"diagrams: {N 10}", "A colon is missing: write N: 10"},
		{"accept: {Cx: [6.5 kN]}", "Write the number alone: Cx: 6.5"},
		{"forces 50", `the file is not a list of fields`},
		{"- a", `the file is not a list of fields`},
		{"\x00", `s.yaml:1`},
	}
	for _, r := range rows {
		s, err := ReadScheme("s.yaml", []byte(r.text))
		var got string
		if err != nil {
			got = err.Error()
		} else {
			var verdicts []string
			for _, v := range []string{"carried", "close", "rounded", "sense", "unit"} {
				if x, ok := s.Verdicts[v]; ok {
					verdicts = append(verdicts, v+" "+x.String())
				}
			}
			got = fmt.Sprint(s.Forces, " ", s.Diagrams, " ", s.Working, " ", strings.Join(verdicts, " "), " ", s.Once, " ", s.Round, " ", s.Attempts, " ", s.Void, " ", s.Accept)
			got = strings.ReplaceAll(got, "  ", " ")
		}
		if !strings.Contains(got, r.want) {
			t.Errorf("%s:\n got %s\nwant %s", r.text, got, r.want)
		}
	}
}
