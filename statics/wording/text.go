package wording

import (
	"fmt"
	"unicode"
	"unicode/utf8"
)

// Sentence begins a clause with a capital and ends it with a full stop.
func Sentence(clause string) string { return Capital(clause) + "." }

// Capital is a text that begins with a capital.
func Capital(text string) string {
	r, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToUpper(r)) + text[size:]
}

// Count is a small number as a word: "two"; 0 is "no".
func Count(n int) string {
	words := [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
	if n >= 0 && n < len(words) {
		return words[n]
	}
	return fmt.Sprint(n)
}

// Counted is a number with what it counts: "1 part", "3 parts".
func Counted(n int, what string) string { return fmt.Sprintf("%d %s", n, Plural(n, what)) }

// Plural is a word for that many of a thing: with an s, unless it is one.
func Plural(n int, what string) string {
	if n == 1 {
		return what
	}
	return what + "s"
}

// either is the first word where it is one, else the second.
func either(one bool, singular, plural string) string {
	if one {
		return singular
	}
	return plural
}
