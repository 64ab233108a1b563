package notation

import "strings"

// A phrase is what the words of a sense say.
type phrase struct {
	sense Sense
	side  Sense // of a tension: the side of the member that is stretched
}

// takePhrase cuts the words of a sense, which may stand in brackets, off the end or else the beginning of the tokens.
func takePhrase(tokens []token) ([]token, phrase, *ReadError) {
	body, end := tokens[:len(tokens)-1], tokens[len(tokens)-1]
	from, words := phraseAtEnd(body)
	rest := body[:from]
	if len(words) == 0 {
		var until int
		until, words = phraseAtStart(body)
		rest = body[until:]
	}
	p, fault := understand(words)
	return append(append([]token{}, rest...), end), p, fault
}

// phraseAtEnd is where the words of a sense begin that end the tokens, and the words without brackets and commas.
func phraseAtEnd(tokens []token) (int, []token) {
	last := len(tokens)
	if last > 0 && tokens[last-1].is(")") {
		open := last - 1
		for open > 0 && isPhraseWord(tokens[open-1]) {
			open--
		}
		if open > 0 && tokens[open-1].is("(") && open < last-1 {
			return open - 1, tokens[open : last-1]
		}
		return last, nil
	}
	from := last
	for from > 0 && isPhraseWord(tokens[from-1]) {
		from--
	}
	return trimPhrase(tokens, from)
}

// trimPhrase drops leading words that belong to the number: a dash, and fillers, of which in is also a unit.
func trimPhrase(tokens []token, from int) (int, []token) {
	for ; from < len(tokens); from++ {
		t := tokens[from]
		next := phrase{}
		if from+1 < len(tokens) {
			next.sense = wordSense(tokens[from+1].text)
		}
		inThem := strings.EqualFold(t.text, "in") && (next.sense == Tension || next.sense == Compression)
		switch {
		case t.is(","), inThem, t.kind == wordToken && !oneOf(fillers, strings.ToLower(t.text)):
			return from, tokens[from:]
		case t.kind == wordToken && !strings.EqualFold(t.text, "in") && from+1 < len(tokens):
			return from, tokens[from:]
		}
	}
	return from, nil
}

// phraseAtStart is where the words of a sense end that begin the tokens, and the words.
func phraseAtStart(tokens []token) (int, []token) {
	until := 0
	for until < len(tokens) && isPhraseWord(tokens[until]) && !tokens[until].is("-") {
		until++
	}
	if until == len(tokens) {
		return 0, nil
	}
	return until, tokens[:until]
}

// isPhraseWord reports whether a token may be part of the words of a sense.
func isPhraseWord(t token) bool {
	word := strings.ToLower(t.text)
	return t.is("-") || t.is(",") || t.kind == wordToken &&
		(wordSense(t.text) != NoSense || sideWords[word] != NoSense || oneOf(fillers, word) || oneOf(turners, word))
}

// understand joins the words of a sense.
func understand(words []token) (phrase, *ReadError) {
	var p phrase
	turned := false
	for _, t := range words {
		word := strings.ToLower(t.text)
		s, side := wordSense(t.text), sideWords[word]
		switch {
		case oneOf(turners, word):
			turned = true
			continue
		case s == Clockwise && turned:
			s = CounterClockwise
		case turned && t.kind == wordToken:
			return p, phraseFault(words)
		}
		if t.kind == wordToken {
			turned = false
		}
		if !p.add(s, side) {
			return p, phraseFault(words)
		}
	}
	if len(words) > 0 && (p.sense == NoSense || turned) || p.side != NoSense && p.sense != Tension {
		return p, phraseFault(words)
	}
	return p, nil
}

// add takes in one more word, and reports whether it goes with those before.
func (p *phrase) add(s, side Sense) bool {
	switch {
	case side != NoSense:
		both, ok := joinSenses(p.side, side)
		p.side = both
		return ok
	case p.sense == Tension && isDirection(s):
		both, ok := joinSenses(p.side, s)
		p.side = both
		return ok
	case s == Tension && isDirection(p.sense):
		p.sense, p.side = Tension, p.sense
		return true
	}
	both, ok := joinSenses(p.sense, s)
	p.sense = both
	return ok
}

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
	}
	for pair, s := range slopes {
		if pair == [2]Sense{a, b} || pair == [2]Sense{b, a} {
			return s, true
		}
	}
	return a, false
}

func phraseFault(words []token) *ReadError {
	return faultAt(words[0].start, words[len(words)-1].end, "these words give no one sense",
		"write one of up, down, left, right, cw, ccw, tension, compression")
}
