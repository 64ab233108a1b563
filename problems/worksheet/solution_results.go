package worksheet

import (
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// results is the section with the table of all forces.
type results struct{ *document }

func (d results) write() {
	d.section("Results")
	t := table{head: []string{"force", "value", "exactly", "acts"}, align: "lrll"}
	for i, f := range d.Forces {
		dim := notation.ForceDimension(f)
		acts := d.say.Acts(i, d.Values[i])
		if acts == "" {
			acts = "no force"
			if f.Couple {
				acts = "no couple"
			}
		}
		t.add(f.Name, d.say.Value(d.Values[i], dim), d.say.Exactly(d.Values[i], dim), acts)
	}
	d.tabulate(0, t)
	for i, f := range d.Forces {
		if d.say.PullsAway(i, d.Values[i]) {
			d.blank()
			d.prose(f.Name + " is negative: the roller at " + d.Frame.Joints[f.Joint].Name + " pulls. Here a roller holds both ways; a real one must be held down.")
		}
	}
	d.pulls()
	drawing(d).bodies(true)
}

// pulls gives the force in each straight two-force member.
func (d results) pulls() {
	first := true
	for b, p := range d.Parts {
		if !d.isTwoForce(b) || len(p.Members) != 1 {
			continue
		}
		if first {
			d.blank()
			first = false
		}
		n := d.Diagrams[p.Members[0]].Stretches[0].N.At(exact.Num{})
		sense := " in tension"
		switch n.Sign() {
		case 0:
			sense = ""
		case -1:
			sense = " in compression"
		}
		d.prose("Force in the two-force member " + p.Name + ": " + d.say.Value(n.Abs(), notation.Force) + sense + ".")
	}
}
