package worksheet

import (
	"strings"
	"unicode/utf8"

	"unpin/statics/notation"
)

// given is the section on what the problem gives.
type given struct{ *document }

func (d given) write() {
	d.section("Given")
	d.item("Units      ", d.say.Units())
	d.item("Joints     ", strings.Join(d.joints(), "   "))
	d.item("Members    ", strings.Join(d.members(), ",   "))
	d.listed("Joined     ", d.joined())
	d.listed("Supports   ", d.supports())
	d.listed("Loads      ", orNone(d.say.Loads()))
	drawing(d).given()
}

// listed writes a list with its label before the first.
func (d given) listed(label string, all []string) {
	for i, text := range all {
		if i > 0 {
			label = strings.Repeat(" ", len(label))
		}
		d.item(label, text)
	}
}

// orNone is a list that says so if it is empty.
func orNone(all []string) []string {
	if len(all) == 0 {
		return []string{"none"}
	}
	return all
}

func (d given) joints() []string {
	var all []string
	for _, j := range d.Frame.Joints {
		all = append(all, j.Name+strings.ReplaceAll(d.say.Point(j.At), " ", string(bound)))
	}
	return all
}

// longRoot is the longest exact length that stands beside the rounded one.
const longRoot = 6

func (d given) members() []string {
	var all []string
	for m, member := range d.Frame.Members {
		length := d.Frame.Length(m)
		text := member.Name + " " + d.st.WithUnit(length, notation.Length)
		if exactly := d.say.Exactly(length, notation.Length); !length.IsRational() && exactly != "" && utf8.RuneCountInString(exactly) <= longRoot {
			text += " (" + exactly + ")"
		}
		all = append(all, strings.ReplaceAll(text, " ", string(bound)))
	}
	return all
}

// joined says how the members are joined where they are not all rigid.
func (d given) joined() []string {
	var all []string
	for _, c := range d.Frame.Connections {
		all = append(all, d.say.Connection(c))
	}
	for j := range d.Frame.Joints {
		if d.meets(j) && !d.connected(j) {
			if all == nil {
				return []string{"all joints are rigid"}
			}
			return append(all, "all other joints are rigid")
		}
	}
	return all
}

// meets reports whether two or more members end at joint j.
func (d given) meets(j int) bool {
	n := 0
	for _, m := range d.Frame.Members {
		if m.From == j || m.To == j {
			n++
		}
	}
	return n > 1
}

func (d given) connected(j int) bool {
	for _, c := range d.Frame.Connections {
		if c.Joint == j {
			return true
		}
	}
	return false
}

// supports says what each support exerts.
func (d given) supports() []string {
	var all []string
	for _, s := range d.Frame.Supports {
		all = append(all, d.say.Support(s))
	}
	return orNone(all)
}
