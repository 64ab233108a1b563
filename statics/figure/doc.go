// Package figure says what to draw of a frame. It knows no size, no colour and no medium: package cells draws its scenes in
// terminal cells, package paper on paper.
//
// A [Scene] holds what the drawing means, in the frame's own coordinates (x right, y up, the frame's unit of length):
// members, symbols, arrows, distributed loads, dimensions and names, each with a [Role]. [OfFrame] makes the scene of the
// frame as a problem gives it, [OfBody] that of bodies cut free, [OfParts] that of all parts apart, [OfSum] that of one sum
// with its arms, [OfDiagram] that of N, V or M along the members, [OfDiagramSoFar] that of so much of it as is found,
// [OfKept] that of the piece kept where a member is cut, and [OfMotion] that of a way in which a frame that does not stand
// can move. [Describe] and its kin say in sentences what these show.
//
// Sizes are shares: 1 is the greatest intensity, or the greatest value of a curve, in the scene; each medium has a depth for
// that. An arrow points as the force acts on what is drawn; a couple counter-clockwise is a [TurnLeft]. Positive N and V
// stand above a member, or to the left of an upright one; M stands on the side in tension unless [Options] say otherwise.
//
// What both media need to lay a scene out is here as well: a [Ruler], which is to scale but holds near joints apart, and
// the rank and the best side of a label.
//
// The files: scene_ is what a scene is made of, draft_ how one is put together from a frame, of_ the scenes, describe_ the
// sentences.
//
// Numbers are floats here, since they only draw; every number that is read goes through package notation.
package figure
