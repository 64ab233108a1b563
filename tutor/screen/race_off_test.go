//go:build !race

package screen

// raced reports whether the race detector is at work.
const raced = false
