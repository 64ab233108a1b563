package record

// daysCount is how many days of a skill count at most, the latest; mostHeld is the most that they come to, so that mistakes still count after a long row
// of right ones.
const (
	daysCount = 20
	mostHeld  = 5
)

// days weighs the days on which a skill was asked for. What comes right soon after it came right says little of tomorrow, so of each day the first
// step alone counts; see testdata/measured/practice.md.
type days struct {
	held int  // days on which it came right, less those on which it showed the skill to be wanting; never below zero
	met  bool // there was a day
	on   int  // the latest, see day
}

// add takes one more step on a day; wanting is one that went wrong by this skill and no other.
func (d *days) add(on int, right, wanting bool) {
	if d.met && d.on == on {
		return
	}
	d.met, d.on = true, on
	switch {
	case right:
		d.held = min(d.held+1, mostHeld)
	case wanting:
		d.held = max(d.held-1, 0)
	}
}

// A calendar tells where a day of a skill begins: with the first step on another day than the step before. A clock that is set back begins one too.
type calendar map[string]int

// begins takes a step of a skill on a day.
func (c calendar) begins(skill string, on int) bool {
	before, met := c[skill]
	c[skill] = on
	return !met || before != on
}

// decide picks the places of those records that decide what the days of skills come to, with the first step of each. It takes one day more than
// count, so that where the first of them begins can be told.
func decide(all []placed) map[int]bool {
	begun, firsts := calendar{}, map[string][]int{}
	for i, r := range all {
		for skill := range r.tried() {
			if begun.begins(skill, day(r.At)) {
				firsts[skill] = append(firsts[skill], i)
			}
		}
	}
	decides := map[int]bool{}
	for _, of := range firsts {
		for _, i := range of[max(len(of)-daysCount-1, 0):] {
			decides[i] = true
		}
	}
	return decides
}
