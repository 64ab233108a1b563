package exact

import (
	"math"
	"testing"
)

// operands of three kinds: words, fractions past a word, and sums of roots.
func operands(b *testing.B) map[string][2]Num {
	return map[string][2]Num{
		"whole": {Int(1234), Int(-567)},
		"words": {MustParse("12.34"), MustParse("-56/7")},
		"big":   {Int(math.MaxInt64).Square(), MustParse("-98765432109876543210.123")},
		"roots": {num(b, "1/2 + 3*sqrt(2)/4 - sqrt(3)"), num(b, "5*sqrt(2)/2 + sqrt(3)/3")},
	}
}

func benchmark(b *testing.B, f func(x, y Num)) {
	for kind, x := range operands(b) {
		b.Run(kind, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				f(x[0], x[1])
			}
		})
	}
}

func BenchmarkAdd(b *testing.B)     { benchmark(b, func(x, y Num) { x.Add(y) }) }
func BenchmarkMul(b *testing.B)     { benchmark(b, func(x, y Num) { x.Mul(y) }) }
func BenchmarkQuo(b *testing.B)     { benchmark(b, func(x, y Num) { _, _ = x.Quo(y) }) }
func BenchmarkCmp(b *testing.B)     { benchmark(b, func(x, y Num) { x.Cmp(y) }) }
func BenchmarkFigures(b *testing.B) { benchmark(b, func(x, _ Num) { x.Figures(3) }) }
func BenchmarkDecimal(b *testing.B) { benchmark(b, func(x, _ Num) { x.Decimal(15) }) }

func BenchmarkParse(b *testing.B) {
	for b.Loop() {
		_, _ = Parse("-1234.567")
	}
}

func BenchmarkSqrt(b *testing.B) {
	for _, text := range []string{"2", "12.5", "123456789.123456789"} {
		x := MustParse(text)
		b.Run(text, func(b *testing.B) {
			for b.Loop() {
				_, _ = x.Sqrt()
			}
		})
	}
}

func BenchmarkSin(b *testing.B) {
	for _, text := range []string{"75", "20"} {
		x := MustParse(text)
		b.Run(text, func(b *testing.B) {
			for b.Loop() {
				Sin(x)
			}
		})
	}
}

func BenchmarkRoots(b *testing.B) {
	for name, text := range map[string]string{
		"quadratic": "-7, 3, 2", "rational cubic": "-6, 11, -6, 1", "cubic": "-1, -3, 0, 1", "cubic with roots": "sqrt(2), -3, 0, 1",
		"cubic with many roots": "12 + 3*sqrt(2) - 5*sqrt(5)/3 + sqrt(13), -31/4 - 7*sqrt(5) + sqrt(17), 5/3 + sqrt(5), sqrt(2) + sqrt(29)",
	} {
		p := poly(b, text)
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				p.Roots(Int(-9), Int(9))
			}
		})
	}
}
