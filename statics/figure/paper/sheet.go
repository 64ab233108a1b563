package paper

import (
	"fmt"

	"unpin/statics/figure"
)

// A Sheet is a scene laid out on paper: what to draw, in order, and how. The renderers to SVG and PDF only write it down.
type Sheet struct {
	Title         string
	Width, Height float64 // in points
	Origin        Place   // of the lower left corner of the frame, without what stands around it
	Marks         []Mark
	Stretched     bool           // near joints were held apart, so that not all is to scale
	Drawn         []figure.Drawn // where members, arrows, supports and labels stand
	Astray        float64        // by how many points in all arrows stand off what they act on, for want of room
	Fits          bool           // no larger than asked for, and all that is in it can be read rightly: each label by its own arrow, no part drawn apart lost among its arrows
}

// within is the sheet with the report whether it is no larger than that.
func (s Sheet) within(width, height float64) Sheet {
	const slack = 2*rim + 0.01
	s.Fits = s.Fits && s.Width <= width+slack && s.Height <= height+slack
	return s
}

// Scaled is the sheet with all that is on it so many times as large.
func (s Sheet) Scaled(by float64) Sheet {
	at := func(k Place) Place { return Place{k.X * by, k.Y * by} }
	out := s
	out.Width, out.Height, out.Origin = s.Width*by, s.Height*by, at(s.Origin)
	out.Marks = make([]Mark, len(s.Marks))
	for i, m := range s.Marks {
		path := make([]Place, len(m.Path))
		for k := range path {
			path[k] = at(m.Path[k])
		}
		m.Path = path
		m.Radius, m.Size, m.Weight = m.Radius*by, m.Size*by, m.Weight*by
		out.Marks[i] = m
	}
	return out
}

// Moved is the sheet with all that is on it so much further to the right, and of another width.
func (s Sheet) Moved(right, width float64) Sheet {
	out := s
	out.Width, out.Origin.X = width, s.Origin.X+right
	out.Marks = make([]Mark, len(s.Marks))
	for i, m := range s.Marks {
		path := make([]Place, len(m.Path))
		for k, at := range m.Path {
			path[k] = Place{at.X + right, at.Y}
		}
		m.Path = path
		out.Marks[i] = m
	}
	return out
}

// A Mark is one line, area, circle or text on a sheet.
type Mark struct {
	Path   []Place // the line; of a circle its centre, of a text the start of its baseline
	Closed bool    // the line goes back to its start
	Radius float64 // of a circle, or 0
	Text   []Run   // of a text, or none
	Size   float64 // of a text, in points
	Weight float64 // of the line, in points; 0 draws none
	Dashed bool
	Round  bool // the line's ends are round, so that lines that meet form a corner
	Line   Ink  // of the line or the text
	Fill   Ink
}

// dash is the length of a dash and of the gap after it.
var dash = [2]float64{4, 2.2}

// Check reports the first thing that breaks the promises of a sheet: a mark or text off it, or two texts in one place. It
// looks at the marks alone, not at how they were placed.
func (s Sheet) Check() error {
	var texts []rect
	for _, m := range s.Marks {
		all := rectOf(m.Path...)
		if len(m.Text) > 0 {
			all = m.textRect()
		}
		if all.x0 < 0 || all.y0 < 0 || all.x1 > s.Width || all.y1 > s.Height {
			return fmt.Errorf("a mark lies off the %.0f × %.0f sheet, or a text: %q", s.Width, s.Height, m.plain())
		}
		if len(m.Text) == 0 {
			continue
		}
		for _, other := range texts {
			if all.meets(other) {
				return fmt.Errorf("the text %q collides with another", m.plain())
			}
		}
		texts = append(texts, all)
	}
	return nil
}

// textRect is what a text takes up.
func (m Mark) textRect() rect {
	half := lineWidth(m.Text, m.Size) / 2
	at := m.Path[0]
	return rect{at.X - half, at.Y - capHeight*m.Size, at.X + half, at.Y + descent*m.Size}
}

// plain is a text without its kinds of type.
func (m Mark) plain() string {
	text := ""
	for _, r := range m.Text {
		text += r.Text
	}
	return text
}
