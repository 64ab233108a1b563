package exact

import (
	"errors"
	"math/big"
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParseTable(t *testing.T) {
	checkAnswers(t, "testdata/parse.txt", 1, func(_ *testing.T, question []string) string {
		a, err := Parse(question[0])
		if err != nil {
			return err.Error()
		}
		return a.String()
	})
}

func TestParseFaults(t *testing.T) {
	if _, err := Parse(""); err == nil {
		t.Error("an empty text is read as a number")
	}
	if _, err := Parse("1/0"); !errors.Is(err, ErrDivideByZero) {
		t.Errorf("1/0: %v", err)
	}
	long := strings.Repeat("9", 1<<20)
	for _, s := range []string{long, "1/" + long, "1." + long, "\xff\xfe", "1\x00", strings.Repeat("−", 500)} {
		_, err := Parse(s)
		if err == nil || len(err.Error()) > 300 {
			t.Errorf("%.20q…: %.400v", s, err)
		}
	}
}

func TestMustParsePanics(t *testing.T) {
	defer func() {
		if recover() == nil {
			t.Error("MustParse of no number goes on")
		}
	}()
	MustParse("x")
}

func TestStringRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := FromRat(drawRat(t, "r"))
		if b, err := Parse(a.String()); err != nil || !a.Equal(b) || a.String() != b.String() {
			t.Fatalf("%v is read as %v, %v", a, b, err)
		}
		c := drawTwin(t, 2).n
		if d := num(t, c.String()); !c.Equal(d) || c.String() != d.String() {
			t.Fatalf("%v is read as %v", c, d)
		}
	})
}

func TestString(t *testing.T) {
	r2, r3 := num(t, "sqrt(2)"), num(t, "sqrt(3)")
	for want, a := range map[string]Num{
		"7":                           Int(7),
		"20/3":                        MustParse("20/3"),
		"-114/25":                     MustParse("-4.56"),
		"sqrt(2)":                     r2,
		"-sqrt(2)":                    r2.Neg(),
		"5*sqrt(2)/2":                 r2.Mul(MustParse("2.5")),
		"-sqrt(3)/3":                  r3.Mul(MustParse("-1/3")),
		"-sqrt(2) + sqrt(3)":          r3.Sub(r2),
		"1/2 + 3*sqrt(2)/4 - sqrt(3)": MustParse("1/2").Add(r2.Mul(MustParse("3/4"))).Sub(r3),
	} {
		if a.String() != want {
			t.Errorf("%v, want %s", a, want)
		}
	}
}

// What Parse takes, told as one pattern, and read by big.Rat.
var numberPattern = regexp.MustCompile(`^[-+−]?(\d{1,40}/\d{1,40}|\d{1,40}(\.\d{0,40})?|\.\d{1,40})$`)

func FuzzParse(f *testing.F) {
	for _, s := range []string{"0", "-12.50", "+.5", "5.", "−20/3", "1/0", "", "1e9", "1_0", " 1", "٣", "1.2/3", strings.Repeat("9", 41)} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		a, err := Parse(s)
		want, ok := newRat(strings.Replace(s, "−", "-", 1))
		if ok = ok && numberPattern.MatchString(s); ok != (err == nil) {
			t.Fatalf("%q: %v, %v; want it read: %t", s, a, err, ok)
		}
		if err != nil {
			return
		}
		checkShape(t, a)
		if got, _ := a.Rat(); got.Cmp(want) != 0 {
			t.Fatalf("%q is read as %v, want %v", s, a, want)
		}
		if back := num(t, a.String()); !back.Equal(a) {
			t.Fatalf("%v is read back as %v", a, back)
		}
		if gap := new(big.Rat).Sub(want, a.ToDecimal(40).Rat()); gap.Abs(gap).Cmp(big.NewRat(1, 1e18)) > 0 {
			t.Fatalf("%v to 40 places is off by %v", a, gap)
		}
	})
}
