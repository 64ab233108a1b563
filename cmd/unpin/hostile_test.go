package main

import (
	"bytes"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"unpin/problems"
)

var hostileFor = flag.Duration("hostile", 0, "how long TestHostileFiles makes files; 0 is a fixed few hundred")

// yamlToken is a scalar, a name of a field, or a sign of the syntax.
var yamlToken = regexp.MustCompile(`[^\s\[\]{},:#"']+|[\[\]{},:#"']`)

// hostilities are what a token is replaced by or put beside: what steers a terminal, what YAML or arithmetic may stumble over, what is
// too large, too deep or too long.
var hostilities = []string{
	hidden, `"` + escaped + `"`, "\x00", "\xff\xfe", "\u202eab\u202c", "\r", "\t", "\n", "\n---\n", "\n...\n", "%TAG", "&a", "*a", "<<: *a", "!!binary", "!!float",
	"? ", "| ", "> ", "- ", "''", `"`, "'", "#", ": ", "{", "[", "}", "]", "~", "null", "true", ".inf", ".nan", "-0", "0", "1e9", "1e999999999", "0x10", "0o7", "1_000", "1/0", "1/(1-1)",
	"9" + strings.Repeat("0", 400), "0." + strings.Repeat("0", 400) + "1", "1/" + strings.Repeat("3", 300), strings.Repeat("(", 300) + "1", strings.Repeat("-", 300) + "1", "2*" + strings.Repeat("2*", 300) + "2",
	"89.999999999deg", "1e-9deg", "[0, 0]", "[1e9, 1]", "[[[[[[[[[[[[", strings.Repeat("[", 3000), strings.Repeat("{a: ", 3000), strings.Repeat("A", 5000), strings.Repeat("🏗", 500), "Ώ", "A'", "A''", "AB", "ABC", "up", "normal",
	"all", "{w}", "{{", "}}", "{w", "w", "h", "kN", "P L", "kip ft", "{joints: {A: [0, 0]}}", "../../etc/passwd", "/dev/zero", "$(id)", "`id`", "<script>alert(1)</script>", "&amp;", "]]>", "=1+1", "@x",
}

// hostileFile is a file with up to three tokens changed.
func hostileFile(r *rand.Rand, source string) string {
	for range max(1, r.IntN(4)) {
		all := yamlToken.FindAllStringIndex(source, -1)
		if len(all) == 0 {
			return source
		}
		at, h := all[r.IntN(len(all))], hostilities[r.IntN(len(hostilities))]
		switch r.IntN(4) {
		case 0: // beside it
			source = source[:at[1]] + h + source[at[1]:]
		case 1: // another token of the file in its place
			other := all[r.IntN(len(all))]
			source = source[:at[0]] + source[other[0]:other[1]] + source[at[1]:]
		default:
			source = source[:at[0]] + h + source[at[1]:]
		}
	}
	return source
}

// TestHostileFiles feeds problem files with hostile tokens in every place to the commands: none panics or takes long, the exit code is one
// of those documented, and nothing hidden comes out.
func TestHostileFiles(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	var sources []string
	for _, name := range problems.Names() {
		found, err := filepath.Glob("../../problems/library/*-" + name + ".yaml")
		if err != nil || len(found) != 1 {
			t.Fatal(name, found, err)
		}
		data, err := os.ReadFile(found[0])
		if err != nil {
			t.Fatal(err)
		}
		sources = append(sources, string(data))
	}
	rows := [][]string{{"inspect"}, {"inspect", "--as", "json"}, {"solve"}, {"solve", "--as", "json"}, {"solve", "--as", "html"}, {"solve", "--as", "svg"}, {"solve", "--as", "pdf"}, {"solve", "--as", "markdown"},
		{"practise", "--plain"}, {"practise", "--plain", "--level", "terms"}, {"vary", "--copies", "1"}, {"sheet"}}
	path := filepath.Join(t.TempDir(), "hostile.yaml")
	r := rand.New(rand.NewPCG(1, uint64(hostileFor.Nanoseconds())))
	codes, began := map[int]int{}, time.Now()
	files := 300
	if testing.Short() {
		files = 30
	}
	for n := 0; n < files || time.Since(began) < *hostileFor; n++ {
		source := hostileFile(r, sources[r.IntN(len(sources))])
		if err := os.WriteFile(path, []byte(source), 0o600); err != nil {
			t.Fatal(err)
		}
		words := rows[r.IntN(len(rows))]
		words = append([]string{words[0], path}, words[1:]...)
		done, said := make(chan int, 1), ""
		go func() {
			var out, errs bytes.Buffer
			code := run(words, strings.NewReader("1\nhint\ntell\nquit\n"), &out, &errs)
			if words[len(words)-1] != "pdf" {
				said = out.String()
			}
			said += errs.String()
			done <- code
		}()
		select {
		case code := <-done:
			codes[code]++
			if code < 0 || code > 2 || strings.Contains(said, "internal error") {
				t.Fatalf("%v: exit code %d\n%q\nof the file\n%q", words, code, said, source)
			}
			checkSeen(t, strings.Join(words, " "), said)
		case <-time.After(time.Minute):
			t.Fatalf("%v takes more than a minute on the file\n%q", words, source)
		}
		if t.Failed() {
			t.Fatalf("of the file\n%q", source)
		}
	}
	t.Log(fmt.Sprint("exit codes: ", codes))
}
