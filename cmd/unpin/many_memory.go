package main

import (
	"os"
	"runtime"
	"runtime/debug"
	"sync"
)

// heap is how much may pile up before memory is collected, where little is in use.
const heap int = 32 << 20

// The most and the least that may pile up, in hundredths of what is in use. The runtime takes 4 MB to be in use at least.
const (
	mostPile  = 100 * heap / (4 << 20)
	leastPile = 100
)

// collectSeldom lets 32 MB pile up before memory is collected, however little is in use: many small problems use next to nothing
// and leave much behind. Where more than that is in use, memory is collected as usual. It holds for the process, and once;
// nothing needs to put it back. Who has set GOGC has their way.
var collectSeldom = sync.OnceFunc(func() {
	if os.Getenv("GOGC") == "" {
		pileUp(mostPile)
	}
})

// pileUp lets so many hundredths of what is in use pile up, until memory is collected the next time.
func pileUp(percent int) {
	debug.SetGCPercent(percent)
	runtime.AddCleanup(new([16]byte), collected, percent)
}

// collected looks at what is in use after memory has been collected.
func collected(percent int) {
	var memory runtime.MemStats
	runtime.ReadMemStats(&memory)
	inUse := int(memory.NextGC) / (100 + percent) * 100
	pileUp(min(max(100*heap/max(inUse, 1), leastPile), mostPile))
}
