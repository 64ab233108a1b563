package wording

import (
	"fmt"
	"slices"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// A run is a distributed load that runs on in one straight line over several members, each of which has its stretch of it:
// where it begins and ends, and with what intensity.
type run struct {
	members     []int
	first, last exact.Num // intensities, as seen along the run
	from, until string    // places: "at A", "1 m from B"
}

// runAt is the run that begins with load i, and over how many loads it goes; false where it is no more than one.
func (w givens) runAt(i int) (r run, n int, ok bool) {
	all := w.a.Frame.RunAt(i)
	if n = len(all.Loads); n == 1 {
		return run{}, 1, false
	}
	return w.newRun(all), n, true
}

// newRun is what a run of the frame says.
func (w givens) newRun(all statics.Run) run {
	f, n := &w.a.Frame, len(all.Loads)
	var r run
	for _, l := range all.Loads {
		r.members = append(r.members, f.Loads[l].Member)
	}
	r.first, r.last = f.Ends(all)
	r.from, r.until = w.end(f.Loads[all.Loads[0]], all.Back[0]), w.end(f.Loads[all.Loads[n-1]], !all.Back[n-1])
	return r
}

// LoadsOn describes the loads on a free body, one that runs on over several members of a part in one text, as it is one term of
// a sum.
func (w givens) LoadsOn(body statics.FreeBody) []string {
	var all []string
	seen := statics.None
	for _, i := range w.a.ActionsOn(body) {
		x := w.a.Actions[i]
		if x.Load == seen { // another of its simple shapes
			continue
		}
		seen = x.Load
		l := w.a.Frame.Loads[x.Load]
		list := x.AllLoads()
		run := w.a.Frame.RunAt(slices.Min(list))
		switch {
		case len(list) == 1 || len(run.Loads) < len(list):
			all = append(all, w.Load(l))
		case w.spoken:
			all = append(all, w.spokenRun(w.newRun(run.Between(0, len(list))), l))
		default:
			all = append(all, w.runText(w.newRun(run.Between(0, len(list))), l))
		}
	}
	return all
}

// end is where a load begins, or, far, where it ends.
func (w givens) end(l statics.Load, far bool) string {
	if far {
		return w.Along(l.Member, l.End)
	}
	return w.Along(l.Member, l.Start)
}

// runText is a varying load that runs on: "linearly varying load 2 to 8 kN/m down on AB, BC and CD in one line, beginning at
// A and ending at D".
func (w givens) runText(r run, l statics.Load) string {
	what, _ := w.spread(r.whole(l))
	return fmt.Sprintf("%s %s in one line, beginning %s and ending %s", what, notation.List(w.members(r.members)), r.from, r.until)
}

// spokenRun tells the same to one who hears it.
func (w givens) spokenRun(r run, l statics.Load) string {
	intensity := func(n exact.Num) string { return w.number(w.st.WithUnit(n, notation.Intensity)) }
	text := "a uniform load of " + intensity(r.first)
	if !r.first.Equal(r.last) {
		text = "a linearly varying load of " + intensity(r.first) + " to " + intensity(r.last)
	}
	text += map[statics.Per]string{statics.PerRun: " of run", statics.PerRise: " of rise"}[l.Per]
	return fmt.Sprintf("%s acts %s on %s in one line, beginning %s and ending %s", text, w.clause(l.Along), notation.List(w.members(r.members)), r.from, r.until)
}

// whole is the load of a run as if all of it lay on one member.
func (r run) whole(l statics.Load) statics.Load {
	l.First, l.Last = r.first, r.last
	return l
}

// plain reports whether a run is a uniform load that covers its members, which needs no word on where it begins.
func (w givens) plain(loads []statics.Load) bool {
	return !slices.ContainsFunc(loads, func(l statics.Load) bool { return !l.First.Equal(l.Last) || !w.wholeMember(l) })
}
