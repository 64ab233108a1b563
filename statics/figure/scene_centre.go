package figure

import (
	"unpin/statics"
	"unpin/statics/exact"
)

// MarkCentre marks the centre of a sum of moments.
func (scene *Scene) MarkCentre(s statics.Sum) {
	k := Symbol{Kind: CentreSymbol, At: point(s.About), Look: Look{Role: CentreMark}}
	if s.Centre == statics.None {
		k.Text = "centre"
	}
	scene.Symbols = append(scene.Symbols, k)
}

// AddArm adds the arm of a term: as the outermost dimension, or for a slanting force as the line from the centre perpendicular
// to its line.
func (scene *Scene) AddArm(s statics.Sum, t statics.Term, text string) {
	switch {
	case t.Toward.X.IsZero():
		scene.addDimension(false, s.About.X, t.At.X, text)
	case t.Toward.Y.IsZero():
		scene.addDimension(true, s.About.Y, t.At.Y, text)
	default:
		look := Look{Role: DimensionMark, Emphasis: Lit}
		centre, foot := point(s.About), point(footOf(s.About, t))
		scene.Guides = append(scene.Guides, Stroke{From: centre, To: foot, Look: look},
			Stroke{From: foot, To: point(t.At), Look: Look{Role: DimensionMark, Emphasis: Faded}})
		scene.Notes = append(scene.Notes, Note{At: Position{X: (centre.X + foot.X) / 2, Y: (centre.Y + foot.Y) / 2}, Text: text, Look: look})
	}
}

// addDimension adds a dimension outside those that are there.
func (scene *Scene) addDimension(vertical bool, from, to exact.Num, text string) {
	if from.Cmp(to) > 0 {
		from, to = to, from
	}
	level := 0
	for _, d := range scene.Dimensions {
		if d.Vertical == vertical {
			level = max(level, d.Level+1)
		}
	}
	scene.Dimensions = append(scene.Dimensions, Dimension{
		Vertical: vertical, From: from.Float(), To: to.Float(), Level: level, Text: text, Short: text, Meaning: text,
	})
}

// footOf is where the line of a term's force is nearest to a centre.
func footOf(centre statics.Point, t statics.Term) statics.Point {
	out := statics.Vector{X: centre.X.Sub(t.At.X), Y: centre.Y.Sub(t.At.Y)}
	reach, err := out.Dot(t.Toward).Quo(t.Toward.Dot(t.Toward))
	if err != nil {
		return t.At
	}
	return statics.Point{X: t.At.X.Add(t.Toward.X.Mul(reach)), Y: t.At.Y.Add(t.Toward.Y.Mul(reach))}
}

// PlaceOf is a point of a frame as scenes have it.
func PlaceOf(p statics.Point) Position { return point(p) }
