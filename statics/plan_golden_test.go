package statics

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the expected results in testdata")

// divider stands between a frame and what is expected of it.
const divider = "\n---\n"

// TestPlans compares everything found about the frames in testdata/plans with what is written there. They were read
// one by one, as an instructor would read a student's plan.
func TestPlans(t *testing.T) {
	files, err := filepath.Glob("testdata/plans/*.txt")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d files of plans, %v", len(files), err)
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) { checkGolden(t, file) })
	}
}

func checkGolden(t *testing.T, file string) {
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	frame, want, _ := strings.Cut(string(text), divider)
	s, err := Solve(build(t, frame))
	if err != nil {
		t.Fatal(err)
	}
	got := report(s)
	if *update {
		if err := os.WriteFile(file, []byte(frame+divider+got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if got != want {
		t.Errorf("run go test ./statics -run TestPlans -update if this is right:\n%s\nwant\n%s", got, want)
	}
}
