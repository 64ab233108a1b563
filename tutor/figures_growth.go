package tutor

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
)

// N, V and M grow while the student fills them in. A value stands where it was given; a stretch is drawn as a curve once
// all that is asked about it is settled: its values, and where they are asked the place of no shear, the degree and the
// slope. So no figure tells what has still to be found.

// diagram is N, V or M as far as it is found, with a mark where it is asked for.
func (d Figures) diagram(n statics.Quantity, o figure.Options) figure.Scene {
	found := map[int]figure.Growth{}
	for _, along := range d.about.solution.Diagrams {
		if g, begun := d.growth(along, n); begun {
			found[along.Member] = g
		}
	}
	scene := figure.OfDiagramSoFar(d.about.solution, figure.InternalForce(n), found, o)
	if note, ok := d.askedAlong(n); ok {
		scene.Notes = append(scene.Notes, note)
	}
	return scene
}

// askedAlong marks where along a member N, V or M is asked for, or of which stretch.
func (d Figures) askedAlong(n statics.Quantity) (figure.Note, bool) {
	q, asking := d.lesson.Now()
	if !asking || q.Member == statics.None || q.Kind == Reading || quantityOf(q) != n {
		return figure.Note{}, false
	}
	at, text := q.Station.At, n.Letter()+" ?"
	if q.Shape() {
		at = q.Stretch.From.Add(q.Stretch.Until).Mul(half)
		text = map[Kind]string{ZeroPlace: "V = 0 at ?", ShapeDegree: "degree ?", ShapeSlope: "slope ?"}[q.Kind]
	}
	return figure.Note{
		At: figure.PlaceOf(d.assembly().Frame.Along(q.Member, at)), Text: text, Look: figure.Look{Role: figure.KeyMark, Emphasis: figure.Lit},
	}, true
}

var half = exact.MustParse("0.5")

// quantityOf is the internal force that a question along a member is about; of a member that is only read, M.
func quantityOf(q Question) statics.Quantity {
	switch q.Kind {
	case ZeroPlace:
		return statics.ShearForce
	case Reading:
		return statics.BendingMoment
	}
	return q.Quantity
}

// diagramTitle names an internal force and says how far it is found.
func (d Figures) diagramTitle(n statics.Quantity) string {
	text := [...]string{"Axial force N", "Shear force V", "Bending moment M"}[n]
	if _, asking := d.lesson.Now(); asking {
		text += " so far"
	}
	return text
}

// growth is how much of N, V or M is found along one member, and whether anything is.
func (d Figures) growth(along statics.Diagram, n statics.Quantity) (g figure.Growth, begun bool) {
	if d.tells(along.Member) {
		for range along.Stretches {
			g.Stretches = append(g.Stretches, true)
		}
		return g, true
	}
	if d.lesson.Exam() {
		return g, false
	}
	stations := along.Stations()
	known := d.knownStations(along.Member, stations, n)
	for i, st := range stations {
		if known[i] && !passing(st, n) {
			g.Places = append(g.Places, st)
			begun = true
		}
	}
	for _, p := range along.Stretches {
		g.Stretches = append(g.Stretches, d.knownStretch(along.Member, p, stations, known, n))
	}
	return g, begun
}

// tells reports whether all of a member is shown: it is read, or everything is done.
func (d Figures) tells(member int) bool {
	at, of := d.lesson.Position()
	if at == of {
		return true
	}
	for n, q := range d.lesson.Asked()[:at+1] {
		if q.Kind == Reading && q.Step == statics.None && q.Member == member && n <= at {
			return true
		}
	}
	return false
}

// passing reports whether a station is only that of a peak of M, at which N and V are not asked for.
func passing(st statics.Station, n statics.Quantity) bool {
	return st.Found && n != statics.BendingMoment
}

// settled reports whether there are such questions about a member, and whether all of them are settled.
func (d Figures) settled(member int, such func(Question) bool) (asked, all bool) {
	all = true
	for n, q := range d.lesson.Asked() {
		if q.Member == member && such(q) {
			_, done, _, _ := d.lesson.Standing(n)
			asked, all = true, all && done
		}
	}
	return asked, all
}

// knownStations tells of each station whether N, V or M is found there: it was given, or it is not asked for since it is
// still what it was before, and all that is asked up to there is settled.
func (d Figures) knownStations(member int, stations []statics.Station, n statics.Quantity) []bool {
	known := make([]bool, len(stations))
	last := false
	for i, st := range stations {
		if passing(st, n) {
			continue
		}
		asked, done := d.settled(member, func(q Question) bool {
			return q.Kind == SectionPart && q.Quantity == n && q.Station.At.Equal(st.At) && q.Station.Side == st.Side
		})
		if !asked {
			_, done = d.settled(member, func(q Question) bool {
				return q.Kind == SectionPart && q.Station.At.Cmp(st.At) <= 0
			})
			done = done && last
		}
		known[i], last = done, done
	}
	return known
}

// knownStretch reports whether all that is asked about a stretch is settled.
func (d Figures) knownStretch(member int, p statics.Stretch, stations []statics.Station, known []bool, n statics.Quantity) bool {
	for i, st := range stations {
		if holds(p, st) && !passing(st, n) && !known[i] {
			return false
		}
	}
	_, done := d.settled(member, func(q Question) bool {
		return q.Shape() && quantityOf(q) == n && q.Stretch.From.Equal(p.From)
	})
	return done
}
