package tutor

import (
	"slices"
	"strings"
	"unicode"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
	"unpin/tutor/record"
)

// At the level terms, where the pieces of a term are asked for, a line may also hold the whole term or the whole sum: it is
// judged term by term, and settles all pieces that it holds.

// ofTerm reports whether a question is for a piece of a term.
func (q Question) ofTerm() bool { return q.Kind == TermSize || q.Kind == TermArm || q.Kind == TermSign }

// sameTerm and sameSum report whether another question is for a piece of the same term, or of the same sum.
func (q Question) sameTerm(o Question) bool { return q.sameSum(o) && o.Term == q.Term }
func (q Question) sameSum(o Question) bool  { return o.ofTerm() && o.Step == q.Step && o.Sum == q.Sum }

// takeWhole takes a line that holds more than the piece asked for; false where it does not.
func takeWhole(l *Lesson, q Question, line string) (Reply, bool) {
	switch {
	case !q.ofTerm():
		return Reply{}, false
	case l.sheet.exam:
		return onlyPiece(l, q, line)
	}
	v, err := l.bench().read(q, line)
	piece := err == nil && l.bench().caseOf(q).Verdict(v).Right()
	if piece && !strings.HasPrefix(strings.TrimSpace(line), "+") {
		return Reply{}, false
	}
	named := l.about.mentionsForce(line)
	if wholeSum(l.about, line) {
		return takeWholeSum(l, q, line), true
	}
	w, ok := l.bench().readWhole(q, line, named)
	switch other := l.bench().ofAnother(q, line); {
	case piece && !(ok && w.right()):
		return Reply{}, false
	case !(ok && w.right()) && l.bench().signedPiece(q, line):
		return pieceSigned(q), true
	case !(ok && (w.right() || w.opposite())) && other != "":
		return Reply{Kind: Unread, Lines: []string{other}}, true
	case named && l.bench().unequal(line):
		return Reply{Kind: Unread, Lines: []string{"A whole sum is an equation: end it with = 0, or type the term in hand alone."}}, true
	case !ok:
		return Reply{}, false
	case w.bare && (w.right() || w.opposite()):
		// Whether the whole term is meant, or a piece that meets its size by chance, nothing tells.
		return Reply{Kind: Unread, Lines: []string{wholeOrPiece(q)}}, true
	case w.right() && w.estranged():
		return settlePieces(l, line, "the term has this value, though not by the factors typed: its own are its force and its arm.", q.sameTerm), true
	case w.right():
		return settlePieces(l, line, "that is the whole term, with its sign.", q.sameTerm), true
	case w.opposite() && !w.signed && q.Kind != TermSign:
		unsigned := func(o Question) bool { return q.sameTerm(o) && o.Kind != TermSign }
		return settlePieces(l, line, "that is the size of the term: which sign does it have?", unsigned), true
	case !w.signed && !named && !(q.Kind == TermSize && w.otherArm()):
		return Reply{}, false // a piece, and a wrong one; or no sign
	}
	l.sheet.inHand().tries++
	fb := feedback{about: l.about, sheet: l.sheet}
	says := fb.wholeWrong(q, w)
	return l.settle(line, ruling{verdict: judging.Wrong, says: says, slips: fb.slips}), true
}

// onlyPiece replies in an exam, which notes each piece of a term, to a line that holds more than one: it is no answer yet.
func onlyPiece(l *Lesson, q Question, line string) (Reply, bool) {
	says := ""
	switch {
	case wholeSum(l.about, line):
		says = "In an exam a sum is taken piece by piece: type the " + pieceWord(q) + " alone."
	case q.Kind != TermSign && strings.HasPrefix(strings.Replace(strings.TrimSpace(line), "−", "-", 1), "-"):
		says = "The " + pieceWord(q) + " is asked for without a sign: which sign the term has is asked for after it."
	}
	return Reply{Kind: Unread, Lines: []string{says}}, says != ""
}

// wholeOrPiece asks which of the two a bare number is meant to be that is the size of a whole term.
func wholeOrPiece(q Question) string {
	return "As it stands this is the whole term, its force times its arm: type that with its sign or as a product, or its " + pieceWord(q) + " alone."
}

// signedPiece reports whether a line is the force or the arm asked for, right but for a minus before it.
func (b bench) signedPiece(q Question, line string) bool {
	bare, minus := strings.CutPrefix(strings.Replace(strings.TrimSpace(line), "−", "-", 1), "-")
	if !minus || q.Kind == TermSign {
		return false
	}
	v, err := b.read(q, strings.TrimSpace(bare))
	return err == nil && b.caseOf(q).Verdict(v).Right()
}

// pieceSigned is said of it: that is no mistake yet.
func pieceSigned(q Question) Reply {
	return Reply{Kind: Unread, Lines: []string{"The " + pieceWord(q) + " is asked for without a sign, and is right without it: which sign the term has comes after."}}
}

// ofAnother says of which other term of the sum a line is the whole; it is empty where it is that of none. A number alone is of none: it
// may be a piece of the term asked for.
func (b bench) ofAnother(q Question, line string) string {
	s := b.about.solution.Plan[q.Step].Sums[q.Sum]
	typed, err := notation.ReadSum(b.judge().Decimals(line)+" = 0", b.about.problem.Units, b.about.namesForce)
	if err != nil || len(typed.Left) != 1 || typed.Left[0].Force == "" && len(typed.Left[0].Factors) < 2 {
		return ""
	}
	force, value := statics.None, typed.Left[0].Value.Abs()
	if name := typed.Left[0].Force; name != "" {
		force = b.about.forceNamed(name)
	}
	for n, t := range s.Terms() {
		if n != q.Term && t.Why == statics.Counts && t.Force == force && value.Equal(t.Value().Abs()) {
			say := b.about.words()
			return "That is the size of the term of " + say.Component(t) + ": the term of " + say.Component(s.Terms()[q.Term]) + " is asked for here."
		}
	}
	return ""
}

// unequal reports whether a line holds several terms and is no equation.
func (b bench) unequal(line string) bool {
	typed, err := notation.ReadSum(b.judge().Decimals(line)+" = 0", b.about.problem.Units, b.about.namesForce)
	return err == nil && len(typed.Left) > 1
}

// mentionsForce reports whether a word of a line names a force.
func (m *matter) mentionsForce(line string) bool {
	for _, word := range strings.FieldsFunc(line, func(r rune) bool { return strings.ContainsRune(" \t+-−*×·/()=0123456789,", r) }) {
		if m.namesForce(word) {
			return true
		}
	}
	return false
}

// wholeSum reports whether a line holds a whole sum.
func wholeSum(m *matter, line string) bool {
	return strings.Contains(line, "=") && m.mentionsForce(line)
}

// takeWholeSum judges the whole sum in one line.
func takeWholeSum(l *Lesson, q Question, line string) Reply {
	typed, err := notation.ReadSum(l.bench().judge().Decimals(line), l.about.problem.Units, l.about.namesForce)
	if err != nil {
		return unread(judging.Placed(line, err))
	}
	found := l.bench().judge().Sum(l.about.solution.Plan[q.Step].Sums[q.Sum], typed, l.sheet.known)
	if found.Verdict.Right() {
		return settlePieces(l, line, "that is the whole sum, term by term.", q.sameSum)
	}
	l.sheet.inHand().tries++
	return l.settle(line, ruling{verdict: found.Verdict, says: found.Says, slips: found.Slips})
}

// settlePieces settles the questions from the one in hand on that are of a sort, all by one line.
func settlePieces(l *Lesson, line, says string, sort func(Question) bool) Reply {
	for {
		q, asking := l.Now()
		if !asking || !sort(q) {
			break
		}
		l.sheet.inHand().tries++
		l.sheet.enter(pieceText(q), ruling{verdict: judging.Exact, value: q.truth})
		l.heed(q, line, record.Exact)
		l.sheet.at++
	}
	return Reply{Kind: Judged, Verdict: judging.Exact, Lines: []string{judging.Exact.String() + ": " + says}}
}

// alike reports whether a number is another to within half a per cent, as one of three figures is.
func alike(x, y exact.Num) bool { return x.Sub(y).Abs().Mul(exact.Int(200)).Cmp(y.Abs()) <= 0 }

// pieceWord is what a question asks for of a term.
func pieceWord(q Question) string {
	word, _, _ := strings.Cut(q.Name, " ")
	return word
}

// pieceText is a piece of a term as a student would type it.
func pieceText(q Question) string {
	if q.Kind == TermSign {
		return map[bool]string{true: "+", false: "-"}[q.truth.Sign() > 0]
	}
	return problems.PlaceText(q.truth)
}

// A wholeTerm is a typed term, by the signs of the lesson.
type wholeTerm struct {
	term    statics.Term
	truth   exact.Num // what it should be; of an unknown, what this is multiplied by
	typed   judging.Typed
	factors []exact.Num
	signed  bool // a sign or a sense was typed
	bare    bool // a mere number was typed: no sign, no unit, no product
}

// estranged reports whether a product was typed of whose factors none, alone or with others, is the arm of the term.
func (w wholeTerm) estranged() bool {
	if w.term.What == statics.TurnOnly || w.term.Force != statics.None || len(w.factors) < 2 || len(w.factors) > 6 {
		return false
	}
	size, arm := w.term.Size, w.term.Arm
	for some := range 1 << len(w.factors) {
		product := exact.Int(1)
		for i, f := range w.factors {
			if some>>i&1 == 1 {
				product = product.Mul(f).Abs()
			}
		}
		if alike(product, size) || alike(product, arm) {
			return false
		}
	}
	return true
}

// otherArm reports whether a product of the force and another arm was typed.
func (w wholeTerm) otherArm() bool {
	return w.term.Force == statics.None && len(w.factors) > 1 && slices.ContainsFunc(w.factors, func(f exact.Num) bool {
		return f.Mul(w.term.Size).Equal(w.typed.Value.Abs())
	})
}

func (w wholeTerm) right() bool { return w.comesTo(w.truth) }

func (w wholeTerm) opposite() bool { return w.comesTo(w.truth.Neg()) }

// comesTo reports whether what was typed is a value of the term, but for three figures of its force, its arm and both.
func (w wholeTerm) comesTo(value exact.Num) bool {
	size, arm := w.term.Size, w.term.Arm
	if w.term.What == statics.TurnOnly || arm.IsZero() { // not of moments, or without an arm
		return w.typed.Means(value)
	}
	off := judging.OnlyLong(value).Add(judging.OnlyLong(size).Mul(arm)).Add(judging.OnlyLong(arm).Mul(size))
	return w.typed.Means(value) || w.typed.Value.Sub(value).Abs().Cmp(off) <= 0
}

// readWhole reads a line as the whole term that a question is about; false where it is none.
func (b bench) readWhole(q Question, line string, named bool) (wholeTerm, bool) {
	s := b.about.solution.Plan[q.Step].Sums[q.Sum]
	w := wholeTerm{term: s.Terms()[q.Term]}
	w.truth = w.term.Value()
	if s.Moment {
		w.truth = b.about.style().Moments.Value(w.truth)
	}
	if named != (w.term.Force != statics.None) {
		return w, false
	}
	typed, err := notation.ReadSum(b.judge().Decimals(line)+" = 0", b.about.problem.Units, b.about.namesForce)
	if err == nil && len(typed.Left) == 1 {
		for _, f := range typed.Left[0].Factors {
			w.factors = append(w.factors, f.Value)
		}
	}
	w.signed = strings.ContainsAny(strings.TrimSpace(line)[:1], "+-") || strings.HasPrefix(strings.TrimSpace(line), "−")
	if named {
		if err != nil || len(typed.Left) != 1 {
			return w, false
		}
		f, facing := judging.ForceMeant(b.about.solution.Assembly, typed.Left[0].Force)
		w.typed = judging.Typed{Value: typed.Left[0].Value.Mul(exact.Int(int64(facing))), Unit: exact.Int(1)}
		return w, f == w.term.Force
	}
	force := statics.Force{Name: q.Name, Along: s.Along, By: statics.None}
	dim := notation.Force
	if s.Moment {
		force.Couple, force.Turned, dim = true, b.about.clockwise(), notation.Moment
	}
	if w.typed, err = b.judge().Read(judging.Asked{Name: q.Name, Dim: dim, Force: &force}, line); err != nil {
		return w, false
	}
	w.bare = s.Moment && w.term.What != statics.TurnOnly && !w.signed && len(w.factors) == 1 && !strings.ContainsFunc(line, unicode.IsLetter)
	w.signed = w.signed || strings.ContainsAny(strings.ToLower(line), "abcdefghijopqrtuvwyz") && len(w.factors) == 0
	return w, true
}

// wholeWrong says what is wrong with a whole term: its sign, or the one piece that does not fit while the others do.
func (fb *feedback) wholeWrong(q Question, w wholeTerm) string {
	piece := q
	judge := bench{fb.about, fb.sheet}
	find := func(kind Kind, typed judging.Typed) string {
		piece.Kind = kind
		if says := fb.found(judge.caseOf(piece).Find(judging.Wrong, typed)); says != "" {
			return says
		}
		return fb.about.termRule(kind, fb.about.solution.Plan[q.Step].Sums[q.Sum], w.term)
	}
	if w.opposite() {
		return find(TermSign, judging.Word(-w.truth.Sign()))
	}
	size := w.typed.Value.Abs()
	for _, f := range w.factors {
		switch rest, err := size.Quo(f); {
		case err != nil:
		case f.Equal(w.term.Arm) && w.term.Force == statics.None:
			return find(TermSize, judging.Typed{Value: rest, Unit: exact.Int(1)})
		case rest.Equal(w.term.Size), w.term.Force != statics.None:
			return find(TermArm, judging.Typed{Value: f, Unit: exact.Int(1)})
		}
	}
	if q.Kind == TermSign && w.typed.Value.Sign() == w.truth.Sign() {
		return "that is its sign, but not the size of the term: type the sign alone, or the whole term."
	}
	return fb.about.termRule(q.Kind, fb.about.solution.Plan[q.Step].Sums[q.Sum], w.term)
}
