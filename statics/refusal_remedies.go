package statics

import "slices"

// Bounds on the search for changes, so that a large frame is not counted over and over.
const (
	mostRemedies  = 4   // ways listed
	mostOfAKind   = 2   // of them by the same kind of change
	mostChanges   = 6   // in one way
	mostRecounts  = 60  // changes tried, of a frame of a person's size
	personsSize   = 100 // members
	leastRecounts = 12  // changes tried, of any frame
)

// Remedies lists ways to make a frame determinate that is not, each a set of changes that do it together: single changes
// where one will do, else by several: first at several joints, then where that differs with most in one place. Each was made and the frame counted anew (S16). The list is empty where the
// frame lacks or has too much for mostChanges, or where none of the changes tried will do.
func (s *Solution) Remedies() [][]Change {
	d, m := s.Count.Degree(), s.Count.Motions()
	if d+m == 0 || d+m > mostChanges {
		return nil
	}
	r := remedies{left: max(leastRecounts, min(mostRecounts, mostRecounts*personsSize/len(s.Frame.Members)))}
	start := state{s.Assembly, d, m}
	var ways [][]Change
	switch {
	case d == 1 && m == 1:
		ways = r.singles(start, start.turns(), 0, 0)
	case m == 0 && d == 1:
		ways = r.singles(start, start.loosenings(), 0, 0)
	case d == 0 && m == 1:
		ways = r.singles(start, start.tightenings(false), 0, 0)
	}
	if len(ways) == 0 || d+m > 1 && len(ways) < mostRemedies {
		for _, r.onePlace = range []bool{false, true} {
			way := r.chain(start)
			if way != nil && !slices.ContainsFunc(ways, func(w []Change) bool { return slices.EqualFunc(w, way, sameChange) }) {
				ways = append(ways, way)
			}
			if m < 3 { // the two do not differ
				break
			}
		}
	}
	return ways
}

// sameChange reports whether two changes are of one kind at one place.
func sameChange(a, b Change) bool {
	return a.Kind == b.Kind && a.Joint == b.Joint && a.Member == b.Member
}

// A state is a frame on the way to a determinate one.
type state struct {
	*Assembly
	degree, motions int
}

// remedies is a search for changes.
type remedies struct {
	left     int  // how many frames may still be counted
	onePlace bool // whether one support may do for all that is missing
}

// try makes a change; false if the frame then cannot be cut or if there is no time left.
func (r *remedies) try(s state, c Change) (state, bool) {
	if r.left == 0 {
		return s, false
	}
	r.left--
	a, err := Cut(s.Frame.With(c))
	if err != nil {
		return s, false
	}
	count, _ := a.count()
	return state{a, count.Degree(), count.Motions()}, true
}

// singles lists the changes that by themselves lead to a frame of that degree and so many motions.
func (r *remedies) singles(s state, changes []Change, degree, motions int) [][]Change {
	var ways [][]Change
	of := map[ChangeKind]int{}
	for _, c := range changes {
		if of[c.Kind] == mostOfAKind {
			continue
		}
		if to, ok := r.try(s, c); ok && to.degree == degree && to.motions == motions {
			ways = append(ways, []Change{c})
			of[c.Kind]++
		}
		if len(ways) == mostRemedies {
			break
		}
	}
	return ways
}

// chain takes away one hold after the other until no force is too many, and then adds holds until nothing moves, each at
// another joint; nil if that fails.
func (r *remedies) chain(s state) []Change {
	var way []Change
	for s.degree+s.motions > 0 {
		next, c, ok := r.link(s, way)
		if !ok {
			return nil
		}
		s, way = next, append(way, c)
	}
	return way
}

// link finds the next change of a way.
func (r *remedies) link(s state, way []Change) (state, Change, bool) {
	changes := s.tightenings(r.onePlace)
	if s.degree > 0 {
		changes = s.loosenings()
	}
	for _, c := range changes {
		if slices.ContainsFunc(way, func(w Change) bool { return w.Joint == c.Joint }) {
			continue
		}
		degree, motions := s.degree, s.motions-s.Frame.holds(c)
		if s.degree > 0 {
			degree, motions = s.degree-1, s.motions
		}
		if next, ok := r.try(s, c); ok && next.degree == degree && next.motions == motions {
			return next, c, true
		}
	}
	return s, Change{}, false
}
