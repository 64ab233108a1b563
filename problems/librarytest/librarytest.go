// Package librarytest says which problems of the library a costly test goes over. Those that play whole lessons, make every
// mistake or write every document of a problem take twenty-four that show between them whatever a frame, a support or a load
// can be, four of each grade; with the flag -whole they take all. Tests that cost little go
// over problems.Names. That the sample lacks nothing is held by a test of package problems.
package librarytest

import (
	_ "embed" // the sample is a file that the tests of package problems read too
	"flag"
	"strings"

	"unpin/problems"
)

var whole = flag.Bool("whole", false, "go over the whole library where a sample of it is enough for every day")

//go:embed sample.txt
var sample string

// Sample lists the problems that show between them whatever a frame can have, the gentlest first.
func Sample() []string { return strings.Fields(sample) }

// Whole reports whether costly tests are to leave nothing out.
func Whole() bool { return *whole }

// Names lists the problems that a costly test goes over: the sample, or with the flag -whole the library.
func Names() []string {
	if *whole {
		return problems.Names()
	}
	return Sample()
}
