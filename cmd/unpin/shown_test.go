package main

import (
	"bytes"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"
)

// gap is the line that stands for output left out.
const gap = "…"

// TestShownOutput runs every command shown in the console blocks of the documents and compares what it prints with what
// is shown. A line of input stands there as a person would see it, after "> ". With -update, blocks without gaps are
// rewritten.
func TestShownOutput(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir()) // what is practised here is kept nowhere
	t.Chdir("../..")
	for _, name := range documentNames {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		fresh := string(text)
		for _, b := range readMarkdown(name, string(text)).blocks {
			if b.info != "console" {
				continue
			}
			shown := strings.Join(b.lines, "\n") + "\n"
			got := replay(t, name, b)
			gaps := strings.Contains("\n"+shown, "\n"+gap+"\n")
			switch {
			case matchesShown(got, shown):
			case *update && !gaps:
				fresh = strings.Replace(fresh, "```console\n"+shown, "```console\n"+got, 1)
			default:
				t.Errorf("%s:%d shows\n%s\nbut it is\n%s", name, b.line, shown, got)
			}
		}
		if fresh != string(text) {
			if err := os.WriteFile(name, []byte(fresh), 0o666); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// replay runs the commands of a block with the input shown and returns what a person would see.
func replay(t *testing.T, name string, b block) string {
	var seen bytes.Buffer
	for i := 0; i < len(b.lines); i++ {
		command, ok := strings.CutPrefix(b.lines[i], "$ ")
		if !ok {
			continue
		}
		words := strings.Fields(strings.Replace(command, "go run ./cmd/unpin", "unpin", 1))
		if words[0] != "unpin" {
			t.Fatalf("%s:%d: only commands of unpin can be shown with their output; mark the block sh", name, b.line+i)
		}
		in := &typist{screen: &seen}
		for _, line := range b.lines[i+1:] {
			if strings.HasPrefix(line, "$ ") {
				break
			}
			if typed, ok := strings.CutPrefix(line, "> "); ok {
				in.lines = append(in.lines, typed)
			}
		}
		seen.WriteString(b.lines[i] + "\n")
		run(words[1:], in, &seen, &seen)
	}
	return seen.String()
}

// A typist gives one line at each read, and leaves it on the screen as typed.
type typist struct {
	screen *bytes.Buffer
	lines  []string
}

// Read gives the next line.
func (p *typist) Read(b []byte) (int, error) {
	if len(p.lines) == 0 {
		return 0, io.EOF
	}
	line := p.lines[0]
	p.lines = p.lines[1:]
	p.screen.WriteString("> " + line + "\n")
	return copy(b, line+"\n"), nil
}

// matchesShown reports whether output is what is shown, where a gap stands for any lines.
func matchesShown(output, shown string) bool {
	pattern := regexp.QuoteMeta(shown)
	pattern = strings.ReplaceAll("\n"+pattern, "\n"+gap+"\n", "\n(?s:.*\n)?")
	return regexp.MustCompile("^" + pattern + "$").MatchString("\n" + output)
}

// TestMatchesShown makes sure that the comparison can fail.
func TestMatchesShown(t *testing.T) {
	for _, c := range []struct {
		name, output, shown string
		want                bool
	}{
		{"same", "a\nb\n", "a\nb\n", true},
		{"other", "a\nb\n", "a\nc\n", false},
		{"gap in the middle", "a\nb\nc\nd\n", "a\n…\nd\n", true},
		{"gap of nothing", "a\nd\n", "a\n…\nd\n", true},
		{"gap at the end", "a\nb\n", "a\n…\n", true},
		{"end differs after a gap", "a\nb\nc\n", "a\n…\nd\n", false},
		{"longer", "a\nb\n", "a\n", false},
		{"characters of patterns", "a.b\n", "a.b\n", true},
		{"characters of patterns stand for themselves", "axb\n", "a.b\n", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := matchesShown(c.output, c.shown); got != c.want {
				t.Errorf("matchesShown(%q, %q) = %v", c.output, c.shown, got)
			}
		})
	}
}
