// Package notation is one-line text both ways: it reads the numbers of a problem and what a student types, and writes
// numbers, units and names of forces.
//
// # Grammar
//
// Blanks separate words and mean nothing else. In order of rising strength:
//
//	sum     = product { ("+" | "-") product }
//	product = factor { ("*" | "/" | nothing) factor }       from left to right
//	factor  = ("+" | "-") factor | operand [ unit ]
//	operand = number | name | letter | "(" sum ")" | function "(" sum ")" | "√" operand
//	number  = digits [ ("." | ",") digits ]                  at most 40 digits, no exponent
//	unit    = word { ("*" | "." | "-" | "/" | nothing) word }
//
// The signs − × · ÷ stand for - * * /. The functions are sqrt, sin, cos and tan, of degrees. Nothing between two
// factors multiplies them only where no one could read it otherwise: 2h, 2(3), (3)h, h(2), PL. Two numbers side by side
// do not, and neither does anything after a division other than that of two plain numbers: 1/2(6) is half of 6, but
// w/2h is asked about.
//
// A typed sum is two of these with an equals sign between them, in which the names are those of forces: Cy, C_y, Cy.CD.
// What follows a number is its unit before it is a force, so that 2 MN is no couple at a joint N.
//
// A decimal comma before exactly three digits is asked about, because it may have been meant to part the thousands.
//
// # Units
//
// A number without a unit is in the units of the problem. A unit belongs to the number or bracket before it, but where
// it is the only one and ends the text, it belongs to the whole: 45/8 kN. Units are carried through the arithmetic, so
// that 6 kN * 2.4 m is a moment and kN + m a fault. All factors are exact.
//
// In a problem whose units are the letters P and L, numbers are multiples of P, L, PL and P/L, and the letters are
// written like names: 3/8 P, PL/4.
//
// # Senses
//
// An answer may have words for its sense after it or before: down, to the left, cw, (T), ↑. Up, down, left, right and what
// they make together are of forces, clockwise and counter-clockwise of couples, tension and compression of members; tension
// and a side, as in tension left, are of a bending moment. Signs are read apart from the sense, and are as typed.
//
// # Errors
//
// What cannot be read comes back as a *ReadError with the place, what is wrong and what would be right.
package notation
