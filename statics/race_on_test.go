//go:build race

package statics

// raced reports whether the race detector is at work.
const raced = true
