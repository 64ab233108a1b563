package notation

import "testing"

func BenchmarkReadAnswer(b *testing.B) {
	u := Units{"kN", "m"}
	for _, text := range []string{"9.5", "-9,5 kN down", "6 kN*2.4 m + 15 kN(7.2 m) - 12 kN*sin(30)*1.2 m"} {
		b.Run(text, func(b *testing.B) {
			for b.Loop() {
				if _, err := ReadAnswer(text, u, Any); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkReadSum(b *testing.B) {
	known := func(name string) bool { return name == "Cy" }
	for b.Loop() {
		if _, err := ReadSum("6*2.4 + 15(7.2) - Cy*7.2 = 0", Units{"kN", "m"}, known); err != nil {
			b.Fatal(err)
		}
	}
}
