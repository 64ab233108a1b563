// Package paper draws the scenes of package figure on paper.
//
// [Layout] lays a scene out in points of 1/72 inch, x right and y down, as a [Sheet] of lines and texts: to one scale where
// near joints need not be held apart, every label on a free place of its own, differences by weight, dashes and heads as
// well as by colour. [SVG] and [DrawPDF] only write a sheet down. The same scene gives the same bytes.
//
// A direction keeps the frame's sense, in which y runs up.
package paper
