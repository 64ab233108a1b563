package record

import "slices"

// Kinds lists the kinds of steps, in the order in which they are told.
func Kinds() []Kind { return []Kind{Forces, Moments, Together, Diagrams} }

// A Count is how many steps of a kind came right at the first try and without help, of all that were done.
type Count struct{ Right, Of int }

// Add counts how one more step came out; outcomes that are of no step count for nothing.
func (c *Count) Add(o Outcome) {
	switch o {
	case StepRight:
		c.Right++
		c.Of++
	case StepHelped, StepTold:
		c.Of++
	}
}

// AddAll counts the steps of a record: along a member each place.
func (c *Count) AddAll(r Record) {
	if len(r.Along) == 0 {
		c.Add(r.Outcome)
	}
	for _, p := range r.Along {
		c.Add(p.Outcome)
	}
}

// Skills counts for each kind of step how those on frames other than those with these fingerprints came out, of the latest steps; see window.
func Skills(all []Record, but []string) map[Kind]Count {
	counts := map[Kind]Count{}
	for _, r := range latest(all) {
		if slices.Contains(but, r.Frame) {
			continue
		}
		c := counts[r.Kind]
		c.Add(r.Outcome)
		counts[r.Kind] = c
	}
	return counts
}

// Earned counts for each kind of step how many came right on frames other than those with these fingerprints, less
// those that were told; of the latest steps, see window.
func Earned(all []Record, but []string) map[Kind]int {
	earned := map[Kind]int{}
	for _, r := range latest(all) {
		switch {
		case slices.Contains(but, r.Frame):
		case r.Outcome == StepRight:
			earned[r.Kind]++
		case r.Outcome == StepTold:
			earned[r.Kind] = max(earned[r.Kind]-1, 0)
		}
	}
	return earned
}

// latest lists the latest steps of each kind, in their order.
func latest(all []Record) []Record {
	counts := map[Kind]int{}
	var steps []Record
	for _, r := range slices.Backward(all) {
		if r.Kind != "" && counts[r.Kind] < window {
			counts[r.Kind]++
			steps = append(steps, r)
		}
	}
	slices.Reverse(steps)
	return steps
}
