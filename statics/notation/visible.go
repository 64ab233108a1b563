package notation

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf16"
	"unicode/utf8"
)

// Hidden reports whether a character steers what shows a text and is itself not seen: a control character, one that
// sets the direction of writing, takes no width, or ends a line or paragraph (Unicode's classes Cc, Cf, Zl and Zp). No
// text of a problem may have one but the tab and the ends of its lines.
func Hidden(c rune) bool {
	if c <= unicode.MaxASCII {
		return c < ' ' || c == 0x7f
	}
	return unicode.In(c, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}

// Visible is a text of one line with each character that is Hidden written as an escape, \u001b, and each byte that is
// no UTF-8 as \ufffd, so that neither a terminal nor a reader of the page can be misled by it. In a JSON string these
// escapes are what JSON has for the same characters.
func Visible(text string) string { return visible(text, "") }

// VisibleLines is Visible for a text of several lines: ends of lines and tabs stay.
func VisibleLines(text string) string { return visible(text, "\n\t") }

// visible is the text with the characters that are to be escaped: the hidden ones but some.
func visible(text, but string) string {
	escape := func(c rune) bool { return Hidden(c) && !strings.ContainsRune(but, c) }
	plain := 0 // so many bytes at the beginning are ASCII and stay
	for plain < len(text) && (text[plain] >= ' ' && text[plain] <= '~' || strings.IndexByte(but, text[plain]) >= 0) {
		plain++
	}
	if rest := text[plain:]; utf8.ValidString(rest) && !strings.ContainsFunc(rest, escape) {
		return text
	}
	var b strings.Builder
	for at := 0; at < len(text); {
		c, size := utf8.DecodeRuneInString(text[at:])
		switch high, low := utf16.EncodeRune(c); {
		case c == utf8.RuneError && size == 1:
			b.WriteString(`\ufffd`)
		case !escape(c):
			b.WriteRune(c)
		case c > 0xffff:
			fmt.Fprintf(&b, `\u%04x\u%04x`, high, low)
		default:
			fmt.Fprintf(&b, `\u%04x`, c)
		}
		at += size
	}
	return b.String()
}
