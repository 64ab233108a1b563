package notation

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"unpin/statics/exact"
)

var update = flag.Bool("update", false, "rewrite the expected output in testdata")

// A setting is what a header of a data file sets for the lines beneath: "== kN m | force | h=4.5 w=8".
type setting struct {
	units Units
	want  Dimension
	names map[string]exact.Num
	forms []string // the third field as typed
}

// transcript runs every input line of a data file, and compares what comes out with the tab-indented lines beneath it. Lines
// that begin with # are comments, with == settings; an input in quotes is a Go string.
func transcript(t *testing.T, file string, run func(setting, string) string) {
	t.Helper()
	path := filepath.Join("testdata", file)
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	var s setting
	for line := range strings.Lines(string(data)) {
		text := strings.TrimSuffix(line, "\n")
		if strings.HasPrefix(text, "\t") {
			continue
		}
		out.WriteString(text + "\n")
		switch {
		case strings.TrimSpace(text) == "", strings.HasPrefix(text, "#"):
			continue
		case strings.HasPrefix(text, "== "):
			s = readSetting(t, text[3:])
			continue
		}
		if plain, err := strconv.Unquote(text); err == nil {
			text = plain
		}
		out.WriteString("\t" + strings.ReplaceAll(run(s, text), "\n", "\n\t") + "\n")
	}
	compare(t, path, string(data), out.String())
}

// compare reports the first line in which the output differs from the file, or rewrites the file.
func compare(t *testing.T, path, want, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	wants, gots := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i, line := range gots {
		if i >= len(wants) || line != wants[i] {
			t.Fatalf("%s:%d: got\n%s\nwant\n%s", path, i+1, line, strings.Join(wants[min(i, len(wants)):min(i+1, len(wants))], ""))
		}
	}
	if len(wants) != len(gots) {
		t.Fatalf("%s has %d lines, the output %d", path, len(wants), len(gots))
	}
}

func readSetting(t *testing.T, text string) setting {
	t.Helper()
	fields := strings.Split(text+"||", "|")
	s := setting{want: dimension(t, strings.TrimSpace(fields[1])), forms: strings.Fields(fields[2]), names: map[string]exact.Num{}}
	if u := strings.TrimSpace(fields[0]); u != "-" {
		var err error
		if s.units, err = ParseUnits(u); err != nil {
			t.Fatal(err)
		}
	}
	for _, form := range s.forms {
		if name, value, ok := strings.Cut(form, "="); ok {
			s.names[name] = exact.MustParse(value)
		}
	}
	return s
}

// dimension is the one whose words end so: "force", "force per length".
func dimension(t *testing.T, words string) Dimension {
	t.Helper()
	for d := Pure; d <= Any; d++ {
		if _, rest, _ := strings.Cut(d.String(), " "); rest == words {
			return d
		}
	}
	if words != "" {
		t.Fatalf("no dimension is called %q", words)
	}
	return Pure
}

// faultText is an error and, beneath it, the text with the place.
func faultText(err error, text string) string {
	var fault *ReadError
	if !errors.As(err, &fault) {
		return "NOT A READ ERROR: " + err.Error()
	}
	kind := "error: "
	if fault.Mismatch {
		kind = "mismatch: "
	}
	return kind + fault.Error() + "\n" + fault.Caret(text)
}
