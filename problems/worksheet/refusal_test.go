package worksheet

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestRefusals holds what is said of frames that are not determinate, of each reason and each remedy, to the files in
// testdata/refusals: a problem, a line of dashes, and what inspect says as text and for programs.
func TestRefusals(t *testing.T) {
	t.Parallel()
	for _, path := range glob(t, filepath.Join("testdata", "refusals", "*.txt")) {
		problem, _, found := strings.Cut(string(read(t, path)), "----\n")
		if !found {
			t.Fatalf("%s has no line of dashes", path)
		}
		p, s := solve(t, filepath.Base(path), []byte(problem))
		_, refused, _ := strings.Cut(string(InspectJSON(p, s)), "\n \"refusal\": ")
		same(t, path, problem+"----\n"+Inspect(p, s, Options{})+"----\n"+refused)
	}
}

// same compares a text with a file, or rewrites the file.
func same(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	wants := strings.Split(string(read(t, path)), "\n")
	lines := strings.Split(got, "\n")
	for i, line := range lines {
		if i >= len(wants) || line != wants[i] {
			t.Errorf("%s:%d: got %q", path, i+1, line)
			return
		}
	}
	if len(wants) > len(lines) {
		t.Errorf("%s goes on after the text has ended", path)
	}
}
