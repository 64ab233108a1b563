package variant

import (
	"bufio"
	"fmt"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestGoldenDraws holds what draws mean against testdata/draws.txt. Codes that were handed out rest on it, so no -update
// writes that file: a line of it never changes, nor does a problem in testdata/handed that it is about.
func TestGoldenDraws(t *testing.T) {
	t.Parallel()
	file, err := os.Open("testdata/draws.txt")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	lines := bufio.NewScanner(file)
	tried := 0
	for lines.Scan() {
		if lines.Text() == "" || strings.HasPrefix(lines.Text(), "#") {
			continue
		}
		asked, want, _ := strings.Cut(lines.Text(), " -> ")
		if got := drawn(t, strings.Fields(asked)); got != want {
			t.Errorf("%s -> %s, which was %s", asked, got, want)
		}
		tried++
	}
	if tried < 10 {
		t.Errorf("only %d draws are held", tried)
	}
}

// drawn is the code of the first draw for problem, seed, place, student, attempt, and the numbers that follow from it.
func drawn(t *testing.T, asked []string) string {
	t.Helper()
	s := Source{Set: asked[0], Seed: asked[1]}
	var attempt int
	if _, err := fmt.Sscan(asked[2]+" "+asked[4], &s.Place, &attempt); err != nil {
		t.Fatal(err)
	}
	d := s.First(asked[3], attempt)
	m := maker(t, asked[0])
	return s.Code(d) + " " + strings.Join(m.Numbers(d), ", ")
}

// A code leads back to the draw; with one sign wrong, with two neighbours exchanged or with another length it is refused. Of
// another set it is refused but where the sets have one check.
func TestCodes(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		s := Source{Set: rapid.StringMatching("[a-z]{1,8}").Draw(t, "set"), Place: rapid.IntRange(1, MostPlaces).Draw(t, "place")}
		d := Draw(rapid.Uint32Range(0, Draws-1).Draw(t, "draw"))
		code := s.Code(d)
		place, got, err := s.Decode(" " + strings.ToLower(code) + "\n")
		if err != nil || place != s.Place || got != d {
			t.Fatalf("%s of place %d, draw %d is read as %d, %d, %v", code, s.Place, d, place, got, err)
		}
		at := rapid.IntRange(0, codeLength-1).Draw(t, "at")
		wrong := []byte(code)
		wrong[at] = alphabet[rapid.IntRange(0, 30).Draw(t, "sign")]
		if _, _, err := s.Decode(string(wrong)); string(wrong) != code && err == nil {
			t.Fatalf("%s in place of %s is not noticed", wrong, code)
		}
		swapped := []byte(code)
		next := min(at+1, codeLength-1)
		swapped[at], swapped[next] = swapped[next], swapped[at]
		if _, _, err := s.Decode(string(swapped)); string(swapped) != code && err == nil {
			t.Fatalf("%s in place of %s is not noticed", swapped, code)
		}
	})
}

// TestCodeFaults reads codes that are none.
func TestCodeFaults(t *testing.T) {
	t.Parallel()
	s := Source{Set: "w5", Place: 1}
	for code, want := range map[string]string{
		"":          "the code \"\" has 0 signs, not 8",
		"2222222":   "the code \"2222222\" has 7 signs, not 8",
		"22222O22":  "'O' is no sign of a code; \"22222O22\" may be misread (no code has 0, 1, I, L or O)",
		"ÄÖÜÄÖÜÄÖ":  "'Ä' is no sign of a code; \"ÄÖÜÄÖÜÄÖ\" may be misread (no code has 0, 1, I, L or O)",
		"ZZZZZZZZZ": "the code \"ZZZZZZZZZ\" has 9 signs, not 8",
	} {
		if _, _, err := s.Decode(code); err == nil || err.Error() != want {
			t.Errorf("%q: %v, want %s", code, err, want)
		}
	}
	code := s.Code(12345)
	if _, d, err := s.Decode(" " + code[:4] + " - " + strings.ToLower(code[4:])); d != 12345 || err != nil {
		t.Errorf("with a blank and a hyphen: %v, %v", d, err)
	}
	if _, _, err := (Source{Set: "w6"}).Decode(code); err == nil || !strings.Contains(err.Error(), "another set than w6") {
		t.Errorf("a code of another set: %v", err)
	}
}

// TestCodesOneToOne writes a million draws as codes and reads them back: no two have one code. A short run takes a tenth.
func TestCodesOneToOne(t *testing.T) {
	t.Parallel()
	const step = 887 // of all draws, so that the million lies all over them
	n := 1_000_000
	if testing.Short() {
		n /= 10
	}
	s := Source{Set: "statics-w5", Place: 7}
	for i := range n {
		d := Draw(i * step % Draws)
		if place, back, err := s.Decode(s.Code(d)); err != nil || back != d || place != 7 {
			t.Fatalf("draw %d has the code %s, which is read as place %d, draw %d: %v", d, s.Code(d), place, back, err)
		}
	}
}

// TestEveryMistypedCode tries every wrong sign and every exchange of two neighbours in some codes: none is taken for a code.
func TestEveryMistypedCode(t *testing.T) {
	t.Parallel()
	tried := 0
	refused := func(s Source, code, wrong string) {
		tried++
		if _, _, err := s.Decode(wrong); err == nil {
			t.Errorf("%s in place of %s is not noticed", wrong, code)
		}
	}
	for i := range 300 {
		s := Source{Set: fmt.Sprint("set-", i), Place: 1 + i%MostPlaces}
		code := s.Code(Draw(i * 2_958_563 % Draws))
		for at := range code {
			for _, sign := range alphabet {
				if byte(sign) != code[at] {
					refused(s, code, code[:at]+string(sign)+code[at+1:])
				}
			}
			if at > 0 && code[at] != code[at-1] {
				refused(s, code, code[:at-1]+string(code[at])+string(code[at-1])+code[at+1:])
			}
		}
	}
	if tried < 300*8*30 {
		t.Errorf("only %d codes were tried", tried)
	}
}
