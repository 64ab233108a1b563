package slip

import (
	"maps"
	"slices"
	"testing"

	"unpin/statics"
	"unpin/statics/exact"
)

// eachQuestion asks for every force that the plans of the small frames give, with what is known by then.
func eachQuestion(t *testing.T, test func(name string, q Question)) {
	t.Helper()
	frames := readFrames(t)
	for _, name := range slices.Sorted(maps.Keys(frames)) {
		f, known := frames[name], map[int]bool{}
		for _, step := range f.Plan {
			before := maps.Clone(known)
			for _, force := range step.Gives {
				test(name+", "+f.Forces[force].Name, Question{Assembly: f.Assembly, Sums: step.Sums, Gives: step.Gives, Force: force,
					Values: f.Values, Known: func(i int) bool { return before[i] }})
				known[force] = true
			}
		}
	}
}

// beamQuestion asks for RB of the beam by moments about A: 10·RB − 20·3 − 12·6.5 + 8 = 0.
func beamQuestion(t *testing.T) Question {
	t.Helper()
	f := readFrames(t)["beam"]
	rb := f.force(t, "RB")
	return Question{Assembly: f.Assembly, Sums: []statics.Sum{f.MomentSum(f.Whole(), f.Frame.Joints[0].At)}, Gives: []int{rb}, Force: rb,
		Values: f.Values, Known: func(i int) bool { return i != rb }}
}

// changes lists what each slip can do in a question, with its slip.
func (q Question) changes(visit func(s *setting, row *Slip, c change)) {
	for n := range q.Sums {
		s := &setting{site: site{q.Assembly, q.Sums[n]}, question: q, n: n, right: q.Value()}
		for _, row := range inOrder() {
			for _, c := range row.find(s) {
				visit(s, row, c)
			}
		}
	}
}

// A value that a slip leads to satisfies the sum that it makes of the true one, and the other sums as they are.
func TestCandidatesSatisfyTheChangedSums(t *testing.T) {
	t.Parallel()
	n := 0
	eachQuestion(t, func(name string, q Question) {
		y, _ := q.system()
		q.changes(func(s *setting, row *Slip, c change) {
			v, ok := y.changed(s, c)
			if !ok || len(c.terms)+len(c.stray) == 0 || len(q.Sums) > 1 {
				return
			}
			n++
			values := slices.Clone(q.Values)
			values[q.Force] = v
			if rest := c.written(row, s.sum).Sum.Residual(values); !rest.IsZero() {
				t.Errorf("%s, %s: %s leaves %s", name, row.ID, v, rest)
			}
		})
	})
	if n < 200 {
		t.Errorf("only %d values", n)
	}
}

// Candidates are what all slips lead to, in rising order, but for general slips that make the change of another: held
// against a plain search through all.
func TestCandidatesAreWhatTheSlipsLeadTo(t *testing.T) {
	t.Parallel()
	eachQuestion(t, func(name string, q Question) {
		y, _ := q.system()
		var plain []Candidate
		q.changes(func(s *setting, row *Slip, c change) {
			v, ok := y.changed(s, c)
			same := slices.ContainsFunc(plain, func(d Candidate) bool {
				return d.Giver == c.giver && d.Slip.About == row.About && d.Value.Equal(v) && row.General && !d.Slip.Aside
			})
			if ok && !(same && len(q.Sums) == 1) {
				plain = append(plain, Candidate{Slip: row, Value: v, Giver: c.giver})
			}
		})
		all := q.Candidates()
		if len(q.Sums) == 1 && len(all) != len(plain) {
			t.Errorf("%s: %d candidates, by a plain search %d", name, len(all), len(plain))
		}
		for i, c := range all {
			if i > 0 && all[i-1].Value.Cmp(c.Value) > 0 {
				t.Errorf("%s: %s stands before %s", name, all[i-1].Value, c.Value)
			}
			if !slices.ContainsFunc(plain, func(d Candidate) bool {
				return d.Slip == c.Slip && d.Giver == c.Giver && d.Value.Equal(c.Value)
			}) {
				t.Errorf("%s: %s does not lead to %s", name, c.Slip.ID, c.Value)
			}
			if f := c.Giver.Force; f != statics.None && f != q.Force && !q.Known(f) {
				t.Errorf("%s: %s is about %s, which was not known", name, c.Slip.ID, q.Assembly.Forces[f].Name)
			}
		}
	})
}

// Where sums do not give what is asked for, there is neither a value nor a slip.
func TestQuestionWithoutAnswer(t *testing.T) {
	t.Parallel()
	other, more, through := beamQuestion(t), beamQuestion(t), beamQuestion(t)
	other.Force = 0
	more.Gives = append(more.Gives, 0)
	through.Sums = []statics.Sum{through.Assembly.MomentSum(through.Assembly.Whole(), through.Assembly.Frame.Joints[1].At)}
	for what, q := range map[string]Question{
		"a force that is not among those given": other, "two unknowns of one sum": more, "a centre on the line of the unknown": through,
	} {
		if v, all := q.Value(), q.Candidates(); !v.IsZero() || len(all) > 0 {
			t.Errorf("%s: %s, %d candidates", what, v, len(all))
		}
	}
}

// Where the sum stands, only what is left to do can go amiss; what cannot is set apart.
func TestStandingSumLeavesTheSolving(t *testing.T) {
	t.Parallel()
	q := beamQuestion(t)
	q.Stands = true
	seen := map[string]bool{}
	for _, c := range q.Candidates() {
		if seen[c.Slip.ID] = true; c.Slip.Needs == Choosing || c.Slip.Needs == Measuring {
			t.Errorf("%s where the sum stands", c.Slip.ID)
		}
	}
	excluded := q.Excluded()
	if len(excluded) == 0 || slices.ContainsFunc(excluded, func(c Candidate) bool { return seen[c.Slip.ID] }) {
		t.Errorf("%d candidates excluded, of which some are among the others", len(excluded))
	}
	if !seen["moved-with-its-sign"] || !seen["not-divided"] {
		t.Errorf("only %v", slices.Sorted(maps.Keys(seen)))
	}
}

// With the student's own values the slips go on from these.
func TestCandidatesGoOnFromOwnValues(t *testing.T) {
	t.Parallel()
	f := readFrames(t)["beam"]
	ay := f.force(t, "Ay")
	q := beamQuestion(t)
	q.Sums, q.Gives, q.Force = []statics.Sum{f.ForceSum(f.Whole(), statics.Vector{Y: one})}, []int{ay}, ay
	q.Known = func(i int) bool { return i != ay }
	q.Values = slices.Clone(q.Values)
	q.Values[f.force(t, "RB")] = exact.MustParse("12") // for 13
	if v := q.Value(); !v.Equal(exact.Int(20)) {
		t.Errorf("Ay is %s, by hand 20 + 12 − 12", v)
	}
	found := slices.ContainsFunc(q.Candidates(), func(c Candidate) bool {
		return c.Slip.ID == "load-left-off" && c.Value.IsZero() // 12 − 12, without the 20
	})
	if !found {
		t.Error("load-left-off does not go on from 12")
	}
}

// What a slip makes of a sum is another sum, with what it changed among its terms.
func TestOfSum(t *testing.T) {
	t.Parallel()
	eachQuestion(t, func(name string, q Question) {
		for _, s := range q.Sums {
			for _, w := range OfSum(q.Assembly, s, nil, false) {
				if w.Slip.About == Answer {
					t.Errorf("%s: %s changes no term", name, w.Slip.ID)
				}
				for _, x := range w.Terms {
					if !slices.ContainsFunc(w.Sum.Terms(), func(y statics.Term) bool {
						return x.Force == y.Force && x.Action == y.Action && x.Value().Equal(y.Value())
					}) {
						t.Errorf("%s: %s changed a term that is not in its sum", name, w.Slip.ID)
					}
				}
				if len(w.Terms) == 0 && len(w.Sum.Terms()) >= len(s.Terms()) {
					t.Errorf("%s: %s leaves the sum as it was", name, w.Slip.ID)
				}
			}
		}
	})
	// The 8 of the beam left out: 10·RB − 60 − 78.
	q := beamQuestion(t)
	found := slices.ContainsFunc(OfSum(q.Assembly, q.Sums[0], map[int]exact.Num{q.Force: exact.Int(13)}, false), func(w Written) bool {
		return w.Slip.ID == "couple-left-out" && len(w.Terms) == 0 && w.Sum.Residual(q.Values).Equal(exact.Int(-8))
	})
	if !found {
		t.Error("couple-left-out makes no sum without the couple")
	}
}

// What slips make of one term: of the 12 of the beam, by hand.
func TestOfTerm(t *testing.T) {
	t.Parallel()
	q := beamQuestion(t)
	got := map[string][]string{}
	for i, x := range q.Sums[0].Terms() {
		if x.Action != 1 {
			continue
		}
		for _, a := range q.OfTerm(0, i) {
			got[a.Slip.ID] = append(got[a.Slip.ID], a.Term.Value().String())
			if a.Slip.About == Presence || a.Slip.About == Answer {
				t.Errorf("%s does not change a term that is there", a.Slip.ID)
			}
		}
	}
	for id, want := range map[string][]string{
		"turn-of-term":               {"78"},         // 12·6.5, turned
		"intensity-as-force":         {"-26"},        // 4·6.5
		"arm-to-far-end":             {"-96"},        // 12·8
		"arm-to-near-end":            {"-60"},        // 12·5
		"uniform-at-third":           {"-72", "-84"}, // 12·6, 12·7
		"distance-to-load-forgotten": {"-18"},        // 12·1.5
		"arm-from-elsewhere":         {"-42"},        // 12·3.5, from B
		"arm-to-elsewhere":           {"-120"},       // 12·10, to B
		"halved-twice":               {"-39"},        // 6·6.5
		"load-left-off":              nil,            // the term is not there
		"centre-changed":             nil,            // several terms at once
	} {
		if !slices.Equal(got[id], want) {
			t.Errorf("%s makes %v of it, by hand %v", id, got[id], want)
		}
	}
}
