// Package statics is the exact engine for statically determinate plane frames: it cuts a frame at its pins, counts,
// writes equilibrium sums as terms, orders them so that one unknown at a time comes out, and finds N, V and M.
//
// # Words
//
// A part is a rigid piece left when the frame is cut at its pins. A pin on which three or more parts, a support or a
// load act is a body of its own, with two sums. A free body is one of these bodies, several together, or all of them.
// A sum is one equilibrium equation of a free body; a term is one product in it, force × arm, with its sign.
//
// # Signs and axes
//
// x is positive to the right, y upward, a couple and a moment counter-clockwise. A reaction acts on the frame. A pair
// of pin forces acts as named on the part that holds the member listed first among those meeting at the joint, and
// reversed on the other. With e along a member and n = e turned 90° counter-clockwise, V is the sum along n of all
// forces on the starting side of a cut, N is positive in tension, and M is positive when it stretches the side −n, so
// that dM/dx = V.
//
// # Numbers
//
// All numbers are exact (package exact): no float and no tolerance occurs here. Directions are kept unscaled (3:4, not
// 0.6 and 0.8). Units are the caller's: force, length, and force × length for couples.
//
// # Layers
//
// The first word of a file's name is its layer. A file needs only its own layer and those before it (TestLayers):
//
//	tool     lists, queue, union, small numbers: of any numbered things
//	frame    what a problem describes, points and vectors, what makes a frame unfit
//	cut      the bodies, the forces between them, what loads do to each: Assembly
//	sum      sums and their terms, and whether a force counts in a sum
//	count    sums of all bodies as rows, elimination, rank, motions
//	plan     the order of sums: the family of sums (plan_family), the centres of moments (plan_centres), what a sum
//	         costs (plan_choice), sums solved together (plan_together, plan_smallest, plan_block), the closing checks
//	diagram  N, V and M along members, critical points
//	solve    the whole way; the solution with two-force members used at once; the way round two sums
//	refusal  why a frame cannot be solved by equilibrium alone, and what would mend it
//
// # Invariants
//
// These hold of every Assembly and Solution. Code that relies on one cites it, and the test named proves it on random
// frames.
//
// Of a frame that was cut:
//
//   - S1 Bodies are numbered parts first, in order of their first members, then pins, in order of their joints. Every
//     member lies in just one part. (TestBodies)
//   - S2 A force of one body on another is one unknown: it acts as named on Force.On and reversed on Force.By, so that
//     it drops out of a sum of both, and the sums of single bodies add up to that of all. (TestPairsCancel)
//   - S3 Forces and actions on a body are listed in rising order, and those of one connection or support are
//     neighbours, so that forces at one joint stand together. (TestBodies)
//   - S4 What the actions of a load come to is what the load comes to, in force and in moment about any point; so it is
//     where a load runs on in line over members of one part and they are taken together. No action is zero.
//     (TestTermsAddUp, TestBodies, TestRunsOn)
//
// Of a sum:
//
//   - S5 Everything that the cut touches has a term. Size and Arm are never negative; Sign is 0 if and only if Why is not
//     Counts; the value is Sign × Size × Arm. (TestTermsAddUp)
//   - S6 Whether a force or action counts in a sum (spec) is known without writing the sum, and agrees with the terms
//     that are then written. (TestSpecsAgree)
//
// Of a count:
//
//   - S7 The rank r is that of all E sums in all U unknowns. U − r forces are too many, and those that no choice among
//     them changes are determined; in E − r independent motions no force does work. (TestAgainstOracle, TestMotions)
//
// Of a determinate frame:
//
//   - S8 The values satisfy every sum of every free body exactly. (TestEveryBodyBalances)
//
//   - S9 The sums of a step have as unknowns only what it gives, all else that counts being given by steps before; a kept
//     relation says that two unknowns are equal, gives nothing and is used later; a check has none. Every force is given
//     once. (TestPlanIsSound)
//
//   - S10 Sums are solved together only where no sum of the family has one unknown, and then the fewest that do. Groups of
//     bodies are only looked at where no body and not the whole has such a sum. The family has every connected group of up
//     to Assembly.EveryGroupOf bodies, and the sides of pins. (TestPromise, TestPromiseOfLargeFrames, TestSidesOfPairs)
//
//   - S11 Of the family not all sums are listed, but enough: where one leaves no more than k unknowns, one that is listed
//     does. For all other forces pass through its centre, or are perpendicular to its direction, so that any k + 2 lines
//     of unknowns, or k + 1 directions, lead to it. (TestPromise)
//
//   - S12 The stretches of a member follow each other from 0 to its length; on each dM/dx = V, and V and N are the sums of
//     what acts on the starting side. (TestAgainstSlices)
//
//   - S13 Between stretches N and V step by the components of the point loads there and M by the couples, by nothing
//     else; at joints the ends of members balance. (TestAgainstSlices, TestJointsBalance)
//
//   - S14 Stations are in order, miss no place where V changes its sign, and no M between them exceeds all at them.
//     (TestStationsOfRandomFrames)
//
//   - S17 The sums that a plan used are as many as the forces and independent, so that any other is Σ λ·(used sum), with one
//     factor λ for each. A mistake in one used sum, whatever it is, carried on, shows in the other just if its λ is not zero.
//     Closing checks catch every step that an unused sum of the family catches; a sum with one factor only counts as used,
//     and a step whose terms are all zero needs none. In a frame of more than seven bodies not all of the family is looked at.
//     (TestChecks, TestChecksOfProblems)
//
// Of what is made of a solution:
//
//   - S15 Two-force members used at once, or one force split otherwise, change no other force, and N, V and M not at
//     all. (TestWithPulls, TestSplits)
//   - S16 What a refusal names as the cause is exact: it is read off a motion, in which no force does work (S7). Changes
//     that are offered were made, and lead to a determinate frame. (TestRefusalsOfRandomFrames)
package statics
