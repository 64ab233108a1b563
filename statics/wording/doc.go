// Package wording says in words what statics knows of a frame: a free body, a load, a term, a sum, a step of a plan with
// its reason. Everything that speaks to people about a solution asks it, so that a thing is said in one way everywhere.
//
// A [Speaker] holds the assembly and the conventions of the problem. It has three forms: with the signs of mathematics,
// in plain ASCII, and as it is spoken, for a reader who hears it. Signs and senses are as package statics has them, but
// for what the conventions turn round.
//
// What stands in a single line without a frame around it, numbers, units and words for senses, is package notation's.
package wording
