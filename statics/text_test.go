package statics

import (
	"fmt"
	"strings"

	"unpin/statics/exact"
)

// write is the text of a frame, as read reads it.
func write(f Frame) string {
	w := writer{f: f}
	for _, j := range f.Joints {
		w.line("joint", j.Name, j.At.X, j.At.Y)
	}
	for _, m := range f.Members {
		w.line("member", m.Name, f.Joints[m.From].Name, f.Joints[m.To].Name)
	}
	for _, c := range f.Connections {
		w.connection(c)
	}
	for _, s := range f.Supports {
		kind := map[SupportKind]string{Pinned: "pinned", Fixed: "fixed", Roller: "roller", Guide: "guide"}[s.Kind]
		along := ""
		if s.Kind == Roller || s.Kind == Guide {
			along = direction(s.Along)
		}
		w.line("support", f.Joints[s.Joint].Name, kind, along, w.member(s.On))
	}
	for _, l := range f.Loads {
		w.load(l)
	}
	return w.String()
}

type writer struct {
	strings.Builder
	f Frame
}

// line writes words with one blank between them; empty ones are left out.
func (w *writer) line(words ...any) {
	var line []string
	for _, x := range words {
		line = append(line, strings.Fields(fmt.Sprint(x))...)
	}
	w.WriteString(strings.Join(line, " ") + "\n")
}

func (w *writer) member(m int) string {
	if m == None {
		return ""
	}
	return w.f.Members[m].Name
}

func (w *writer) connection(c Connection) {
	var pieces []string
	for i, piece := range c.Pieces {
		var names []string
		for _, m := range piece {
			names = append(names, w.f.Members[m].Name)
		}
		if i != c.Main {
			pieces = append(pieces, strings.Join(names, "+"))
		}
	}
	kind := map[ConnectionKind]string{Pin: "pin", Slot: "slot", Sleeve: "sleeve"}[c.Kind]
	along := ""
	if c.Kind != Pin {
		along = direction(c.Along)
	}
	w.line(kind, w.f.Joints[c.Joint].Name, strings.Join(pieces, " "), along)
}

func (w *writer) load(l Load) {
	var at string
	switch {
	case l.Joint != None:
		at = "at " + w.f.Joints[l.Joint].Name + " " + w.member(l.Member)
	case l.Kind == SpreadLoad:
		per := map[Per]string{PerRun: "run", PerRise: "rise"}[l.Per]
		at = "on " + w.member(l.Member) + " " + w.distance(l.Member, l.Start) + " " + w.distance(l.Member, l.End) + " " + per
	default:
		at = "on " + w.member(l.Member) + " " + w.distance(l.Member, l.At)
	}
	switch l.Kind {
	case PointLoad:
		w.line("point", l.Size, direction(l.Along), at)
	case CoupleLoad:
		w.line("couple", l.Size, at)
	case RopeLoad:
		w.line("rope", l.Size, direction(l.Along), direction(l.Second), l.Radius, at)
	case SpreadLoad:
		w.line("spread", l.First, l.Last, direction(l.Along), at)
	}
}

// distance is a distance along member m, as a share of its length where it is irrational.
func (w *writer) distance(m int, x exact.Num) string {
	if x.IsRational() {
		return x.String()
	}
	return over(x, w.f.Length(m)).String() + "L"
}

// direction is a direction in numbers, or as an angle if it is irrational.
func direction(v Vector) string {
	if v.X.IsRational() && v.Y.IsRational() {
		return v.X.String() + " " + v.Y.String()
	}
	for a := int64(0); a < 360; a += 15 {
		if v.X.Equal(exact.Cos(exact.Int(a))) && v.Y.Equal(exact.Sin(exact.Int(a))) {
			return fmt.Sprintf("%ddeg", a)
		}
	}
	return v.X.Decimal(20) + " " + v.Y.Decimal(20)
}
