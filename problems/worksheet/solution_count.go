package worksheet

import (
	"fmt"

	"unpin/statics"
	"unpin/statics/notation"
	"unpin/statics/wording"
)

// counting is the section that compares unknowns with sums and gives the verdict.
type counting struct{ *document }

func (d counting) write() {
	c := d.Count
	d.section("Count")
	for _, row := range [][2]string{
		{"Unknowns   ", fmt.Sprintf("U = %d: %s", c.Unknowns, d.names(d.all()))},
		{"Sums       ", fmt.Sprintf("E = %s = %d equations", d.sumsByBody(), c.Sums)},
		{"Rank       ", fmt.Sprintf("r = %d of these equations are independent", c.Rank)},
		{"Verdict    ", d.verdict()},
	} {
		d.item(row[0], row[1])
		d.symbolic("UEr")
	}
	if c.Inner > 0 {
		d.item("Rings      ", d.ringText())
	}
	if c.Inexact {
		d.item("           ", "The verdict rests on an angle that has no exact cosine, carried to 34 figures.")
	}
}

// all numbers all forces.
func (d counting) all() []int {
	all := make([]int, len(d.Forces))
	for i := range all {
		all[i] = i
	}
	return all
}

// sumsByBody is the arithmetic of the sums: "3 × 2 parts + 2 × 1 pin".
func (d counting) sumsByBody() string {
	text := "3 × " + wording.Counted(len(d.Parts), "part")
	if n := len(d.Pins); n > 0 {
		text += " + 2 × " + wording.Counted(n, "pin")
	}
	return text
}

func (d counting) verdict() string {
	c := d.Count
	switch c.Determinacy() {
	case statics.Indeterminate:
		return fmt.Sprintf("U − r = %d: statically indeterminate to degree %d", c.Degree(), c.Degree())
	case statics.Unstable:
		return fmt.Sprintf("E − r = %d: unstable, with %s", c.Motions(), wording.Counted(c.Motions(), "way")+" to move")
	case statics.IndeterminateUnstable:
		return fmt.Sprintf("U − r = %d and E − r = %d: indeterminate to degree %d, and unstable with %s to move",
			c.Degree(), c.Motions(), c.Degree(), wording.Counted(c.Motions(), "way"))
	}
	return "U = E = r: statically determinate"
}

// ringText says which parts hide unknowns in rings.
func (d counting) ringText() string {
	var parts []string
	for _, p := range d.Parts {
		if p.Inner > 0 {
			parts = append(parts, p.Name)
		}
	}
	return fmt.Sprintf("%s hidden in closed rings of %s. They change no force outside the rings and are left out of the count; N, V and M of the members of the rings are withheld.",
		more(d.Count.Inner), wording.Plural(len(parts), "part")+" "+notation.List(parts))
}

func more(n int) string {
	if n == 1 {
		return "1 more unknown is"
	}
	return fmt.Sprintf("%d more unknowns are", n)
}
