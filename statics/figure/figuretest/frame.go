package figuretest

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"unpin/statics/frametest"
)

// A Drawing is a frame and what to draw of it, read from a test file as package frametest does; what is asked are lines like
//
//	draw given 80 24               or: draw body BC 80 24, draw solved BC 80 24, draw whole …, perhaps ascii at the end
//	draw M 80 24                   N, V or M along the members
//	draw motion 1 80 24            the first way in which the frame can move
//	draw sum 3 80 24               the sum of the third step of the plan
//	draw kept BC 2.4 after start 80 24   the piece on the side of the start, cut just after 2.4
type Drawing struct{ *frametest.Text }

func readDrawing(text string) (*Drawing, error) {
	t, err := frametest.Read(text)
	if err != nil {
		return nil, err
	}
	for _, ask := range t.Asks {
		if ask[0] != "draw" {
			return nil, fmt.Errorf("no item %q", ask[0])
		}
	}
	return &Drawing{t}, nil
}

// Atoi is the whole number that a word says.
func Atoi(s string) int {
	n, err := strconv.Atoi(s)
	if err != nil {
		panic(err)
	}
	return n
}

// Divider parts what a test file asks for from what it expects.
const Divider = "\n----\n"

// Files are the test files of drawings in a folder.
func Files(t testing.TB, folder string) []string {
	files, err := filepath.Glob(filepath.Join(folder, "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatal("no drawings in testdata")
	}
	return files
}

// Load reads the frame of a test file, and what the file expects.
func Load(t testing.TB, file string) (d *Drawing, source, want string) {
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	source, want, _ = strings.Cut(string(data), Divider)
	d, err = readDrawing(source)
	if err != nil {
		t.Fatalf("%s: %v", file, err)
	}
	return d, source, want
}
