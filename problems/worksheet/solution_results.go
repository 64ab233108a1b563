package worksheet

import (
	"strings"

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
	var names, pulls []string
	for b, p := range d.Parts {
		if !d.isTwoForce(b) || len(p.Members) != 1 {
			continue
		}
		n := d.Diagrams[p.Members[0]].Stretches[0].N.At(exact.Num{})
		sense := " in tension"
		switch n.Sign() {
		case 0:
			sense = ""
		case -1:
			sense = " in compression"
		}
		names, pulls = append(names, p.Name), append(pulls, d.say.Value(n.Abs(), notation.Force)+sense)
	}
	switch len(names) {
	case 0:
		return
	case 1:
		d.blank()
		d.prose("Force in the two-force member " + names[0] + ": " + pulls[0] + ".")
	default:
		for i := range pulls {
			pulls[i] = names[i] + " " + pulls[i]
		}
		d.blank()
		d.prose("Forces in the two-force members: " + strings.Join(pulls, ", ") + ".")
	}
}
