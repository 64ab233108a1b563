// Package variant makes other numbers for the frame of a problem, and keeps to those that are as good as the problem's own.
//
// # From a draw to numbers
//
// What may change is a list of changes (Change), each with the values that it may have: those under vary in the problem's
// file, or else those that are found for it. A Draw, one of 31⁶ numbers, settles each of them by
//
//	SHA-256("unpin draw 1", draw, place of the change)
//
// and so the numbers of a copy follow from the problem and the draw alone. Which draw a student has follows from set, seed,
// place in the set, student and attempt (Source.First) and then the next one that is good; so what counts as good may change
// in later versions without a change of what a draw means. A Code writes a draw down in eight signs.
//
// # What is good
//
// A copy is good if it is as the problem is, with other numbers (Maker.Judge): determinate, of the same shape and the same
// plan, as hard, within one as many negative results, tidy by each rule that the problem itself keeps (problems.Rules), and
// with no mistake hidden that the problem's own numbers show. Where too few are found so, one whose forces have more decimals
// than problems.Decimals allows, and which is good otherwise, stands in (Copy.Long).
package variant
