package notation

import (
	"strings"
	"testing"
)

func TestCaretShowsTheNeighbourhoodOfAFault(t *testing.T) {
	text := strings.Repeat("1 + ", 100) + "%" + strings.Repeat(" + 1", 100)
	_, err := ReadAnswer(text, Units{"kN", "m"}, Force)
	fault, ok := err.(*ReadError)
	if !ok {
		t.Fatal(err)
	}
	line, carets, _ := strings.Cut(fault.Caret(text), "\n")
	at := strings.Index(carets, "^")
	if len(line) != excerpt || at < 0 || line[at] != '%' || strings.Count(carets, "^") != 1 {
		t.Errorf("\n%s\n%s", line, carets)
	}
}

// A fault shown under another text than its own is in the wrong place, but in none that does not exist.
func TestCaretUnderAnotherText(t *testing.T) {
	fault := &ReadError{Start: 50, End: 60, Problem: "p"}
	if got := fault.Caret("é3"); got != "é3\n  ^" {
		t.Errorf("%q", got)
	}
	if fault.Error() != "p" {
		t.Error(fault.Error())
	}
}
