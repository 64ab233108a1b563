// Package figure says what to draw of a frame, and draws it in terminal cells and on paper.
//
// A Scene holds what the drawing means, in the frame's own coordinates (x right, y up, the frame's unit of length):
// members, symbols, arrows, spread loads, dimensions and names, each with a Role. It knows no size, no colour and no
// medium. [Given] makes the scene of the frame as a problem gives it, [FreeBody] that of bodies cut free, [Exploded] that of
// all parts apart, [Internal] that of N, V or M along the members.
//
// [Cells] renders a scene to a Grid of terminal cells of an exact size. It holds to these invariants:
//
//  1. A grid has exactly the height and width asked for, from 1×1 up, and every rune takes one cell.
//  2. No label is cut off, overwritten or closer to another label than a blank cell. One that finds no place stands in
//     the key at the foot of the grid under a number (#1), or else in Grid.Dropped; none is lost silently.
//  3. One scale serves both axes (a cell counts as twice as tall as wide), but each axis may shrink up to 12 % so that
//     equal bays come out equal, and joints that would fall together are held a few cells apart.
//  4. Meaning never rests on colour: every role differs in glyph or words as well, and every glyph has an ASCII twin.
//
// [Paper] lays a scene out in points, as a [Sheet] of lines and texts that [SVG] writes down: to one scale where near joints
// need not be held apart, every label on a free place of its own, differences by weight, dashes and heads as well as by
// colour. The same scene gives the same bytes.
//
// Numbers are floats here, since they only draw; every number that is read goes through package notation.
package figure
