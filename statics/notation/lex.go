package notation

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Bounds on what is read, so that no text costs more than a moment.
const (
	maxText     = 4096 // bytes
	maxDigits   = 40   // of one number
	maxNesting  = 100  // brackets, functions and signs within each other
	maxOperands = 100  // numbers and names
)

// A tokenKind is what a token is.
type tokenKind int

const (
	endToken tokenKind = iota
	numberToken
	wordToken // letters, then also digits, _ and '
	signToken // one of + - * / ( ) . , = √ ^, or ^ and a figure
)

// A token is a piece of a text, from byte start to end. Its text is as typed, with signs made plain (− is -) and the
// decimal comma of a number made a point.
type token struct {
	kind       tokenKind
	text       string
	start, end int
}

// is reports whether t is that sign.
func (t token) is(sign string) bool { return t.kind == signToken && t.text == sign }

// plainSigns are the signs that are read, and what they stand for.
var plainSigns = map[rune]string{
	'+': "+", '-': "-", '*': "*", '/': "/", '(': "(", ')': ")", '.': ".", ',': ",", '=': "=", '√': "√",
	'^': "^", '²': "^2", '³': "^3",
	'−': "-", '–': "-", '‐': "-", '‑': "-", '×': "*", '·': "*", '⋅': "*", '∙': "*", '•': "*", '÷': "/", '∕': "/", '⁄': "/",
}

// signWords are signs that are read as a word.
const signWords = "°↑↓←→↺↻⟲⟳"

// lex cuts a text into tokens, the last of which is an endToken.
func lex(text string) ([]token, *ReadError) {
	if len(text) > maxText {
		return nil, faultAt(0, len(text), fmt.Sprintf("this is longer than %d characters", maxText), "write a short expression")
	}
	var tokens []token
	for at := 0; at < len(text); {
		r, width := utf8.DecodeRuneInString(text[at:])
		if unicode.IsSpace(r) {
			at += width
			continue
		}
		t, fault := lexOne(text, at, r, width)
		if fault != nil {
			return nil, fault
		}
		tokens = append(tokens, t)
		at = t.end
	}
	return append(tokens, token{endToken, "", len(text), len(text)}), nil
}

// lexOne is the token that begins at byte at with the rune r.
func lexOne(text string, at int, r rune, width int) (token, *ReadError) {
	sign, isSign := plainSigns[r]
	switch {
	case isDigit(r), isPoint(r) && startsDigit(text[at+1:]):
		return lexNumber(text, at)
	case unicode.IsLetter(r):
		end := at + len(text[at:]) - len(strings.TrimLeftFunc(text[at:], inWord))
		return token{wordToken, text[at:end], at, end}, nil
	case strings.ContainsRune(signWords, r):
		return token{wordToken, string(r), at, at + width}, nil
	case isSign:
		return token{signToken, sign, at, at + width}, nil
	}
	problem, remedy := strangeSign(r)
	return token{}, faultAt(at, at+width, problem, remedy)
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

func isPoint(r rune) bool { return r == '.' || r == ',' }

func startsDigit(s string) bool { return s != "" && isDigit(rune(s[0])) }

func inWord(r rune) bool {
	return unicode.IsLetter(r) || isDigit(r) || r == '_' || r == '\'' || r == '’'
}

// strangeSign says what is wrong with a rune that no text here has.
func strangeSign(r rune) (problem, remedy string) {
	switch {
	case strings.ContainsRune("\"'“”„‟‘’‚«»‹›`", r):
		return "quotation marks are not read here", "leave them out"
	case r == '%':
		return "a percent sign is not read here", "write the number alone, or what it comes to"
	case strings.ContainsRune("[]{}", r):
		return "only round brackets are read here", "write ( )"
	case r == utf8.RuneError:
		return "this is not a character", "type the number again"
	case unicode.IsDigit(r):
		return "only the digits 0 to 9 are read here", "type the number with them"
	}
	if !unicode.IsPrint(r) {
		return "this character is not read here", "leave it out"
	}
	return fmt.Sprintf("%s is not read here", quoted(string(r))), "use digits, + - * / and ( )"
}

// lexNumber is the number that begins at byte at.
func lexNumber(text string, at int) (token, *ReadError) {
	whole := digits(text[at:])
	end := at + len(whole)
	number, fraction := whole, ""
	if end < len(text) && isPoint(rune(text[end])) {
		switch fraction = digits(text[end+1:]); {
		case fraction != "":
			number += "." + fraction
			if text[end] == ',' && len(fraction) == 3 {
				return token{}, doubtfulComma(text, at, end)
			}
			end += 1 + len(fraction)
		case text[end] == '.' && !startsLetter(text[end+1:]):
			end++ // 5.
		}
	}
	t := token{numberToken, number, at, end}
	return t, checkNumber(text, t, len(whole)+len(fraction))
}

// digits is the run of digits that s begins with.
func digits(s string) string { return s[:len(s)-len(strings.TrimLeftFunc(s, isDigit))] }

func startsLetter(s string) bool {
	r, _ := utf8.DecodeRuneInString(s)
	return unicode.IsLetter(r)
}

// doubtfulComma asks what the comma at byte comma, before exactly three digits, means in the number from byte at.
func doubtfulComma(text string, at, comma int) *ReadError {
	whole, fraction, end := text[at:comma], text[comma+1:comma+4], comma+4
	point, groups := "", true // what follows the three digits is a point and digits, or groups of three with commas
	for end < len(text) && isPoint(rune(text[end])) && startsDigit(text[end+1:]) {
		run := digits(text[end+1:])
		groups = groups && point == "" && (text[end] == '.' || len(run) == 3)
		if text[end] == '.' {
			point = "."
		}
		end += 1 + len(run)
	}
	remedy := "write " + strings.ReplaceAll(text[at:end], ",", "")
	switch {
	case !groups:
		remedy = "write one point, and nothing between the thousands"
	case whole == "" || whole[0] == '0':
		remedy = fmt.Sprintf("write %s.%s", whole, fraction)
	case end == comma+4:
		remedy += fmt.Sprintf(" or %s.%s", whole, fraction)
	}
	return faultAt(at, end, fmt.Sprintf("the comma in %s may be a decimal comma or part the thousands", quoted(text[at:end])), remedy)
}

// checkNumber reports what follows the number t wrongly, or that it has too many digits.
func checkNumber(text string, t token, size int) *ReadError {
	rest := text[t.end:]
	after := func(problem, remedy string) *ReadError {
		_, width := utf8.DecodeRuneInString(rest)
		return faultAt(t.start, t.end+width, problem, remedy)
	}
	switch {
	case size > maxDigits:
		return faultAt(t.start, t.end, fmt.Sprintf("this number has more than %d digits", maxDigits), "write fewer")
	case rest == "":
		return nil
	case isPoint(rune(rest[0])) && startsDigit(rest[1:]):
		end := t.end + 1 + len(digits(rest[1:]))
		return faultAt(t.start, end, quoted(text[t.start:end])+" has two decimal points", "write one, and nothing between the thousands")
	case (rest[0] == 'e' || rest[0] == 'E') && startsDigit(strings.TrimLeft(rest[1:], "+-−")):
		return after("powers of ten are not read here", "write the number with all its zeros")
	case strings.ContainsAny(rest[:1], "'_") && startsDigit(rest[1:]):
		return after("a number has nothing between its digits but one point", "write the digits together")
	case strings.ContainsAny(rest[:1], "'\""), strings.HasPrefix(rest, "’"), strings.HasPrefix(rest, "″"), strings.HasPrefix(rest, "′"):
		return after("feet and inches are not read from such marks", "write ft or in")
	}
	return nil
}
