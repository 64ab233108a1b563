package problems

import (
	"regexp"
	"testing"
)

// oldWords are those that a textbook of today does not use; common practice, no source.
var oldWords = regexp.MustCompile(`(?i)\b(aslant|nought|reckon\w*|giver|athwart|upright pin|spread load)\b`)

// TestLibraryWords: what people read of a problem is the plain English of a textbook.
func TestLibraryWords(t *testing.T) {
	t.Parallel()
	for _, name := range Names() {
		p, _ := Library(name)
		if word := oldWords.FindString(p.Title + " " + p.Text); word != "" {
			t.Errorf("%s says %q", name, word)
		}
	}
}
