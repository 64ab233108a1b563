package worksheet

import (
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// results is the table of all forces.
func (d *document) results() {
	d.section("Results")
	t := table{head: []string{"force", "value", "exactly", "acts"}, align: "lrll"}
	for i, f := range d.Forces {
		dim := notation.ForceDimension(f)
		acts := d.acts(i)
		if acts == "" {
			acts = "no force"
			if f.Couple {
				acts = "no couple"
			}
		}
		t.add(f.Name, d.result(d.Values[i], dim), d.exactly(d.Values[i], dim), acts)
	}
	d.tabulate(0, t)
	for i, f := range d.Forces {
		if d.pullsAway(i) {
			d.blank()
			d.prose(f.Name + " is negative: the roller at " + d.Frame.Joints[f.Joint].Name + " pulls. Here a roller holds both ways; a real one must be held down.")
		}
	}
	d.pulls()
	d.drawBodies(true)
}

// pulls gives the force in each straight two-force member.
func (d *document) pulls() {
	first := true
	for b, p := range d.Parts {
		if !d.isTwoForce(b) || len(p.Members) != 1 {
			continue
		}
		if first {
			d.blank()
			first = false
		}
		n := d.Diagrams[p.Members[0]].Pieces[0].N.At(exact.Num{})
		sense := " in tension"
		switch n.Sign() {
		case 0:
			sense = ""
		case -1:
			sense = " in compression"
		}
		d.prose("Force in the two-force member " + p.Name + ": " + d.result(n.Abs(), notation.Force) + sense)
	}
}
