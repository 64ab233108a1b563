package notation

import "unpin/statics/exact"

// A TypedSum is an equation of equilibrium as a person typed it, such as 6*2.4 + 15(7.2) - Cy*7.2 = 0.
type TypedSum struct {
	Left, Right []TypedTerm // of each side, in order; a side of 0 has none
}

// A TypedTerm is one product of a typed sum: known numbers, or numbers and the name of one force.
type TypedTerm struct {
	Start, End int           // bytes of the text, without the sign before it; of what was multiplied out, all of it
	Sign       int           // as typed: +1 or −1
	Force      string        // the name as typed, or empty
	Factors    []TypedFactor // the numbers, in order, none negative by a sign of its own
	Value      exact.Num     // all numbers and the sign together: the term itself, or what the force is multiplied by

	amount quantity // all numbers together, without the sign
}

// A TypedFactor is a number of a term, as typed: a number, a function, or what stands in one pair of brackets.
type TypedFactor struct {
	Start, End int
	Value      exact.Num // in the units of the problem
	Under      bool      // the term is divided by it
}

// ReadSum reads a typed equation in units u. The function known reports whether a typed name is one of a force; it may use
// NameMatches. A title before it is passed over, such as ΣM_A = or ΣFx:, and after one = 0 may be left out. A force may stand in any one factor of a term, but forces do not multiply or divide. Brackets about a force
// are multiplied out: 2(Cy − 3) has two terms. Errors are *ReadError.
func ReadSum(text string, u Units, known func(name string) bool) (TypedSum, error) {
	s, fault := readSum(withoutTitle(text), u, known)
	if fault != nil { // what stands for a title may reach further than what was typed
		fault.Start, fault.End = min(fault.Start, len(text)), min(fault.End, len(text))
		return TypedSum{}, fault
	}
	return s, nil
}

// readSum is ReadSum of a sum without a title.
func readSum(text string, u Units, known func(name string) bool) (TypedSum, *ReadError) {
	tokens, fault := lex(timesApart(text))
	if fault != nil {
		return TypedSum{}, fault
	}
	v := vocabulary{known: known, letters: u.Letters(), typed: true, forces: true}
	p := &parser{vocabulary: v, text: text, tokens: joinNames(tokens, known)}
	left, right, fault := p.equation()
	if fault != nil {
		return TypedSum{}, fault
	}
	e := evaluator{text: text, units: u}
	var s TypedSum
	if s.Left, fault = e.side(left); fault == nil {
		s.Right, fault = e.side(right)
	}
	if fault == nil {
		fault = e.sameMeasure(append(append([]TypedTerm{}, s.Left...), s.Right...))
	}
	if fault != nil {
		return TypedSum{}, fault
	}
	return s, nil
}

// Terms are the terms with all of them brought to the left side.
func (s TypedSum) Terms() []TypedTerm {
	all := append([]TypedTerm{}, s.Left...)
	for _, t := range s.Right {
		t.Sign, t.Value = -t.Sign, t.Value.Neg()
		all = append(all, t)
	}
	return all
}

// Coefficient is what the forces of that name are multiplied by, all terms on the left; of the empty name it is what the
// known terms add up to.
func (s TypedSum) Coefficient(name string) exact.Num {
	var k exact.Num
	for _, t := range s.Terms() {
		if NameMatches(t.Force, name) {
			k = k.Add(t.Value)
		}
	}
	return k
}

// joinNames makes one word of names with a point: Cy.CD, and Cy.AC+ with the plus of a part's name.
func joinNames(tokens []token, known func(string) bool) []token {
	var joined []token
	for len(tokens) > 0 {
		name, used := tokens[0], 1
		for n := 1; n < 4 && name.kind == wordToken && touches(tokens, n); n++ {
			if text := textOf(tokens[:n+1]); n > 1 && known(text) {
				name.text, name.end, used = text, tokens[n].end, n+1
			}
		}
		joined, tokens = append(joined, name), tokens[used:]
	}
	return joined
}

// touches reports whether nothing parts token n from the one before it.
func touches(tokens []token, n int) bool {
	return n < len(tokens) && tokens[n].kind != endToken && tokens[n].start == tokens[n-1].end
}

func textOf(tokens []token) string {
	var text string
	for _, t := range tokens {
		text += t.text
	}
	return text
}

// equation reads two sides with an equals sign between them.
func (p *parser) equation() (left, right *node, fault *ReadError) {
	if p.next().kind == endToken {
		return nil, nil, faultAt(p.next().start, p.next().end, "there is no sum here", "write its terms and = 0")
	}
	if left, fault = p.scope(); fault != nil {
		return nil, nil, fault
	}
	switch t := p.next(); {
	case t.kind == endToken:
		return nil, nil, faultAt(t.start, t.end, "the sum does not say what it is equal to", "write = 0 at its end")
	case !t.is("="):
		return nil, nil, p.stray()
	}
	p.take()
	if right, fault = p.scope(); fault != nil {
		return nil, nil, fault
	}
	switch t := p.next(); {
	case t.is("="):
		fault = faultAt(t.start, t.end, "there are two equals signs", "write one equation")
	case t.kind != endToken:
		fault = p.stray()
	}
	return left, right, fault
}
