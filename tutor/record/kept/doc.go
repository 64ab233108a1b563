// Package kept keeps what a class does also while its database is away: lines are written to a file beside the program then, in the
// order in which they come, and go into the database when it is there again, each once. Who is in the middle of work can read on what
// they had read before; all else says that the database is away.
//
// # The file
//
// One line of JSON for each that waits: {"learner": …, "line": …}. It is on the disk before the line counts as kept. Its name holds the
// host it is of, as hosts that take turns on one folder may both have one. A line that was being written when the host was killed was
// never acknowledged, and is passed over.
package kept
