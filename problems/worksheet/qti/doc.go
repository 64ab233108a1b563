// Package qti writes problems as questions for learning platforms: content packages, a zip with a manifest, of 1EdTech
// Question and Test Interoperability (QTI), version 2.1 or 3.0. Names of elements are those of the schema of 2.1, which
// the packages are held to; 3.0 has the same in another spelling. No conformance is claimed: that is for the standard's
// owner to certify.
//
// An item is a problem: its text, its figure and all that the figure shows in words, then one entry for each answer, a
// number with the unit and the positive sense printed beside it. What is right is the range of judging.Case.Range, which
// every honest answer of three figures is in. Each entry has its own feedback: for the value in the opposite sense, for the
// likeliest wrong values with what the catalogue of slips says of each, and for one that is only close.
//
// An answer is written with a decimal point. A comma is refused by the pattern of the entry; a platform that does not heed
// the pattern may read 20,5 as 20.
package qti
