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
package statics
