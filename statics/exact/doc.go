// Package exact holds the numbers of the engine: sums r + Σ qᵢ·√nᵢ with
// rational r and qᵢ and squarefree whole nᵢ > 1, added, multiplied, divided,
// compared and rounded without error.
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
//  3. A fraction in lowest terms with both parts within ±(2⁶³−1) is held in
//     two machine words, any other as a big.Rat. No fraction has two shapes.
//  4. The roots of one Num have factors other than zero and radicands above 1
//     from distinct square classes (the product of two is no perfect square).
//     Roots from distinct classes are linearly independent over the
//     rationals, so a Num is rational just when it has no roots, and zero
//     just when it has none and r is 0.
//  5. The inexact mark is set where a value stands for something outside the
//     set. Sums, differences, products and quotients pass it on, except that
//     exact zero times anything is exact zero.
//  6. Sign, order and rounding are of the held value and always exact, marked
//     or not.
//  7. No input panics, MustParse apart. A result of more than 128 roots is
//     replaced by a marked rational of 34 significant digits, and so is a
//     product of more than 4096 pairs of terms: the work of one operation is
//     bounded by the digits of its operands.
package exact
