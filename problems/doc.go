// Package problems reads problem files: YAML (and so JSON) that describes a plane frame, its supports and loads, with
// what is asked of the student. A file is read strictly and exactly: every number keeps its written decimals, every
// name must be known, and all faults of a file come back at once with line, column, excerpt and what would be right.
//
// Read turns bytes into a Problem, Load a file; Library holds the problems that come with the program.
//
// Lengths, forces and their combinations are in the problem's own units (Problem.Units); directions, signs and axes
// are those of package statics: x to the right, y upward, couples counter-clockwise.
//
// Inside, bytes become a tree of nodes (syntax_*), a tree becomes a problem by the tables of fields (format_*) and by a
// reader for each kind of thing (read_*), and what is wrong is told in words (fault_*). A reader embeds the one that it
// rests on: shapeReader, numberReader, frameReader, pinReader.
package problems
