package notation

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// seeds adds the inputs of a data file.
func seeds(f *testing.F, file string) {
	data, err := os.ReadFile(filepath.Join("testdata", file))
	if err != nil {
		f.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		line = strings.TrimSuffix(line, "\n")
		if plain, err := strconv.Unquote(line); err == nil {
			line = plain
		}
		if !strings.HasPrefix(line, "\t") && !strings.HasPrefix(line, "#") {
			f.Add(line, uint8(len(line)), uint8(len(line)/2))
		}
	}
}

// pick are units and a dimension for two numbers.
func pick(u, d uint8) (Units, Dimension) {
	all := append([]Units{{}}, allUnits...)
	return all[int(u)%len(all)], Dimension(int(d) % int(Any+1))
}

// checkFault reports an error that does not say what and where.
func checkFault(t *testing.T, err error, text string) {
	if err == nil {
		return
	}
	fault, ok := err.(*ReadError)
	switch {
	case !ok:
		t.Fatalf("%q: %T: %v", text, err, err)
	case fault.Start < 0 || fault.End < fault.Start || fault.End > len(text):
		t.Fatalf("%q: place %d to %d: %v", text, fault.Start, fault.End, err)
	case fault.Problem == "" || fault.Remedy == "" || strings.ContainsAny(fault.Error(), "\n\r\t") || len(fault.Error()) > 400:
		t.Fatalf("%q: %q", text, fault.Error())
	case strings.Count(fault.Caret(text), "\n") != 1 || !strings.HasSuffix(fault.Caret(text), "^"):
		t.Fatalf("%q: %q", text, fault.Caret(text))
	}
}

func FuzzReadAnswer(f *testing.F) {
	seeds(f, "answers.txt")
	f.Fuzz(func(t *testing.T, text string, unit, dimension uint8) {
		u, d := pick(unit, dimension)
		a, err := ReadAnswer(text, u, d)
		checkFault(t, err, text)
		switch {
		case err != nil:
		case a.Literal == a.Expression:
			t.Fatalf("%q is a literal and an expression, or neither", text)
		case a.Literal && !exact.MustParse(a.Written.String()).Mul(a.Scale).Equal(a.Value):
			t.Fatalf("%q: %s × %s is not %s", text, a.Written, a.Scale, a.Value)
		}
	})
}

func FuzzReadNumber(f *testing.F) {
	seeds(f, "numbers.txt")
	names := map[string]exact.Num{"h": exact.MustParse("4.5"), "w": exact.MustParse("8"), "a'": exact.MustParse("1/3"), "k": exact.MustParse("0"), "e": exact.MustParse("2")}
	f.Fuzz(func(t *testing.T, text string, unit, dimension uint8) {
		u, d := pick(unit, dimension)
		n, err := ReadNumber(text, names, u, d)
		if v, plain := PlainNumber(text); plain && (err != nil || !v.Equal(n)) {
			t.Fatalf("%q is %s as a plain number and else %s, %v", text, v, n, err)
		}
		checkFault(t, err, text)
		if err != nil {
			return
		}
		for _, name := range Names(text) {
			if _, ok := names[name]; !ok && !u.Reserved(name) && !isSpelling(name) {
				t.Fatalf("%q reads as %s, yet %q is no name", text, n, name)
			}
		}
	})
}

// isSpelling reports whether a word stands for a unit, though it is not reserved.
func isSpelling(word string) bool {
	_, ok := unitSpelled(word)
	return ok || word == "per"
}

func FuzzReadSum(f *testing.F) {
	seeds(f, "sums.txt")
	forces := []string{"Ax", "Cy", "Cy.CD", "Cy.AC+", "MN", "RD"}
	f.Fuzz(func(t *testing.T, text string, unit, _ uint8) {
		u, _ := pick(unit, 0)
		s, err := ReadSum(text, u, func(name string) bool { return oneOf(forces, name) })
		checkFault(t, err, text)
		for _, term := range s.Terms() {
			if term.Start < 0 || term.End <= term.Start || term.End > len(text) || term.Force != "" && !oneOf(forces, term.Force) {
				t.Fatalf("%q: term %+v", text, term)
			}
			v := exact.Int(int64(term.Sign))
			for _, factor := range term.Factors {
				if factor.Under {
					v = over(v, factor.Value)
				} else {
					v = v.Mul(factor.Value)
				}
			}
			if !v.Equal(term.Value) {
				t.Fatalf("%q: term %+v comes to %s", text, term, v)
			}
		}
	})
}

func FuzzFactor(f *testing.F) {
	seeds(f, "factors.txt")
	f.Fuzz(func(t *testing.T, text string, unit, dimension uint8) {
		u, d := pick(unit, dimension)
		k, err := Factor(text, u, d)
		checkFault(t, err, text)
		if err == nil && k.Sign() <= 0 {
			t.Fatalf("a %q is %s", text, k)
		}
		_, err = ParseUnits(text)
		checkFault(t, err, text)
	})
}
