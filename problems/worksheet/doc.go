// Package worksheet writes documents about a solved problem: the solution as text, what inspect says of a frame, and the
// solution as JSON for other programs.
package worksheet
