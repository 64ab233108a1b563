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
// SD1…SD11 are the typical errors of Steif and Dantzler, Journal of Engineering Education 94(4), 2005, 363–371, and
// Steif, Frontiers in Education 2004 (numbered from memory). GD: Gross and Dinehart, ASEE, doi 10.18260/1-2--21466.
// PLM: Passmore, Litzinger and Masters, ASEE 2010, doi 10.18260/1-2--16198. NC: Newcomer, ASEE 2013, paper 6308.
// JH: Johnson and Herman, ASEE 2017, paper 17998. EX: ASEE 2026, paper 52284. LT: Litzinger et al., Journal of
// Engineering Education 99, 2010. FI: an instrument on free-body diagrams, ASEE 2017. RG: Rowlands, Graham and Berry,
// 1998. IN: an instructor's public list of mistakes in frames. VM: ASEE 2005, on shear and moment diagrams. TB: cautions
// that textbooks of statics share (from memory). DV: derived from the mechanics, no study found.
package slip
