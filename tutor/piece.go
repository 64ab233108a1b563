package tutor

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// What is said of the wrong force or arm of a term that is the right one of something beside it: of the whole of which the
// term is a part, or of its other part. It is then not measured wrong, but of another thing than was asked for.

// beside is what is said of it; empty where the value is that of nothing beside the term.
func (fb *feedback) beside(q Question, typed judging.Typed) string {
	s := fb.about.solution.Plan[q.Step].Sums[q.Sum]
	t := s.Terms()[q.Term]
	switch {
	case q.Kind == TermArm && (t.What == statics.Horizontal || t.What == statics.Vertical):
		if typed.Means(wholeArm(fb.about.solution, s, t)) {
			return "that is the arm of the whole force: how far is the centre from the line of " + fb.about.words().Component(t) + " alone?"
		}
	case q.Kind == TermArm && !t.Toward.X.IsZero() && !t.Toward.Y.IsZero():
		return inclinedArm(s, t, typed)
	case q.Kind == TermSize && t.Action != statics.None:
		return fb.partOf(s, q.Term, typed)
	}
	return ""
}

// inclinedArm is what is said of a horizontal or vertical distance as the arm of a force that is inclined.
func inclinedArm(s statics.Sum, t statics.Term, typed judging.Typed) string {
	word := ""
	switch from := s.About.To(t.At); {
	case typed.Means(from.X.Abs()):
		word = "horizontal"
	case typed.Means(from.Y.Abs()):
		word = "vertical"
	default:
		return ""
	}
	return "that is only the " + word + " distance to where the force acts: its line is inclined, so how far is the centre from that line, at a right angle to it?"
}

// partOf is what is said of the size of a whole load where one of its two parts is asked for, or of that of the other part.
func (fb *feedback) partOf(s statics.Sum, term int, typed judging.Typed) string {
	say, t := fb.about.words(), s.Terms()[term]
	load := fb.about.solution.Actions[t.Action].Load
	whole, other := t.Size, ""
	for i, o := range s.Terms() {
		if i == term || o.Action == statics.None || o.Action == t.Action || o.What != t.What || fb.about.solution.Actions[o.Action].Load != load {
			continue
		}
		whole = whole.Add(o.Size)
		if typed.Means(o.Size) {
			other = say.Component(o)
		}
	}
	switch {
	case other != "":
		return "that is the resultant of " + other + ": " + say.Component(t) + " is asked for here."
	case !whole.Equal(t.Size) && typed.Means(whole):
		return "that is the resultant of the whole load, which goes in by its parts: " + say.Component(t) + " alone is asked for here."
	}
	return ""
}

// wholeArm is the arm of the whole force of which a term is a component.
func wholeArm(of *statics.Solution, s statics.Sum, t statics.Term) exact.Num {
	var along statics.Vector
	if t.Force != statics.None {
		along = of.Forces[t.Force].Along
	} else {
		along = of.Actions[t.Action].Along
	}
	arm, _ := s.About.To(t.At).Cross(along).Abs().Quo(along.Length()) // a force has a direction
	return arm
}
