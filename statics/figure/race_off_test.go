//go:build !race

package figure_test

// raced reports whether the race detector is at work.
const raced = false
