package judging

// A Verdict is what a typed value comes to.
type Verdict int

// The verdicts, in the order of the rules.
const (
	Exact      Verdict = iota // equal to the true value
	ToFigures                 // the true value rounded where it was typed, at the third significant figure or beyond
	Rounded                   // what a sum gives to within rounding on the way
	OtherSense                // the right size in the opposite sense
	Close                     // near, but further off than rounding explains
	Wrong                     // none of these
)

// codes are the verdicts' names for storage: they never change.
var codes = [...]string{Exact: "exact", ToFigures: "figures", Rounded: "rounded", OtherSense: "sense", Close: "close", Wrong: "wrong"}

// Code is the verdict's name for storage: exact, figures, rounded, sense, close or wrong. What people read may change, this
// does not.
func (v Verdict) Code() string { return codes[v] }

// VerdictOf is the verdict with a code; false if there is none.
func VerdictOf(code string) (Verdict, bool) {
	for v, c := range codes {
		if c == code {
			return Verdict(v), true
		}
	}
	return Wrong, false
}

// Right reports whether the value stands.
func (v Verdict) Right() bool { return v <= Rounded }

// Exactly reports whether the value is right without allowance for figures lost on the way.
func (v Verdict) Exactly() bool { return v <= ToFigures }

// String is how a verdict line begins.
func (v Verdict) String() string {
	switch v {
	case Exact, ToFigures:
		return "right"
	case Rounded:
		return "right (rounded)"
	}
	return "not yet"
}
