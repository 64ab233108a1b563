package record

import (
	"bytes"
	"encoding/json"
	"time"
)

// version is that of the lines that are written.
const version = 2

// A Record is one event of a lesson, as a line of the file holds it; the package comment explains the fields.
type Record struct {
	Version  int       `json:"v"`
	At       time.Time `json:"at"`
	Run      string    `json:"run"`
	From     string    `json:"from,omitempty"`
	Problem  string    `json:"problem"`
	Frame    string    `json:"frame"`
	Level    string    `json:"level"`
	Exam     bool      `json:"exam,omitempty"`
	Paper    string    `json:"paper,omitempty"`
	Number   int       `json:"number"`
	Question string    `json:"question"`
	Key      string    `json:"key,omitempty"` // empty in version 1
	Typed    string    `json:"typed"`
	Outcome  Outcome   `json:"outcome"`
	Slips    []string  `json:"slips,omitempty"`
	Kind     Kind      `json:"kind,omitempty"`
	Skills   []string  `json:"skills,omitempty"`
	Missed   []string  `json:"missed,omitempty"`
	Right    []string  `json:"right,omitempty"`
	Along    []Place   `json:"along,omitempty"`
}

// A Place is a cut along a member with the values asked there, or a stretch with its shape: a step of one skill. Missed is what mistakes at
// it show to be wanting; none where they do not tell.
type Place struct {
	Skill   string   `json:"skill"`
	Outcome Outcome  `json:"outcome"`
	Missed  []string `json:"missed,omitempty"`
}

// An Outcome is what became of what was typed. Codes never change; what people read may.
type Outcome string

// The outcomes of answers, of commands, and of steps that are settled whole.
const (
	Exact      Outcome = "exact"   // the true value
	Figures    Outcome = "figures" // the true value to the figures typed
	Rounded    Outcome = "rounded" // within what rounding on the way explains
	Sense      Outcome = "sense"   // the right size in the opposite sense
	Close      Outcome = "close"   // further off than rounding explains
	Wrong      Outcome = "wrong"
	Noted      Outcome = "noted" // in an exam, without a verdict
	Hinted     Outcome = "hint"
	Example    Outcome = "example"
	Told       Outcome = "told"
	Back       Outcome = "back"
	Let        Outcome = "let"     // a sense was assumed
	Resumed    Outcome = "resume"  // earlier work was taken up: that of the run From
	Restarted  Outcome = "restart" // earlier work is set aside for good
	Listed     Outcome = "listed"  // the sheet or help was read
	Left       Outcome = "quit"
	Begun      Outcome = "begun"       // a paper of a set: its clock runs from here
	Handed     Outcome = "handed"      // that paper was handed in: nothing after it counts
	StepRight  Outcome = "step-right"  // all of a step at the first try and without help
	StepHelped Outcome = "step-helped" // with wrong tries or help
	StepTold   Outcome = "step-told"   // some of it was told

	ReasonRight Outcome = "reason-right" // why a sum gives what it gives, which counts for nothing
	ReasonWrong Outcome = "reason-wrong"
	ReasonTold  Outcome = "reason-told"
)

// Right reports whether an answer stands.
func (o Outcome) Right() bool { return o == Exact || o == Figures || o == Rounded }

// Settles reports whether the question is settled: answered right or told.
func (o Outcome) Settles() bool { return o.Right() || o == Told }

// Notes reports whether a question of an exam is answered, or left open.
func (o Outcome) Notes() bool { return o == Noted || o == Told }

// Try reports whether it is the outcome of an answer that was judged.
func (o Outcome) Try() bool { return o.Right() || o == Sense || o == Close || o == Wrong || o == Noted }

// A Kind is a kind of step, for which skill is counted. Codes never change.
type Kind string

// The kinds.
const (
	Forces   Kind = "forces"   // a sum of forces
	Moments  Kind = "moments"  // a sum of moments
	Together Kind = "together" // sums solved together
	Diagrams Kind = "diagrams" // N, V and M along a member
)

// The words of version 1, and what they are now.
var (
	oldOutcomes = map[string]Outcome{
		"right": Exact, "right (rounded)": Rounded, "not yet": Wrong, "noted": Noted, "hint": Hinted, "example": Example, "tell": Told,
		"back": Back, "let": Let, "resume": Resumed, "sheet": Listed, "time": Listed, "help": Listed, "quit": Left,
		"step right": StepRight, "step helped": StepHelped, "step told": StepTold,
	}
	oldKinds  = map[string]Kind{"sum of forces": Forces, "sum of moments": Moments, "sums together": Together, "diagrams": Diagrams}
	oldLevels = map[string]string{"order": "plan", "fading": "gradual"}
)

// A fault is why a line is passed over.
type fault int

const (
	sound fault = iota
	blank       // nothing stands in it
	torn
	long
	newer
)

// parse reads a line. Zeros that a crash of the machine left before it do not spoil it.
func (l Line) parse() (Record, fault) {
	if l.Long {
		return Record{}, long
	}
	text := bytes.TrimSpace(bytes.TrimLeft(l.Text, "\x00"))
	if len(text) == 0 {
		return Record{}, blank
	}
	var r struct {
		Record
		Rung string `json:"rung"`
	}
	if err := json.Unmarshal(text, &r); err != nil || r.Version > version {
		return Record{}, faultOf(text)
	}
	if r.Run == "" {
		return Record{}, torn
	}
	if r.Version < version {
		r.renew(r.Rung)
	}
	return r.Record, sound
}

// faultOf is why a text that is no record of this version is passed over.
func faultOf(text []byte) fault {
	var head struct {
		Version int `json:"v"`
	}
	if json.Unmarshal(text, &head) == nil && head.Version > version {
		return newer
	}
	return torn
}

// renew turns a record of version 1 into one of version 2; its fingerprint stays what it was.
func (r *Record) renew(rung string) {
	r.Version, r.Level = version, rung
	if level, renamed := oldLevels[rung]; renamed {
		r.Level = level
	}
	r.Outcome = oldOutcomes[string(r.Outcome)]
	switch r.Outcome {
	case StepRight, StepHelped, StepTold:
		r.Kind, r.Question = oldKinds[r.Question], ""
	}
}
