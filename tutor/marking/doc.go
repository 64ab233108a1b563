// Package marking makes marks of answers: it reads papers, holds each value against the true one and against what follows
// from the student's own earlier values, finds where the trouble began, and counts marks by a scheme.
//
// # From a file to marks
//
// ReadAnswers reads a file of answers, as lines or as CSV, into papers; whatever cannot be read is told with its line, and
// the rest is kept. A Marker is what all papers of one problem are held against; its method Mark takes a paper and a Scheme
// and gives a Result: a verdict for each value that is asked for, the faults, what follows from them, and marks.
//
// # Who is at fault
//
// A student's values satisfy some of the true sums, in which what is missing counts as true. Of the values that are not
// right, as many are faults as there are, less the rank of the satisfied sums in them: all others follow from these. Forces
// come first, N, V and M after them, since these are found from the forces.
//
// Values are in the problem's units, exact, and by the senses of the solution's forces (package statics); N, V and M are by
// those of the member as its name is written in the problem.
package marking
