package worksheet

import (
	"bytes"
	"encoding/json"
	"math/big"
	"slices"
	"testing"

	"unpin/problems"
	"unpin/statics"
)

// A jsonDocument is what a program reads: every field that may stand in a solution, and no other.
type jsonDocument struct {
	Title string
	Units struct{ Force, Length string }
	Count struct {
		Unknowns, Sums, Rank, Degree, Motions, Inner int
		Verdict                                      string
		Inexact                                      bool
	}
	Parts []struct {
		Name    string
		Members []string
	}
	Forces []struct {
		Name, Joint, On, Value, Exact string
		Along                         []string
		Couple, Inexact               bool
	}
	Plan []struct {
		jsonSum
		Sums            []jsonSum
		Gives           []string
		Relation, Check bool
		Catches         []int
	}
	Members []struct {
		Name, From, To, Length, Withheld string
		Pieces                           []struct {
			From, Until string
			N, V, M     []string
			Inexact     bool
		}
	}
}

type jsonSum struct {
	Parts        []string
	Sum          string
	About, Along []string
	Inexact      bool
}

// TestJSONReads reads every document strictly and checks what must hold in it without looking at the engine: the plan
// gives each force once, its bodies are known, the pieces of a member join and dM/dx = V, dV/dx being the load across.
func TestJSONReads(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		var d jsonDocument
		r := json.NewDecoder(bytes.NewReader(JSON(p, s)))
		r.DisallowUnknownFields()
		if err := r.Decode(&d); err != nil {
			t.Fatal(err)
		}
		if d.Count.Verdict != "determinate" {
			if d.Forces != nil || d.Plan != nil || d.Members != nil {
				t.Error("a frame that is not determinate has no solution")
			}
			return
		}
		d.checkPlan(t)
		d.checkMembers(t)
	})
}

func (d *jsonDocument) checkPlan(t *testing.T) {
	t.Helper()
	given, bodies := map[string]int{}, map[string]bool{}
	for _, p := range d.Parts {
		bodies[p.Name] = true
	}
	for _, f := range d.Forces {
		bodies["pin "+f.Joint] = true
		if f.Couple != (f.Along == nil) {
			t.Errorf("%s: a force has a direction, a couple none", f.Name)
		}
	}
	for n, step := range d.Plan {
		if step.Check != (len(step.Catches) > 0) || len(step.Catches) > 0 && (step.Catches[0] < 1 || step.Catches[len(step.Catches)-1] > n) {
			t.Errorf("a check catches steps before it: %+v", step)
		}
		for _, g := range step.Gives {
			given[g]++
		}
		for _, sum := range append(step.Sums, step.jsonSum) {
			for _, b := range sum.Parts {
				if !bodies[b] {
					t.Errorf("the plan names %q, which is no body", b)
				}
			}
		}
		if (step.Relation || step.Check) != (len(step.Gives) == 0) {
			t.Errorf("a step gives nothing only if it is a relation or the check: %+v", step)
		}
		if len(step.Sums) > 0 && len(step.Sums) != len(step.Gives) {
			t.Errorf("sums solved together give as many forces: %+v", step)
		}
	}
	for _, f := range d.Forces {
		if given[f.Name] != 1 {
			t.Errorf("the plan gives %s %d times", f.Name, given[f.Name])
		}
	}
}

// rat reads a decimal.
func rat(t *testing.T, s string) *big.Rat {
	t.Helper()
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		t.Fatalf("%q is no decimal", s)
	}
	return r
}

// near reports whether two numbers agree to 15 figures of the larger, or of 1.
func near(x, y *big.Rat) bool {
	size := slices.MaxFunc([]*big.Rat{big.NewRat(1, 1), new(big.Rat).Abs(x), new(big.Rat).Abs(y)}, (*big.Rat).Cmp)
	gap := new(big.Rat).Sub(x, y)
	return gap.Abs(gap).Cmp(size.Mul(size, big.NewRat(1, 1e15))) <= 0
}

func (d *jsonDocument) checkMembers(t *testing.T) {
	t.Helper()
	for _, m := range d.Members {
		if (m.Withheld == "") != (len(m.Pieces) > 0) {
			t.Errorf("%s: a member has either pieces or a reason why not", m.Name)
		}
		at := "0"
		for _, p := range m.Pieces {
			if p.From != at {
				t.Errorf("%s: a piece begins at %s, not at %s", m.Name, p.From, at)
			}
			at = p.Until
			for i, v := range p.V {
				k := "0"
				if i+1 < len(p.M) {
					k = p.M[i+1]
				}
				if slope := new(big.Rat).Mul(rat(t, k), big.NewRat(int64(i+1), 1)); !near(slope, rat(t, v)) {
					t.Errorf("%s: dM/dx is not V: %v, %v", m.Name, p.M, p.V)
				}
			}
		}
		if len(m.Pieces) > 0 && at != m.Length {
			t.Errorf("%s: the pieces end at %s, the member at %s", m.Name, at, m.Length)
		}
	}
}

// TestInspectJSONReads reads what inspect says of every problem strictly, and checks that it has a refusal just where it has
// no answers, with as many motions as are counted.
func TestInspectJSONReads(t *testing.T) {
	t.Parallel()
	every(t, func(t *testing.T, p *problems.Problem, s *statics.Solution) {
		var d inspectDocument
		r := json.NewDecoder(bytes.NewReader(InspectJSON(p, s)))
		r.DisallowUnknownFields()
		if err := r.Decode(&d); err != nil {
			t.Fatal(err)
		}
		determinate := d.Count.Verdict == "determinate"
		if determinate != (d.Refusal == nil) || determinate != (d.Answers != nil) || determinate != (d.Plan != nil) {
			t.Errorf("%s, with refusal %v, answers %v", d.Count.Verdict, d.Refusal, d.Answers)
		}
		if determinate && (d.Plan.Steps != len(d.Plan.List) || d.Grade.Told < 1 || d.Grade.Told > 6 || d.Hidden.Change != nil && len(d.Hidden.Mistakes) == 0) {
			t.Errorf("%d steps and %d listed, grade %d, hidden %v", d.Plan.Steps, len(d.Plan.List), d.Grade.Told, d.Hidden)
		}
		if d.Refusal != nil && len(d.Refusal.Motions) != d.Count.Motions {
			t.Errorf("%d motions, not %d", len(d.Refusal.Motions), d.Count.Motions)
		}
		if d.Refusal != nil && (len(d.Refusal.Undetermined) > 0) != (d.Count.Degree > 0) {
			t.Errorf("degree %d, and not given: %v", d.Count.Degree, d.Refusal.Undetermined)
		}
	})
}

// An inspectDocument is every field that may stand in what inspect says.
type inspectDocument struct {
	jsonDocument
	Warnings []string
	Answers  *struct {
		Forces, Whole, Decimals, Fractions, Roots, Inexact int
		Denominator                                        string
	}
	Plan *struct {
		Steps    int
		Together []struct{ Step, Sums int }
		List     []struct {
			Text          string
			Gives, Skills []string
		}
	}
	Grade *struct {
		Told, File int
		Reasons    []string
	}
	Untidy []struct{ Rule, Text string }
	Tidier []struct{ Number, To string }
	Few    string
	Hidden *struct {
		All      int
		Mistakes []struct {
			Step        int
			Force, Slip string
		}
		Change *struct {
			Number, To string
			Shown      int
		}
	}
	Refusal *struct {
		Undetermined []string
		Motions      []struct {
			Bodies []struct {
				Part, Turn, Joint string
				About, Slide      []string
			}
			Cause, Text string
			Critical    bool
			Forces      []string
		}
		Ways [][]struct {
			Joint, Change, Member, Text string
			Along, By                   []string
		}
	}
}

// FuzzDocuments writes every document about whatever can be read as a problem, and holds it to the layout.
func FuzzDocuments(f *testing.F) {
	for _, pattern := range []string{"../library/*.yaml", testdata + "/examples/*.yaml", own + "/*.yaml", testdata + "/read/*.yaml"} {
		for _, path := range glob(f, pattern) {
			f.Add(read(f, path))
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if len(data) > 1500 {
			t.Skip("a problem of this size takes longer than a fuzz step may")
		}
		p, err := problems.Read("fuzz.yaml", data)
		if err != nil {
			t.Skip("no problem")
		}
		s, err := statics.Solve(p.Frame)
		if err != nil {
			t.Fatalf("a problem that was read cannot be cut: %v", err)
		}
		if !json.Valid(JSON(p, s)) || !json.Valid(InspectJSON(p, s)) {
			t.Error("the document is no JSON")
		}
		checkLines(t, Text(One(p, s), Options{}), Options{})
		checkLines(t, Inspect(p, s, Options{}), Options{})
	})
}
