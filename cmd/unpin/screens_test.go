package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// screensFolder is where the screens stand that a test of the screen compares with what is drawn.
const screensFolder = "../../tutor/screen/testdata"

// TestShownScreens compares the screens shown in the documents, blocks marked "screen NAME", with the file of that name
// that a test of the screen keeps true. With -update they are rewritten.
func TestShownScreens(t *testing.T) {
	shown := 0
	for _, name := range documentNames {
		path := filepath.Join("..", "..", name)
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		fresh := string(text)
		for _, b := range readMarkdown(name, string(text)).blocks {
			screen, ok := strings.CutPrefix(b.info, "screen ")
			if !ok {
				continue
			}
			shown++
			data, err := os.ReadFile(filepath.Join(screensFolder, screen+".txt"))
			if err != nil {
				t.Errorf("%s:%d: there is no screen %q", name, b.line, screen)
				continue
			}
			_, want, _ := strings.Cut(string(data), "\n----\n")
			got := strings.Join(b.lines, "\n") + "\n"
			switch {
			case got == want:
			case *update:
				fresh = strings.Replace(fresh, "```"+b.info+"\n"+strings.Join(append(b.lines, "```"), "\n"), "```"+b.info+"\n"+want+"```", 1)
			default:
				t.Errorf("%s:%d: the screen %s is now\n%s", name, b.line, screen, want)
			}
		}
		if fresh != string(text) {
			if err := os.WriteFile(path, []byte(fresh), 0o666); err != nil {
				t.Fatal(err)
			}
		}
	}
	if shown == 0 {
		t.Error("no document shows a screen")
	}
}
