package problems

import (
	"fmt"
	"strings"

	"unpin/statics"
)

// describe is a problem as text, one fact a line, for comparison by eye and by test.
func describe(p *Problem) string {
	d := describer{f: p.Frame}
	d.line("problem %s: %s [%s]", p.Name, p.Title, p.Units)
	for _, g := range p.Given {
		d.line("given %s = %s = %v", g.Name, g.Text, g.Value)
	}
	for _, j := range p.Frame.Joints {
		d.line("joint %s %v %v", j.Name, j.At.X, j.At.Y)
	}
	for _, m := range p.Frame.Members {
		d.line("member %s from %s to %s", m.Name, p.Frame.Joints[m.From].Name, p.Frame.Joints[m.To].Name)
	}
	for _, c := range p.Frame.Connections {
		d.connection(c)
	}
	for _, s := range p.Frame.Supports {
		kind := [...]string{"pinned", "fixed", "roller", "guide"}[s.Kind]
		d.line("support %s %s%s%s", p.Frame.Joints[s.Joint].Name, kind, d.vector(s.Along), d.on(s.On))
	}
	for i, e := range p.Entries {
		d.line("entry %d: %s", i, strings.Replace(fmt.Sprintf("%+v", e), " Radius:}", "}", 1))
	}
	for _, l := range p.Frame.Loads {
		d.load(l)
	}
	for _, v := range p.Vary {
		d.line("vary %s %s = %v", v.Name, v.Text, v.Choices)
	}
	for _, c := range p.Where {
		d.line("where %s: %v", c.Text, c.Holds)
	}
	if p.title != nil && p.Where != nil {
		d.line("text %s", p.Text)
		for _, n := range p.Numbers() {
			d.line("number %s %q of role %d is %v", n.Name, n.Text, n.Role, n.Value)
		}
	}
	d.line("ask %s, find %v", p.Conventions, p.Find)
	d.line("grade %d skills %v", p.Grade, p.Skills)
	for _, w := range p.Warnings {
		d.line("warning: %s", w)
	}
	return d.text.String()
}

type describer struct {
	f    statics.Frame
	text strings.Builder
}

func (d *describer) line(format string, args ...any) { fmt.Fprintf(&d.text, format+"\n", args...) }

func (d *describer) vector(v statics.Vector) string {
	if v.IsZero() {
		return ""
	}
	return fmt.Sprintf(" along (%v, %v)", v.X, v.Y)
}

func (d *describer) on(m int) string {
	if m == statics.None {
		return ""
	}
	return " on " + d.f.Members[m].Name
}

func (d *describer) connection(c statics.Connection) {
	kind := [...]string{"pin", "slot", "sleeve"}[c.Kind]
	var pieces []string
	for i, piece := range c.Pieces {
		var names []string
		for _, m := range piece {
			names = append(names, d.f.Members[m].Name)
		}
		text := strings.Join(names, "+")
		if i == c.Main {
			text += " (main)"
		}
		pieces = append(pieces, text)
	}
	d.line("%s %s%s: %s", kind, d.f.Joints[c.Joint].Name, d.vector(c.Along), strings.Join(pieces, " | "))
}

func (d *describer) load(l statics.Load) {
	place := d.on(l.Member)
	if l.Joint != statics.None {
		place = " at " + d.f.Joints[l.Joint].Name + place
	}
	switch {
	case l.Kind == statics.SpreadLoad:
		per := [...]string{"length", "run", "rise"}[l.Per]
		d.line("load of entry %d: spread %v..%v%s%s from %v to %v per %s", l.Entry, l.First, l.Last, d.vector(l.Along), place, l.Start, l.End, per)
	case l.Kind == statics.RopeLoad:
		d.line("load of entry %d: rope %v%s and%s%s, radius %v", l.Entry, l.Size, d.vector(l.Along), d.vector(l.Second), place, l.Radius)
	case l.Joint == statics.None:
		d.line("load of entry %d: %v%s%s at distance %v", l.Entry, l.Size, d.vector(l.Along), place, l.At)
	default:
		d.line("load of entry %d: %v%s%s", l.Entry, l.Size, d.vector(l.Along), place)
	}
}
