// Package judging holds what a student typed against what is true: a value, a term or a whole sum. It gives a verdict,
// says which slip a wrong value came from, and keeps no state, so that a lesson, an exam, a paper and a class's marks
// can all ask it the same.
//
// # How it is asked
//
// A Judge is a solution with the student's own earlier values. It makes a Case of whatever is asked for: the force that a
// step gives, what is in one term of a sum, or N, V or M at a section. A line is read into a Typed value, which the case
// gives its Verdict on; Find is what goes with a wrong one, the slips and the sentence. A whole sum, typed in one line, is judged by Judge.Sum.
//
// Values are in the problem's units and by the senses of the solution's forces; only N, V and M are by the senses that the
// forces were given, on which they do not depend. All comparisons are exact.
package judging
