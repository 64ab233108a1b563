// Package heaptest gives the tests of a package room in memory. Nearly all that they make lives for an instant, and what lives
// is so little that the heap is cleared many times a second: a third of their time.
package heaptest

import (
	"flag"
	"runtime/debug"
	"testing"
)

// percent is by how much the heap may grow over what is in use, in %, before it is cleared: to some tens of megabytes.
const percent = 800

// most is the heap, in bytes, from which on it is cleared more often all the same, since several packages are tested at a time.
const most = 1 << 30

// A Roomy runs the tests of a package in such a heap, and benchmarks in the one that the program has.
type Roomy struct{ *testing.M }

// Run runs them, and gives the exit code.
func (r Roomy) Run() int {
	if !flag.Parsed() {
		flag.Parse()
	}
	if bench := flag.Lookup("test.bench"); bench == nil || bench.Value.String() == "" {
		debug.SetGCPercent(percent)
		debug.SetMemoryLimit(most)
	}
	return r.M.Run()
}
