// Package worksheet writes documents about a solved problem: the worked solution as text, the solution as JSON, and what
// there is to say about a frame before it is solved. It is the only package that writes prose about a whole solution; the
// words for a single sum or number are those of package notation.
//
// Text and Inspect are for people: they follow the conventions that the problem asks for (the positive turn in ΣM, the
// sign of V, the decimal sign, the figures). JSON is for programs: its conventions are those of package statics, whatever
// the problem asks for. [JSON] describes its fields.
package worksheet
