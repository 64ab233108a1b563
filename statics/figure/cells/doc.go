// Package cells draws the scenes of package figure in terminal cells.
//
// [Draw] renders a scene to a [Grid] of an exact size. It holds to these invariants:
//
//  1. A grid has exactly the height and width asked for, from 1×1 up, and every rune takes one cell.
//  2. No label is cut off, overwritten or closer to another label than a blank cell. One that finds no place stands in
//     the key at the foot of the grid under a number (#1), or else in Grid.Dropped; none is lost silently.
//  3. One scale serves both axes (a cell counts as twice as tall as wide), but each axis may shrink up to 12 % so that
//     equal bays come out equal, and joints that would fall together are held a few cells apart.
//  4. Meaning never rests on colour: every role differs in glyph or words as well, and every glyph has an ASCII twin.
//
// Columns run right and rows down from 0; a direction keeps the frame's sense, in which y runs up.
//
// A scene passes through in this order: a [figure.Ruler] for each axis, everything but the labels on a canvas larger than
// the grid, the labels each at its cheapest free place, the window of the grid cut out, and last each cell turned into the
// glyph of the strokes that meet in it.
package cells
