package main

import (
	"os"
	"runtime"
	"runtime/debug"
	"sync"
)

// littleMemory is what may be in use while memory is collected seldom.
const littleMemory = 4 << 20

// collectSeldom lets five times the memory in use pile up before it is collected, 16 MB at least, while little is in use: many
// small problems leave much to collect and use next to nothing. As soon as more is in use it is collected as usual. It holds
// for the process, and once; nothing needs to put it back. Who has set GOGC has their way.
var collectSeldom = sync.OnceFunc(func() {
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(400) // the memory in use five times
		afterCollecting(0)
	}
})

// afterCollecting looks at what is in use after each collection, until that is no longer little.
func afterCollecting(int) {
	var memory runtime.MemStats
	if runtime.ReadMemStats(&memory); memory.NextGC > 5*littleMemory {
		debug.SetGCPercent(100)
		return
	}
	runtime.AddCleanup(new([16]byte), afterCollecting, 0)
}
