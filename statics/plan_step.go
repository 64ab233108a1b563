package statics

// A Choice says why a step comes where it does.
type Choice int

// The reasons for a step's place.
const (
	StayOnBody     Choice = iota // the body in hand still has a sum with one unknown
	FewestUnknowns               // of the bodies with such a sum, this one has the fewest unknowns left
	WholeFrame                   // no part has such a sum, the whole has
	SeveralParts                 // neither has, this group of bodies has
	SolvedTogether               // no sum at all has one unknown: the smallest set that must be solved together
	KeptRelation                 // two unknowns are left; kept until one is known
	RelationUsed                 // a relation kept earlier has now one unknown
	ClosingCheck                 // an unused sum that checks the work
	SplitForce                   // a force was split so that the sum holds only one part of it
	Offered                      // more is known than the plan rests on here, so that nothing is said of why it was chosen
)

// grown is the steps of a plan with room for some more, but not for as many again.
func grown(steps []Step) []Step {
	if len(steps) == cap(steps) {
		return append(make([]Step, 0, len(steps)+8+len(steps)/4), steps...)
	}
	return steps
}

// A Step is one move of a plan: a free body and a sum of it (several where they must be solved together), and what
// comes out.
type Step struct {
	Sums     []Sum
	Gives    []int // forces
	Why      Choice
	Left     int // unknowns left on the body before this step
	Relation bool
	Check    bool
	Catches  []int // of a check, the steps in which a mistake shows in it, by their places in the plan
}
