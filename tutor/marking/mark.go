package marking

import (
	"slices"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

// The verdicts on an answer.
const (
	Right   = "right"
	Rounded = "rounded" // right to within rounding on the way
	Carried = "carried" // right by the student's own faulty values
	Close   = "close"   // further off than rounding explains
	Sense   = "sense"   // the right size in the opposite sense
	Unit    = "unit"    // right but for a unit of another kind
	Slip    = "slip"    // one mistake of the catalogue leads to it
	Wrong   = "wrong"
	Missing = "missing"
)

// Verdicts lists the verdicts.
var Verdicts = []string{Right, Rounded, Carried, Close, Sense, Unit, Slip, Wrong, Missing}

// An Answer is what became of one value that is asked for, or was given unasked.
type Answer struct {
	Item     problems.Item
	Name     string // as a sheet has it
	Asked    bool
	Given    string // as it was written; empty where it is missing
	Lines    []int
	Value    exact.Num // by the senses of the solution
	Verdict  string
	Slip     string     // the mistake that leads to it, by its ID
	Slips    []string   // where several fit
	Says     string     // one sentence to the student, without a number
	From     []string   // the faulty values that it follows from
	Or       []string   // of a fault: others that may stand in its place
	Violates []Violated // of a fault: sums that it does not satisfy, in which all else is known
	Follows  string     // by which sum it follows
	Remark   string     // something to know beside the verdict
	Got, Of  exact.Num  // points, exact
	hollow   bool       // it earns nothing, whatever its verdict
}

// A Violated sum is one that a faulty value does not satisfy.
type Violated struct {
	Name string
	By   exact.Num // what it comes to in place of zero
	Dim  notation.Dimension
	row  *row
}

// A Result is a marked paper.
type Result struct {
	Paper   *Paper
	Marker  *Marker
	Answers []Answer // those asked for in the order of the plan, then what was given unasked
	Faults  []string // the values in which the trouble began
	Unread  []Unread
	Got, Of exact.Num // points; Got is rounded as the scheme says
	Working []string  // what there is to say of the working on the paper, a sentence each
	Parts   []Part    // of the working on the paper, with their marks
	// own are the forces as the student has them, and answered which of them were given.
	own      []exact.Num
	answered []bool
	x        values // the same of all items
}

// Mark marks a paper, of so many points.
func (m *Marker) Mark(p *Paper, s *Scheme, points exact.Num) *Result {
	w := &work{reading: m.read(p), scheme: s, weights: m.weights(s), blames: map[int]judged{}, judgings: map[judgedKey]judged{}, solved: map[int]int{}}
	w.settleValues()
	w.search()
	r := &Result{Paper: p, Marker: m, Unread: w.unread, Of: points, own: w.own(), answered: make([]bool, len(m.Forces)), x: w.x}
	for i, item := range m.Items {
		if item.Force != statics.None {
			r.answered[item.Force] = w.x.answered[i]
		}
	}
	hollow := w.hollow()
	for i := range m.Items {
		if m.Asked[i] || w.given[i] != nil {
			r.Answers = append(r.Answers, w.answer(i))
		}
	}
	for _, x := range w.extra {
		r.Answers = append(r.Answers, w.extraAnswer(x))
	}
	if w.trace != nil {
		for _, i := range w.trace.faults {
			r.Faults = append(r.Faults, m.wanted(m.Items[i]))
		}
	}
	r.accept(s)
	for i := range r.Answers {
		if a := &r.Answers[i]; hollow && a.Asked && s.earns(a.Verdict) {
			a.hollow, a.Remark = true, "one size throughout shows no work, and earns nothing"
		}
	}
	s.count(r, points)
	return r
}

// accept makes right what the scheme accepts beside the true values. What follows from it is carried as from any value that is not true.
func (r *Result) accept(s *Scheme) {
	for i := range r.Answers {
		a := &r.Answers[i]
		if a.Given == "" || a.Verdict == Right || !s.accepts(a.Item, a.Value) {
			continue
		}
		a.Verdict, a.Remark = Right, "accepted as well"
		a.Slip, a.Slips, a.Says, a.From, a.Or, a.Violates, a.Follows = "", nil, "", nil, nil, nil, ""
		r.Faults = slices.DeleteFunc(r.Faults, func(name string) bool { return name == a.Name })
	}
}

// ownSum is what a value follows from that closes a sum as the student wrote it.
const ownSum = "own sum"

// Carry has a value carried that follows from the student's own sum, as the working shows, and counts anew by the scheme.
func (r *Result) Carry(name string, s *Scheme) {
	for i := range r.Answers {
		if a := &r.Answers[i]; a.Item.Name == name && a.Verdict != Carried {
			a.Verdict, a.From, a.Follows = Carried, []string{ownSum}, "the sum as it stands in the working"
			a.Slip, a.Slips, a.Says = "", nil, "" // the trouble began in the sum, not in solving it
			s.count(r, r.Of)
		}
	}
}

// BeginsIn has the trouble begin in a value, a fault or one that may stand in place of a fault, where the working shows that it did.
func (r *Result) BeginsIn(name string) {
	begun := slices.IndexFunc(r.Answers, func(a Answer) bool { return a.Name == name })
	for i := range r.Answers {
		a := &r.Answers[i]
		at := slices.Index(r.Faults, a.Name)
		if at >= 0 && a.Name == name {
			a.Or = nil
		}
		if begun < 0 || at < 0 || !contains(a.Or, name) {
			continue
		}
		r.Faults = slices.Clone(r.Faults)
		r.Faults[at] = name
		others := slices.DeleteFunc(slices.Clone(a.Or), func(o string) bool { return o == name })
		r.Answers[begun].Or, a.Or, a.Violates = append([]string{a.Name}, others...), nil, nil
	}
}

// Forces are the forces as the student has them, by the senses of the solution, and which of them were given; the others are the true
// ones.
func (r *Result) Forces() (values []exact.Num, given []bool) { return r.own, r.answered }

// work is the marking of one paper.
type work struct {
	*reading
	scheme   *Scheme
	weights  []exact.Num
	x        values
	verdict  []string        // of each item, as far as it is settled
	turned   []bool          // it is of a diagram that was turned over
	forced   []bool          // it is at fault whatever follows from what
	lenient  []bool          // right by 1 % of its sum alone: not what others rest on where a mistake explains them all
	strict   map[*row][]rest // what the sums of forces come to, where values have to follow strictly
	trying   bool            // a reading that may not stand: mistakes in solving are not looked for
	trace    *trace
	suspects []int // forces at fault in one of the readings
	blames   map[int]judged
	// judgings are what was found of items by single sums.
	judgings map[judgedKey]judged
	solved   map[int]int // in how many sums a mistake in solving was looked for
}

// judged is what the judge finds of a value that is taken to be at fault.
type judged struct {
	verdict string
	slips   []string
	says    string
	broken  []*row
}

// settleValues gathers the student's values and settles what is right as it stands.
func (w *work) settleValues() {
	n := len(w.Items)
	w.x = values{of: w.truths(), answered: make([]bool, n), whole: make([]bool, n)}
	w.verdict, w.turned, w.forced, w.lenient = make([]string, n), make([]bool, n), make([]bool, n), make([]bool, n)
	for i, g := range w.given {
		if g == nil {
			w.verdict[i] = Missing
			continue
		}
		w.x.of[i], w.x.answered[i] = g.typed.Value, true
	}
	w.turnOver()
	for i, item := range w.Items {
		w.x.whole[i] = w.x.of[i].Equal(item.Value) && ends(item.Value)
	}
	for i, g := range w.given {
		switch {
		case g == nil:
		case g.faces:
			w.forced[i] = true
		case w.isRight(i):
			w.verdict[i] = Right
		case w.nearlyTrue(i) && w.known.right(caseKey{i, nil}, w.plainCase, w.typedOf(i)):
			w.verdict[i], w.lenient[i] = Rounded, true
		}
	}
}

// nearlyTrue reports whether a value is near enough to the true one for rounding on the way to explain it.
func (w *work) nearlyTrue(i int) bool {
	truth := w.Items[i].Value
	return !w.empty[i] && w.x.of[i].Sub(truth).Abs().Mul(exact.Int(10)).Cmp(truth.Abs()) < 0
}

// isRight reports whether a value is the true one, or that rounded.
func (w *work) isRight(i int) bool { return w.typedOf(i).Means(w.Items[i].Value) }

// typedOf is a value as it was typed, in the sense in which it is taken.
func (w *work) typedOf(i int) judging.Typed {
	if w.turned[i] {
		return negated(w.given[i].typed)
	}
	return w.given[i].typed
}

// search finds the faults, by what rounding can do at most, and then by what rounding each answer does, where that tells more.
func (w *work) search() {
	w.searchAs()
	w.strictly()
	w.closing()
}

// searchAs finds the faults. What seems to follow from right values alone, but is not right by the judge, is at fault: then
// the search begins anew.
func (w *work) searchAs() {
	for range len(w.Items) + 1 {
		w.trace = w.searchOnce()
		if w.trace == nil || !w.unsettle() {
			return
		}
	}
}

// searchOnce finds the faults with what is known to be at fault; nil where all is right.
func (w *work) searchOnce() *trace {
	t, forces, inner := w.begin()
	if t != nil {
		t.resolve(forces, w.forceRow)
		t.strict = nil // N, V and M come of many terms
		t.resolve(inner, w.innerRow)
	}
	return t
}

// begin is a trace at its beginning, with the forces and the other values that are to be resolved; nil where all is right.
func (w *work) begin() (t *trace, forces, inner []int) {
	wrong := make([]bool, len(w.Items))
	some := false
	for i := range wrong {
		wrong[i] = w.isWrong(i) || w.lenient[i] && !w.forced[i]
		some = some || w.isWrong(i) || w.strict != nil && wrong[i]
	}
	if !some {
		return nil, nil, nil
	}
	t = newTrace(w.x, wrong)
	t.lenient, t.strict, t.solved = w.standing(), w.strict, w.solvedWith
	w.trace = t
	n, one := w.oneSize()
	t.nothing = one && n > 2 // what fits shows no work
	t.working, t.far = w.working(), w.far()
	t.fault, t.fits = w.blame, w.fits
	for i, item := range w.Items {
		switch {
		case !wrong[i]:
		case w.forced[i]:
			t.faults = append(t.faults, i)
			t.known[i], t.from[i] = true, []int{i}
		case item.Force != statics.None:
			forces = append(forces, i)
		default:
			inner = append(inner, i)
		}
	}
	return t, forces, inner
}

// isWrong reports whether a value is given and not settled as right.
func (w *work) isWrong(i int) bool {
	return w.given[i] != nil && w.verdict[i] != Right && w.verdict[i] != Rounded
}

// oneSize reports whether all values of a paper but zeros are of one size, and how many those are.
func (w *work) oneSize() (n int, one bool) {
	var size exact.Num
	for i, g := range w.given {
		if g == nil || w.x.of[i].IsZero() {
			continue
		}
		v := w.x.of[i].Abs()
		if n > 0 && !size.Equal(v) {
			return n, false
		}
		size = v
		n++
	}
	return n, true
}

// far tells which values are further from the true ones than rounding every step to three figures leads: those beyond reach, and
// forces that come of a mistake in the plan's own sum and are a third as far off, or where several are to be asked about two thirds.
func (w *work) far() []bool {
	all := make([]bool, len(w.Items))
	for i, item := range w.Items {
		if item.Place || w.given[i] == nil {
			continue
		}
		off := w.x.of[i].Sub(item.Value).Abs().Mul(exact.Int(3))
		all[i] = off.Cmp(w.reach[i].Mul(exact.Int(3))) > 0
		if !all[i] && item.Force != statics.None && w.strict == nil && w.isWrong(i) && off.Cmp(w.reach[i]) > 0 {
			j := w.known.judge(caseKey{i, nil}, w.plainCase, w.typedOf(i))
			all[i] = j.verdict == Slip || len(j.slips) > 0 && j.verdict != Close && off.Cmp(w.reach[i].Mul(exact.Int(2))) > 0
		}
	}
	return all
}

// working reports whether a paper shows more work than wrong zeros: as many values but zeros that are right, or four times as many
// of any.
func (w *work) working() bool {
	right, others, zeros := 0, 0, 0
	for i, g := range w.given {
		switch {
		case g == nil:
		case w.x.of[i].IsZero() && w.isWrong(i):
			zeros++
		case !w.x.of[i].IsZero():
			others++
			if !w.isWrong(i) {
				right++
			}
		}
	}
	return right > 0 && right >= zeros || others >= 4*zeros
}

// hollow reports whether a paper says one size throughout and is mostly wrong.
func (w *work) hollow() bool {
	given, right := 0, 0
	for i, g := range w.given {
		if g != nil {
			given++
			if w.verdict[i] == Right || w.verdict[i] == Rounded {
				right++
			}
		}
	}
	n, one := w.oneSize()
	return given > 3 && (one && 2*right <= given || n == 0 && right < given)
}

// unsettle holds what follows from right values alone against the judge, and reports whether there is a new fault.
func (w *work) unsettle() bool {
	again := false
	for i := range w.Items {
		if !w.isWrong(i) || len(w.trace.from[i]) > 0 || w.forced[i] {
			continue
		}
		if !w.isRounded(i) && (w.strict == nil || w.Items[i].Force == statics.None) {
			w.forced[i], again = true, true
		}
	}
	return again
}

// isRounded reports whether a value that fits sums with right values is right to the judge. Of a value that fits as far as
// rounding explains there is nothing to ask.
func (w *work) isRounded(i int) bool {
	if w.empty[i] {
		return false
	}
	rows := w.innerRow
	if w.Items[i].Force != statics.None {
		rows = w.forceRow
	}
	for k := range rows {
		if r := &rows[k]; r.has(i) && r.holds(w.x) && len(w.trace.rests(r)) == 0 && w.trace.bearsOut(r) {
			return true
		}
	}
	return w.caseOf(i).Verdict(w.typedOf(i)).Right()
}

// fits reports whether a student's values satisfy a row. A sum of the plan may be off by 1 % of its largest term, as in a
// lesson, unless a mistake lies nearer; any other only as far as rounding explains.
func (w *work) fits(r *row) bool {
	switch {
	case r.holds(w.x):
		return true
	case r.gives < 0 || !w.x.answered[r.gives] || !r.near(w.x):
		return false
	}
	return w.caseOf(r.gives).Verdict(w.typedOf(r.gives)).Right()
}

// own are the forces as the student has them.
func (w *work) own() []exact.Num {
	all := slices.Clone(w.Values)
	for i, item := range w.Items {
		if item.Force != statics.None {
			all[item.Force] = w.x.of[i]
		}
	}
	return all
}

// judgeNow is the judge with the student's values.
func (w *work) judgeNow() judging.Judge {
	j := w.judge
	j.Own = w.own()
	for i, item := range w.Items {
		if item.Member != statics.None && !item.Place && w.x.answered[i] {
			j.Found = append(j.Found, judging.Found{Member: item.Member, Station: item.Station, Quantity: item.Quantity, Value: w.x.of[i]})
		}
	}
	return j
}

// caseOf is what an item is held against: the step of the plan that gives it, or the place along its member.
func (w *work) caseOf(i int) *judging.Case {
	item := w.Items[i]
	j := w.judgeNow()
	switch {
	case item.Place:
		return j.Place(item.Member, item.Station, item.Stretch)
	case item.Force == statics.None:
		return j.Section(item.Member, item.Station, item.Quantity)
	}
	return w.stepCase(j, item.Force)
}
