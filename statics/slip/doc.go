// Package slip is the catalogue of slips: the mistakes by which a student comes to a wrong value, each with a name, one
// sentence to the student, a source, and the change that it makes to the terms of a true sum.
//
// # From a slip to a value, and back
//
// The true sum, with the unknown X, is k·X + ΣTᵢ = 0. A slip changes a term (its size, arm or sign, or leaves it out),
// adds one that does not belong, or changes k, the unknown's own term; solving the changed sum gives the value to which
// the slip leads. Candidates lists these values for every slip that the step allows, Diagnose finds those that a typed
// value agrees with. What no slip leads to stays without a name.
//
// # Sources
//
// The letters of a slip's source. Of those marked "excerpt" an abstract or a first page was read, none was read whole.
//
// SD1…SD11: the typical errors of P. S. Steif and J. A. Dantzler, Journal of Engineering
// Education 94(4), 2005, 363–371, and P. S. Steif, Frontiers in Education 2004, doi 10.1109/FIE.2004.1408579. The
// framework and the counts are from excerpts, the list and its numbers from memory.
//
// GD: Gross and Dinehart, ASEE, doi 10.18260/1-2--21466, marked quizzes of five years (excerpt).
//
// PLM: Passmore, Litzinger and Masters, ASEE 2010, doi 10.18260/1-2--16198, moments and couples (excerpt).
//
// NC: Newcomer, ASEE 2013, paper 6308, force balance and moment balance (excerpt).
//
// JH: Johnson and Herman, ASEE 2017, paper 17998, sketches of shear diagrams (excerpt).
//
// EX: ASEE 2026, paper 52284, errors in examinations (excerpt; authors not noted).
//
// LT: Litzinger and others, Journal of Engineering Education 99, 2010, reactions recalled and not reasoned (excerpt).
//
// RG: Rowlands, Graham and Berry, stumbling blocks with moments of forces, 1998 (excerpt; authors from memory).
//
// TB: common practice, no one source: cautions that textbooks of statics and of structural analysis share, from memory.
//
// DV: derived here from the mechanics; no study found.
package slip
