package notation

import "strings"

// senseWords are the words for a sense in small letters. T and C are read in capitals only.
var senseWords = map[string]Sense{
	"up": Up, "upward": Up, "upwards": Up, "↑": Up,
	"down": Down, "downward": Down, "downwards": Down, "↓": Down,
	"left": Left, "leftward": Left, "leftwards": Left, "←": Left,
	"right": Right, "rightward": Right, "rightwards": Right, "→": Right,
	"clockwise": Clockwise, "cw": Clockwise, "↻": Clockwise, "⟳": Clockwise,
	"counterclockwise": CounterClockwise, "anticlockwise": CounterClockwise, "ccw": CounterClockwise, "acw": CounterClockwise,
	"↺": CounterClockwise, "⟲": CounterClockwise,
	"tension": Tension, "tensile": Tension,
	"compression": Compression, "compressive": Compression,
}

// sideWords are sides of a member that are no sense; the word tension may go with them.
var sideWords = map[string]Sense{"top": Up, "above": Up, "upper": Up, "bottom": Down, "below": Down, "lower": Down}

// fillers are words that may stand among those of a sense, and turners make clockwise its opposite.
var (
	fillers = []string{"to", "the", "on", "and", "at", "in", "side", "face", "acting"}
	turners = []string{"counter", "anti"}
)

// wordSense is the sense that a word stands for.
func wordSense(word string) Sense {
	switch word {
	case "T":
		return Tension
	case "C":
		return Compression
	}
	return senseWords[strings.ToLower(word)]
}

// isSenseWord reports whether a word says something of a sense or side.
func isSenseWord(word string) bool {
	word = strings.ToLower(word)
	return wordSense(word) != NoSense || sideWords[word] != NoSense || oneOf(turners, word)
}

// A phrase is what the words of a sense say.
type phrase struct {
	sense Sense
	side  Sense // of a bending moment: the side of the member in tension, or with the word in compression
}

// takePhrase cuts the words of a sense, which may stand in brackets, off the end or else the beginning of the tokens.
func takePhrase(tokens []token) ([]token, phrase, *ReadError) {
	body, end := tokens[:len(tokens)-1], tokens[len(tokens)-1]
	from, words := phraseAtEnd(body)
	rest := body[:from]
	if len(words) == 0 {
		until := phraseAtStart(body)
		words, rest = body[:until], body[until:]
	}
	p, fault := understand(words)
	return append(append([]token{}, rest...), end), p, fault
}

// phraseAtEnd is where the words of a sense begin that end the tokens, and the words without brackets.
func phraseAtEnd(tokens []token) (int, []token) {
	last := len(tokens)
	if last > 0 && tokens[last-1].is(".") {
		last-- // the full stop of a sentence
	}
	closing := last > 0 && tokens[last-1].is(")")
	if closing {
		last--
	}
	from := last
	for from > 0 && isPhraseToken(tokens[from-1]) {
		from--
	}
	from = dropUnit(tokens[:last], from)
	switch {
	case !saysSense(tokens[from:last]):
		return len(tokens), nil
	case !closing:
		return from, tokens[from:last]
	case from > 0 && tokens[from-1].is("("):
		return from - 1, tokens[from:last]
	}
	return len(tokens), nil
}

// dropUnit leaves out what begins a run of words but belongs to the number before them: a dash, or the inch. The word in
// is no inch before tension or compression.
func dropUnit(tokens []token, from int) int {
	for from < len(tokens) {
		next := NoSense
		if from+1 < len(tokens) {
			next = wordSense(tokens[from+1].text)
		}
		inch := strings.EqualFold(tokens[from].text, "in") && next != Tension && next != Compression
		if !inch && !tokens[from].is("-") {
			break
		}
		from++
	}
	return from
}

// phraseAtStart is where the words of a sense end that begin the tokens.
func phraseAtStart(tokens []token) int {
	until := 0
	for until < len(tokens) && isPhraseToken(tokens[until]) {
		until++
	}
	for until > 0 && tokens[until-1].is("-") {
		until-- // the sign of the number
	}
	if !saysSense(tokens[:until]) {
		return 0
	}
	return until
}

// isPhraseToken reports whether a token may be part of the words of a sense.
func isPhraseToken(t token) bool {
	if t.kind != wordToken {
		return t.is("-") || t.is(",")
	}
	return wordSense(t.text) != NoSense || isSenseWord(t.text) || oneOf(fillers, strings.ToLower(t.text))
}

func saysSense(words []token) bool {
	for _, t := range words {
		if t.kind == wordToken && (wordSense(t.text) != NoSense || isSenseWord(t.text)) {
			return true
		}
	}
	return false
}

// understand joins the words of a sense.
func understand(words []token) (phrase, *ReadError) {
	var p phrase
	fits, turned := true, false
	for _, t := range words {
		word, s := strings.ToLower(t.text), wordSense(t.text)
		if turned && t.kind == wordToken {
			fits = fits && s == Clockwise
			s, turned = s.Opposite(), false
		}
		turned = turned || oneOf(turners, word)
		fits = p.add(s, sideWords[word]) && fits
	}
	switch {
	case !fits, turned, len(words) > 0 && p.sense == NoSense && p.side == NoSense:
		return p, phraseFault(words, "these words do not give one sense", "write one of up, down, left, right, cw, ccw, tension, compression")
	}
	return p, nil
}

// add takes in one more word, and reports whether it goes with those before. A direction beside tension or compression is a side.
func (p *phrase) add(s, side Sense) (fits bool) {
	switch {
	case isPull(p.sense) && isDirection(s):
		s, side = NoSense, s
	case isPull(s) && isDirection(p.sense):
		p.sense, side = NoSense, p.sense
	}
	var sensible, oneSide bool
	p.sense, sensible = joinSenses(p.sense, s)
	p.side, oneSide = joinSenses(p.side, side)
	return sensible && oneSide
}

func isPull(s Sense) bool { return s == Tension || s == Compression }

func isDirection(s Sense) bool { return s >= Up && s <= DownRight }

// slopes are the senses of a vertical and a horizontal one together.
var slopes = map[[2]Sense]Sense{{Up, Left}: UpLeft, {Up, Right}: UpRight, {Down, Left}: DownLeft, {Down, Right}: DownRight}

// joinSenses is both senses in one, if there is such.
func joinSenses(a, b Sense) (Sense, bool) {
	switch {
	case a == NoSense || a == b:
		return b, true
	case b == NoSense:
		return a, true
	case slopes[[2]Sense{a, b}] != NoSense:
		return slopes[[2]Sense{a, b}], true
	case slopes[[2]Sense{b, a}] != NoSense:
		return slopes[[2]Sense{b, a}], true
	}
	return a, false
}

func phraseFault(words []token, problem, remedy string) *ReadError {
	return faultAt(words[0].start, words[len(words)-1].end, problem, remedy)
}
