package exact

import (
	"math/bits"
	"strconv"
	"strings"
)

// Writing fractions held in words without big whole numbers. Each function tells whether it can; where it cannot, the way by
// big whole numbers gives the same text, which a test makes sure of.

// powers are those of ten that are words.
var powers = func() (list [20]uint64) {
	list[0] = 1
	for i := range list[1:] {
		list[i+1] = 10 * list[i]
	}
	return list
}()

// word is a as ±n/d, if it is held in words without a mark.
func (a Num) word() (n, d uint64, negative, ok bool) {
	return absWord(a.num), uint64(a.over) + 1, a.num < 0, a.more == nil
}

// roundedWord is n/d·10^places rounded half up.
func roundedWord(n, d uint64, places int) (uint64, bool) {
	if places >= len(powers) || -places >= len(powers) {
		return 0, false
	}
	var hi, lo uint64
	if places >= 0 {
		hi, lo = bits.Mul64(n, powers[places])
	} else {
		over, under := bits.Mul64(d, powers[-places])
		if over != 0 {
			return 0, false
		}
		lo, d = n, under
	}
	if hi >= d {
		return 0, false
	}
	m, rest := bits.Div64(hi, lo, d)
	if rest >= d-rest { // no less than half; rest < d
		m++
		return m, m != 0
	}
	return m, true
}

// exponentWord is the power of ten of the first significant digit of n/d > 0.
func exponentWord(n, d uint64) (int, bool) {
	if n >= d {
		return digitCount(n/d) - 1, true
	}
	for k := 1; k < len(powers); k++ {
		if hi, lo := bits.Mul64(n, powers[k]); hi > 0 || lo >= d {
			return -k, true
		}
	}
	return 0, false
}

// digitCount is how many digits v takes; 0 for 0.
func digitCount(v uint64) int {
	n := 0
	for n < len(powers) && powers[n] <= v {
		n++
	}
	return n
}

// placesWord is how many decimal places a fraction in lowest terms over d takes, if it terminates.
func placesWord(d uint64) (int, bool) {
	twos, fives := bits.TrailingZeros64(d), 0
	for d >>= twos; d%5 == 0; d /= 5 {
		fives++
	}
	return max(twos, fives), d == 1
}

// decimalWord is Decimal of a ≠ 0.
func (a Num) decimalWord(sig int) (string, bool) {
	n, d, negative, ok := a.word()
	if !ok {
		return "", false
	}
	if places, ends := placesWord(d); ends {
		m, ok := roundedWord(n, d, places) // of at most 20 digits, which are shown
		return plainWord(m, places, negative), ok
	}
	e, ok := exponentWord(n, d)
	if !ok {
		return "", false
	}
	places := clamp(sig, 1) - 1 - e
	m, ok := roundedWord(n, d, places)
	return trimZeros(plainWord(m, places, negative)), ok
}

// placesText is Places.
func (a Num) placesText(places int) (string, bool) {
	n, d, negative, ok := a.word()
	if !ok {
		return "", false
	}
	m, ok := roundedWord(n, d, places)
	return plainWord(m, places, negative), ok
}

// figuresWord is Figures of a ≠ 0.
func (a Num) figuresWord(figures int) (string, bool) {
	n, d, negative, ok := a.word()
	if !ok {
		return "", false
	}
	e, ok := exponentWord(n, d)
	if !ok {
		return "", false
	}
	figures = clamp(figures, 1)
	places := figures - 1 - e
	m, ok := roundedWord(n, d, places)
	if !ok || figures >= len(powers) {
		return "", false
	}
	if m == powers[figures] { // 9.996 went up to 10.00
		places--
		m, ok = roundedWord(n, d, places)
	}
	return plainWord(m, places, negative), ok
}

// plainWord is plain for ±m.
func plainWord(m uint64, places int, negative bool) string {
	var room [64]byte
	b := room[:0]
	if negative && m != 0 {
		b = append(b, '-')
	}
	if places <= 0 {
		b = strconv.AppendUint(b, m, 10)
		if m != 0 {
			b = append(b, strings.Repeat("0", -places)...)
		}
		return string(b)
	}
	if places >= len(powers) { // no digit before the point
		text := strconv.FormatUint(m, 10)
		return string(b) + "0." + strings.Repeat("0", max(0, places-len(text))) + text
	}
	b = append(strconv.AppendUint(b, m/powers[places], 10), '.')
	rest := m % powers[places]
	for zeros := places - max(1, digitCount(rest)); zeros > 0; zeros-- {
		b = append(b, '0')
	}
	return string(strconv.AppendUint(b, rest, 10))
}

// textWord is String.
func (a Num) textWord() (string, bool) {
	if a.more != nil {
		return "", false
	}
	if a.over == 0 {
		return strconv.FormatInt(a.num, 10), true
	}
	return strconv.FormatInt(a.num, 10) + "/" + strconv.FormatUint(uint64(a.over)+1, 10), true
}
