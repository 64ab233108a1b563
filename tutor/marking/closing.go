package marking

import (
	"slices"

	"unpin/statics"
)

// What must be zero, at a pin, a roller or a free end, is not zero where a student's diagram was drawn from forces that do not balance. So
// where a reading has such a value at fault, the trouble is looked for in forces that pass as rounded, but were at fault in one of the two readings.

// closing takes one of these as a fault, where what must be zero then follows from it and no more faults are needed. Of
// several it is that with the fewest, then that which puts the most in the place of others.
func (w *work) closing() {
	if w.trace == nil || w.trace.nothing || !slices.ContainsFunc(w.trace.faults, func(i int) bool { return w.empty[i] }) {
		return
	}
	was, verdict, forced := w.trace, slices.Clone(w.verdict), slices.Clone(w.forced)
	best, most := statics.None, 0
	for _, i := range w.suspects {
		if verdict[i] == Right || slices.Contains(was.faults, i) || len(was.from[i]) > 0 || w.inLesson(i) {
			continue
		}
		if n := w.fewer(i, was); n > most {
			best, most = i, n
		}
		copy(w.verdict, verdict)
		copy(w.forced, forced)
	}
	if w.trace = was; best != statics.None {
		w.suppose(best)
	}
}

// suppose reads the paper anew with a force at fault.
func (w *work) suppose(i int) {
	w.forced = facing(w.given)
	w.verdict[i], w.forced[i] = "", true
	w.searchAs()
}

// fewer is by how much a reading is better with a force at fault: none where it is not.
func (w *work) fewer(i int, was *trace) int {
	w.trying = true
	w.suppose(i)
	w.trying = false
	saved := len(was.faults) - len(w.trace.faults)
	gone := slices.DeleteFunc(slices.Clone(was.faults), func(f int) bool { return slices.Contains(w.trace.faults, f) })
	if saved < 0 || saved == 0 && slices.ContainsFunc(gone, func(f int) bool { return !w.empty[f] }) {
		return 0
	}
	return 1 + len(gone) + 2*saved
}
