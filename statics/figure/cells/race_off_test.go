//go:build !race

package cells_test

// raced reports whether the race detector is at work.
const raced = false
