package tutor

// A Form is what kind of work is offered.
type Form int

// The forms.
const (
	WholeProblem Form = iota
	OneStep           // one step of a problem, all before it worked
	OneMember         // N, V and M of one member
	FindMistake       // a mistake in a worked solution, to be found, named and mended
	SketchFirst       // what the answers will look like, before any sum
)

// String is what a form is called.
func (f Form) String() string {
	return [...]string{"a whole problem", "a single step", "N, V and M of one member", "find the mistake", "sketch first"}[f]
}

// code is the form's name in records, in the place of a level; it never changes.
func (f Form) code() string {
	return [...]string{"", "step", "member", "find", "sketch"}[f]
}
