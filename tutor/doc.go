// Package tutor is the lesson: it asks for one value after another in the order of the plan, judges what is typed by
// exact comparison, helps in steps, and keeps the sheet of what is known. It is a state machine without a terminal; a
// line mode (Plain), a screen and tests drive the same one.
//
// Values are those of the solution: a force is asked along its positive direction on the body it is named on, N in
// tension positive, V and M as package statics defines them.
package tutor
