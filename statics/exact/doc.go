// Package exact holds the numbers of the engine: sums Σ qᵢ·√nᵢ with rational
// qᵢ and squarefree whole nᵢ, added, multiplied, divided, compared and
// rounded without error.
//
// The set is closed under the four operations, because the product of two
// roots is a root and a quotient is cleared by conjugates. It holds every
// length between points with rational coordinates and the sine and cosine of
// every multiple of 15 degrees, which is what a plane frame asks for.
//
// Invariants:
//
//  1. A Num never changes. An operation gives a new Num, and a *big.Int or
//     *big.Rat that goes in or comes out is copied.
//  2. The zero value is 0.
//  3. A rational num/den in lowest terms with den > 0 and both parts within
//     ±(2⁶³−1) is always held in two machine words; anything else is held as
//     terms. No other value has two shapes.
//  4. The terms of one Num have non-zero factors and radicands from distinct
//     square classes (the product of two is no perfect square). Roots from
//     distinct classes are linearly independent over the rationals, so no
//     terms means zero and a single rational term means rational.
//  5. The inexact mark is set where a value stands for something outside the
//     set. Sums, differences, products and quotients pass it on, except that
//     exact zero times anything is exact zero, and exact zero added or
//     subtracted changes nothing.
//  6. Sign, order and rounding are of the held value and always exact, marked
//     or not.
//  7. No input panics (MustParse apart). Work is bounded: a result of more
//     than 256 terms is replaced by a marked rational of 34 significant digits.
package exact
