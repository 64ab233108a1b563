//go:build race

package tutor

// raced reports whether the race detector is at work.
const raced = true
