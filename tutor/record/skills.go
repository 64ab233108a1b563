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

// Skills counts for each kind of step how those on frames other than those with these fingerprints came out.
func Skills(all []Record, but []string) map[Kind]Count {
	counts := map[Kind]Count{}
	for _, r := range all {
		if slices.Contains(but, r.Frame) || r.Kind == "" {
			continue
		}
		c := counts[r.Kind]
		c.Add(r.Outcome)
		counts[r.Kind] = c
	}
	return counts
}
