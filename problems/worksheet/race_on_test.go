//go:build race

package worksheet

// raced reports whether the race detector is at work.
const raced = true
