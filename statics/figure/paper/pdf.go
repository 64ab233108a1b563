package paper

import (
	"codeberg.org/go-pdf/fpdf"
)

// DrawPDF draws a sheet on the current page of a document whose unit is the point, with its upper left corner at (x, y).
// Family names a font of the document that has the styles "", "B" and "I". The document's font, colours, line width and
// dashes are left changed.
func DrawPDF(doc *fpdf.Fpdf, s Sheet, x, y float64, family string) {
	doc.SetLineJoinStyle("round")
	for _, m := range s.Marks {
		path := make([]fpdf.PointType, len(m.Path))
		for i, at := range m.Path {
			path[i] = fpdf.PointType{X: x + at.X, Y: y + at.Y}
		}
		if len(m.Text) > 0 {
			letterPDF(doc, m, path[0], family)
			continue
		}
		penPDF(doc, m)
		strokePDF(doc, m, path)
	}
	doc.SetDashPattern(nil, 0)
	doc.SetLineCapStyle("butt")
}

// penPDF sets how the lines and the fill of a mark are drawn.
func penPDF(doc *fpdf.Fpdf, m Mark) {
	if m.Line != NoInk {
		doc.SetDrawColor(m.Line.rgb())
	}
	if m.Fill != NoInk {
		doc.SetFillColor(m.Fill.rgb())
	}
	doc.SetLineWidth(m.Weight)
	var dashes []float64
	if m.Dashed {
		dashes = dash[:]
	}
	doc.SetDashPattern(dashes, 0)
	ends := "butt"
	if m.Round {
		ends = "round"
	}
	doc.SetLineCapStyle(ends)
}

// strokePDF draws the lines and the fill of a mark.
func strokePDF(doc *fpdf.Fpdf, m Mark, path []fpdf.PointType) {
	how := ""
	if m.Fill != NoInk {
		how += "F"
	}
	if m.Line != NoInk && m.Weight > 0 {
		how += "D"
	}
	switch {
	case how == "":
	case m.Radius > 0:
		doc.Circle(path[0].X, path[0].Y, m.Radius, how)
	case m.Closed:
		doc.Polygon(path, how)
	default:
		doc.MoveTo(path[0].X, path[0].Y)
		for _, p := range path[1:] {
			doc.LineTo(p.X, p.Y)
		}
		doc.DrawPath(how)
	}
}

// letterPDF writes a text, its middle at a place.
func letterPDF(doc *fpdf.Fpdf, m Mark, at fpdf.PointType, family string) {
	wide := 0.0
	for _, r := range m.Text {
		r.setPDF(doc, m.Size, family)
		wide += doc.GetStringWidth(r.Text)
	}
	doc.SetTextColor(m.Line.rgb())
	x := at.X - wide/2
	for _, r := range m.Text {
		r.setPDF(doc, m.Size, family)
		drop := 0.0
		if r.Index {
			drop = indexDrop * m.Size
		}
		doc.Text(x, at.Y+drop, r.Text)
		x += doc.GetStringWidth(r.Text)
	}
}

// setPDF sets the document's font for a run.
func (r Run) setPDF(doc *fpdf.Fpdf, size float64, family string) {
	style := ""
	switch {
	case r.Bold:
		style = "B"
	case r.Italic:
		style = "I"
	}
	if r.Under {
		style += "U"
	}
	if r.Index {
		size *= indexSize
	}
	doc.SetFont(family, style, size)
}
