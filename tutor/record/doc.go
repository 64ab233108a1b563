// Package record keeps what learners do: the events of their lessons, by runs, with codes for how each came out; what of
// it can be taken up again; and how many steps of each kind have come right. It knows no sentence that people read.
//
// # The file
//
// Practice is one append-only file, practice.jsonl in the state folder (see Open): UTF-8, one JSON object a line. A line
// is written by a single write at the end of the file, without a lock, so several programs may write at once and one
// that is killed leaves nothing locked and loses at most the line it was writing. The order of lines is the order of
// events; times are told for people only, since clocks jump.
//
//	v         version of the line, 2; a line without it is of version 1 (see below)
//	at        when, RFC 3339
//	run       one lesson from its opening to its end
//	from      with the outcome resume: the run that was taken up
//	problem   the problem's name
//	frame     its fingerprint (see Fingerprint): work on other numbers is other work
//	level     read, values, terms, plan, blank, gradual
//	exam      true in an exam, whose answers are noted without a verdict
//	paper     in an exam over a set: which paper it is of, see Sitting
//	number    of the question in its lesson, from zero
//	question  its name: Cy, "V(BC, 2.4 before)"
//	key       its name where that stands for itself in the lesson; else with the step and sum before it: "2.1 arm 3"
//	typed     what was typed: a value, a sum or a command
//	outcome   a code, see Outcome
//	slips     ids of the mistakes that a wrong value may have come from, where some are known
//	kind      with the outcomes of steps: a code, see Kind
//	skills    with the outcomes of steps: what the step asks for, by the names of problem files
//	missed    of these, what the mistakes made show to be wanting
//	right     of these, what was right though the step was not: one mistake was made, which is known, and mended without help
//	along     with the outcome of a member: each place along it at which something was asked, a step by itself; see Place
//
// A reader passes over fields that it does not know and over whole lines that it cannot use, and counts these: lines
// that are torn or not JSON, lines over 1 MiB, and lines of a version above its own. So later versions may add fields
// to version 2; they raise v where an old reader would misread the line.
//
// Version 1 had rung in place of level (order for plan, fading for gradual), the words of verdict lines as outcomes
// ("right", "right (rounded)", "not yet"), a frame's fingerprint by Go's print format, and the kind of a step in question.
// Such lines are read as version 2; a resumed run of version 1 holds the answers it took up once more.
//
// # Where lines are kept
//
// A Store keeps the lines in a Log: a file of one's own, or one learner's part of a class's database (package database). So
// that opening takes no longer after years, a Log also keeps a brief of its older lines, which can be made anew from these at
// any time: see Past.
//
// Fingerprints have versions of their own, their first letters; work under older ones is found by Fingerprints.
package record
