package wording

import (
	"strconv"
	"strings"

	"unpin/statics/notation"
)

// Part tells how a part runs, for a reader who does not see it: joint by joint, or member by member if it branches.
func (w givens) Part(i int) string {
	p := w.a.Parts[i]
	text := "part " + strconv.Itoa(i+1) + ", " + p.Name + ", runs from "
	if len(p.Members)+1 == len(p.Joints) && !strings.HasSuffix(p.Name, "+") {
		text += w.jointPlace(p.Joints[0])
		for k := 1; k < len(p.Joints); k++ {
			if k > 1 {
				text += ", then"
			}
			text += " " + w.way(p.Joints[k-1], p.Joints[k]) + " to " + w.jointPlace(p.Joints[k])
		}
		return text
	}
	var runs []string
	for _, m := range p.Members {
		k := w.a.Frame.Members[m]
		runs = append(runs, w.jointPlace(k.From)+" "+w.way(k.From, k.To)+" to "+w.jointPlace(k.To))
	}
	return text + strings.Join(runs, "; from ")
}

// jointPlace is a joint with its place: "C at 7.2, 4.5".
func (w givens) jointPlace(j int) string {
	at := w.a.Frame.Joints[j].At
	return w.joint(j) + " at " + w.st.Given(at.X, notation.Length) + ", " + w.st.Given(at.Y, notation.Length)
}

// way is the direction from one joint to another.
func (w givens) way(from, to int) string {
	joints := w.a.Frame.Joints
	return notation.DirectionWord(joints[from].At.To(joints[to].At))
}
