package worksheet

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

const testdata = "../../testdata"

// solve reads and solves a problem.
func solve(t testing.TB, name string, data []byte) (*problems.Problem, *statics.Solution) {
	t.Helper()
	p, err := problems.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	return p, s
}

// solveFile reads and solves a problem file.
func solveFile(t testing.TB, path string) (*problems.Problem, *statics.Solution) {
	t.Helper()
	return solve(t, path, read(t, path))
}

func read(t testing.TB, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// TestJSONExamples compares whole documents, byte for byte but for the plan, which may be another that keeps the promise.
func TestJSONExamples(t *testing.T) {
	for _, name := range []string{"canopy", "shelter"} {
		p, s := solveFile(t, filepath.Join(testdata, "examples", name+".yaml"))
		want := read(t, filepath.Join(testdata, "examples", name+".json"))
		got, wanted := withoutPlan(t, string(JSON(p, s))), withoutPlan(t, string(want))
		if got != wanted {
			t.Errorf("%s: got\n%s\nwant\n%s", name, got, wanted)
		}
	}
}

// withoutPlan is a document without the lines of its plan.
func withoutPlan(t *testing.T, document string) string {
	t.Helper()
	before, rest, found := strings.Cut(document, " \"plan\": [\n")
	_, after, ended := strings.Cut(rest, "\n ],\n")
	if !found || !ended {
		t.Fatal("the document has no plan")
	}
	return before + after
}
