package record

// daysCount is how many days of a skill count at most, the latest; mostHeld is the most that they come to, so that mistakes still count after a long row
// of right ones.
const (
	daysCount = 20
	mostHeld  = 5
)

// days weighs the days on which a skill was asked for. What comes right soon after it came right says little of tomorrow, so of each day the first
// step counts; see testdata/measured/practice.md.
type days struct {
	held int  // days on which the first step came right, less those on which one showed the skill to be wanting; never below zero
	met  bool // there was a day
	on   int  // the latest, see day
	lost bool // on it a step showed the skill to be wanting
}

// add takes one more step on a day; wanting is one that went wrong by this skill and no other.
func (d *days) add(on int, right, wanting bool) {
	first := !d.met || d.on != on
	if first {
		d.met, d.on, d.lost = true, on, false
	}
	switch {
	case first && right:
		d.held = min(d.held+1, mostHeld)
	case wanting && !d.lost:
		d.held, d.lost = max(d.held-1, 0), true
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

// A turn is a day of a skill: the places of the records with its first step and with the first that showed the skill to be wanting, if there is one.
type turn struct{ first, wanting int }

// decide picks the places of those records that decide what the days of skills come to. It takes one day more than count, so that where the first of
// them begins can be told.
func decide(all []placed) map[int]bool {
	begun, turns := calendar{}, map[string][]turn{}
	for i, r := range all {
		for _, st := range r.steps() {
			for skill := range st.tried() {
				if begun.begins(skill, day(st.at)) {
					turns[skill] = append(turns[skill], turn{i, i})
				}
				if last := &turns[skill][len(turns[skill])-1]; st.wanting() && last.wanting == last.first {
					last.wanting = i
				}
			}
		}
	}
	decides := map[int]bool{}
	for _, of := range turns {
		for _, t := range of[max(len(of)-daysCount-1, 0):] {
			decides[t.first], decides[t.wanting] = true, true
		}
	}
	return decides
}
