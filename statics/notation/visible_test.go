package notation

import (
	"encoding/json"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestVisible(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]string{
		"Überdachung, 60°, ΣM, 負荷": "Überdachung, 60°, ΣM, 負荷",
		"\x1b]0;x\a":               `\u001b]0;x\u0007`,
		"a\u009bb":                 `a\u009bb`,
		"a\x9bb":                   `a\ufffdb`,
		"\u202eabc\u2066":          `\u202eabc\u2066`,
		"\ufeffa\u200bb\u00ad":     `\ufeffa\u200bb\u00ad`,
		"a\nb\tc\r\u2028":          `a\u000ab\u0009c\u000d\u2028`,
		"\U000e0041":               `\udb40\udc41`,
	} {
		if got := Visible(text); got != want {
			t.Errorf("Visible(%q) = %q, not %q", text, got, want)
		}
	}
	if got, want := VisibleLines("a\nb\tc\r\x1b"), "a\nb\tc\\u000d\\u001b"; got != want {
		t.Errorf("VisibleLines gives %q, not %q", got, want)
	}
}

// What is made visible has nothing hidden left, is made so once for all, and in a JSON string stands for the text itself.
func TestVisibleOfAnyText(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		text := string(rapid.SliceOf(rapid.OneOf(rapid.Rune(), rapid.RuneFrom([]rune("\x00\x1b\u202e\u200b\ufeff\n")))).Draw(t, "runes"))
		got := Visible(text)
		if strings.ContainsFunc(got, Hidden) || !utf8.ValidString(got) || Visible(got) != got {
			t.Fatalf("%q becomes %q", text, got)
		}
		if strings.ContainsAny(text, `"\`) {
			return
		}
		var back string
		if err := json.Unmarshal([]byte(`"`+got+`"`), &back); err != nil || back != text {
			t.Fatalf("%q comes back from JSON as %q: %v", text, back, err)
		}
	})
}

// What is hidden goes by Unicode's classes, also where that is decided without looking them up.
func TestHiddenByClass(t *testing.T) {
	t.Parallel()
	for c := rune(0); c <= unicode.MaxRune; c++ {
		if got, want := Hidden(c), unicode.In(c, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp); got != want {
			t.Errorf("%U: hidden %v, want %v", c, got, want)
		}
	}
}
