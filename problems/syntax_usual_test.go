package problems

import (
	"fmt"
	"io/fs"
	"maps"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// yamlFiles are the files of problems, sets, schemes and other YAML that this project has, whole and broken ones.
func yamlFiles(t testing.TB) map[string][]byte {
	t.Helper()
	files := map[string][]byte{}
	for _, root := range []string{".", filepath.Join("..", "testdata")} {
		err := filepath.WalkDir(root, func(path string, _ fs.DirEntry, err error) error {
			if ending := filepath.Ext(path); err == nil && (ending == ".yaml" || ending == ".json") {
				files[path] = readFile(t, path)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return files
}

// endBlanks are blanks at the ends of lines, which say nothing. The library counts the columns of words before them from one further on.
var endBlanks = regexp.MustCompile(`(?m) +$`)

// readsAlike reports a text that the usual way reads otherwise than the YAML library, and returns whether it reads it at all.
func readsAlike(t interface{ Fatalf(string, ...any) }, data []byte) bool {
	s, unclean := newSource(data)
	if unclean != nil {
		return false
	}
	got := usualTree(s.text)
	if got == nil {
		return false
	}
	trimmed, _ := newSource([]byte(endBlanks.ReplaceAllString(s.text, "")))
	want, faults := parseYAML(trimmed)
	if faults != nil {
		t.Fatalf("%s\nis read, and has faults: %v", data, faults)
	}
	if !reflect.DeepEqual(got, want) {
		t.Fatalf("%s\nis read as\n%s\nbut is\n%s", data, outline(got), outline(want))
	}
	return true
}

// outline is a tree in lines, with the places.
func outline(n *node) string {
	text := fmt.Sprintf("%d:%d+%d shape %d %q literal %v quote %d numeric %v\n", n.at.line, n.at.column, n.at.width, n.shape, n.text, n.literal, n.quote, n.numeric)
	for _, item := range n.items {
		text += outline(item)
	}
	for _, e := range n.entries {
		text += outline(e.key) + outline(e.value)
	}
	return text
}

// TestUsual reads all files in the usual way, where they are written so, and by the YAML library. Those that people are shown all are.
func TestUsual(t *testing.T) {
	t.Parallel()
	for path, data := range yamlFiles(t) {
		t.Run(path, func(t *testing.T) {
			usual := readsAlike(t, data)
			if !usual && (strings.HasPrefix(path, "library") || strings.HasPrefix(path, "starter")) {
				t.Error("it is not read in the usual way")
			}
		})
	}
}

// TestUsualForms holds the forms that the usual way must know, and those that it must leave to the library.
func TestUsualForms(t *testing.T) {
	t.Parallel()
	usual := []string{
		"a: 1\n", "a: 1", "# c\n\na: 1 # c\n", "a:\n  b: c\n  d: [e, f]\n", "a:\n- b\n- c: d\n  e: f\n-\n  g: h\ni: j\n",
		"a: [b,\n  c]\n", "{\"a\": [1, 2.5], \"b\": 'c'}", "a: [ ]\nb: { }\n", "a: >\n  b\n  c\n\n  d\nb: |\n  b\n  c\n", "a: b's \"c\" - d:e\n",
		"é: ü\n", "- a\n- [b]\n", "\"a b\": c # 'd\n", "a: 3:4\n", "a: [\n  # c\n  b # c\n  ]\n",
	}
	for _, text := range usual {
		if !readsAlike(t, []byte(text)) {
			t.Errorf("%q is not read", text)
		}
	}
	for _, text := range []string{
		"", "a", "a:\n", "a: b\n  c\n", "a: &b c\n", "a: *b\n", "a: !b c\n", "<<: a\n", "? a\n", "%a\n", "---\na: b\n", "a: b\na: c\n", "a: [b, ]\n",
		"a: \"\\u0041\"\n", "a: 'it''s'\n", "a: {b: 2,5}\n", "a: [b: c]\n", "a: [b, c\n", "a: \"b\n", "a:\tb\n", "a: ~\n", "a: null\n", "a: .5\n", "a: [b\nc]\n", "a: >-\n  b\n",
		" a: b\n", "a: b\n c: d\n", "a:\n  b: c\n d: e\n", "a: b: c\n", strings.Repeat("[", 30) + strings.Repeat("]", 30),
	} {
		if s, _ := newSource([]byte(text)); usualTree(s.text) != nil {
			t.Errorf("%q is for the library", text)
		}
	}
}

// TestUsualChanged changes files here and there: what the usual way still reads means the same to the library.
func TestUsualChanged(t *testing.T) {
	t.Parallel()
	files := yamlFiles(t)
	maps.DeleteFunc(files, func(_ string, data []byte) bool { return len(data) > 3000 })
	paths := slices.Sorted(maps.Keys(files))
	read := 0
	rapid.Check(t, func(t *rapid.T) {
		for range 10 {
			text := string(files[rapid.SampledFrom(paths).Draw(t, "file")])
			for range rapid.IntRange(1, 3).Draw(t, "changes") {
				text = changed(t, text)
			}
			if readsAlike(t, []byte(text)) {
				read++
			}
		}
	})
	if read == 0 {
		t.Error("no changed file is read in the usual way")
	}
}

// pieces are what means something in YAML, or might be thought to.
var pieces = strings.Split(" |  |:|: |, |,|-|- |[|]|{|}|#| #|'|\"|>|é|?|? |!|&a|*a|%|~|null|true|1|0|.|.5|0x1|1e5|_|--- |...|\\|<<|\u00a0|\u2028|a|=|@|a: b|"+
	"\n|\n\n|\n |\n  |\n   |\n    - |---\n|- a\n|# x\n|>\n|\r|\t", "|")

// changed is a text with something put in, taken out or exchanged, or a line moved.
func changed(t *rapid.T, text string) string {
	if text == "" {
		return text
	}
	at := rapid.IntRange(0, len(text)-1).Draw(t, "at")
	end := min(len(text), at+rapid.IntRange(0, 3).Draw(t, "out"))
	switch rapid.IntRange(0, 3).Draw(t, "kind") {
	case 0:
		return text[:at] + text[end:]
	case 1:
		lines := strings.Split(text, "\n")
		line := &lines[strings.Count(text[:at], "\n")]
		if *line = " " + *line; end%2 == 0 {
			*line = strings.TrimPrefix(*line, "  ")
		}
		return strings.Join(lines, "\n")
	}
	piece := rapid.SampledFrom(append(pieces, "|")).Draw(t, "piece")
	return text[:at] + piece + text[end:]
}

// FuzzUsual reads anything in the usual way and by the YAML library.
func FuzzUsual(f *testing.F) {
	for _, data := range yamlFiles(f) {
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) < 20_000 {
			readsAlike(t, data)
		}
	})
}

// BenchmarkTree reads a file as a tree, both ways.
func BenchmarkTree(b *testing.B) {
	s, _ := newSource(readFile(b, "../testdata/examples/shelter.yaml"))
	b.Run("usual", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if usualTree(s.text) == nil {
				b.Fatal("it is not read in the usual way")
			}
		}
	})
	b.Run("library", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			parseYAML(s)
		}
	})
}
