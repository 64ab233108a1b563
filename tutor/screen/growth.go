package screen

import (
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/figure"
	"unpin/tutor"
)

// A growing is N, V and M as they grow while the student fills them in. A value stands where it was given; a stretch is drawn as a curve once
// all that is asked about it is settled: its values, and where they are asked the place of no shear, the degree and the
// slope. So no figure tells what has still to be found.
type growing struct{ l *tutor.Lesson }

// scene is N, V or M as far as it is found, with a mark where it is asked for.
func (c growing) scene(n statics.Quantity, o figure.Options) figure.Scene {
	found := map[int]figure.Growth{}
	for _, d := range c.l.View().Diagrams() {
		if g, begun := c.growth(d, n); begun {
			found[d.Member] = g
		}
	}
	scene := c.l.View().DiagramScene(n, found, o)
	if note, ok := c.askedAlong(n); ok {
		scene.Notes = append(scene.Notes, note)
	}
	return scene
}

// askedAlong marks where along a member N, V or M is asked for, or of which stretch.
func (c growing) askedAlong(n statics.Quantity) (figure.Note, bool) {
	q, asking := c.l.Now()
	if !asking || q.Member == statics.None || q.Kind == tutor.Reading || quantityOf(q) != n {
		return figure.Note{}, false
	}
	at, text := q.Station.At, n.Letter()+" ?"
	if q.Shape() {
		at = q.Stretch.From.Add(q.Stretch.Until).Mul(half)
		text = map[tutor.Kind]string{tutor.ZeroPlace: "V = 0 at ?", tutor.ShapeDegree: "degree ?", tutor.ShapeSlope: "slope ?"}[q.Kind]
	}
	return figure.Note{
		At: place(c.l.View().Assembly().Frame.Along(q.Member, at)), Text: text, Look: figure.Look{Role: figure.KeyMark, Emphasis: figure.Lit},
	}, true
}

var half = exact.MustParse("0.5")

// quantityOf is the internal force that a question along a member is about; of a member that is only read, M.
func quantityOf(q tutor.Question) statics.Quantity {
	switch q.Kind {
	case tutor.ZeroPlace:
		return statics.ShearForce
	case tutor.Reading:
		return statics.BendingMoment
	}
	return q.Quantity
}

// title names an internal force and says how far it is found.
func (c growing) title(n statics.Quantity) string {
	text := [...]string{"Axial force N", "Shear force V", "Bending moment M"}[n]
	if _, asking := c.l.Now(); asking {
		text += " so far"
	}
	return text
}

// growth is how much of N, V or M is found along one member, and whether anything is.
func (c growing) growth(d statics.Diagram, n statics.Quantity) (g figure.Growth, begun bool) {
	if c.tells(d.Member) {
		for range d.Stretches {
			g.Stretches = append(g.Stretches, true)
		}
		return g, true
	}
	if c.l.Exam() {
		return g, false
	}
	stations := d.Stations()
	known := c.knownStations(d, stations, n)
	for i, st := range stations {
		if known[i] && !passing(st, n) {
			g.Places = append(g.Places, st)
			begun = true
		}
	}
	for _, p := range d.Stretches {
		g.Stretches = append(g.Stretches, c.knownStretch(d, p, stations, known, n))
	}
	return g, begun
}

// tells reports whether all of a member is shown: it is read, or everything is done.
func (c growing) tells(member int) bool {
	at, of := c.l.Position()
	if at == of {
		return true
	}
	for n, q := range c.l.Asked()[:at+1] {
		if q.Kind == tutor.Reading && q.Step == statics.None && q.Member == member && n <= at {
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
func (c growing) settled(member int, such func(tutor.Question) bool) (asked, all bool) {
	all = true
	for n, q := range c.l.Asked() {
		if q.Member == member && such(q) {
			_, done, _, _ := c.l.Standing(n)
			asked, all = true, all && done
		}
	}
	return asked, all
}

// knownStations tells of each station whether N, V or M is found there: it was given, or it is not asked for since it is
// still what it was before, and all that is asked up to there is settled.
func (c growing) knownStations(d statics.Diagram, stations []statics.Station, n statics.Quantity) []bool {
	known := make([]bool, len(stations))
	last := false
	for i, st := range stations {
		if passing(st, n) {
			continue
		}
		asked, done := c.settled(d.Member, func(q tutor.Question) bool {
			return q.Kind == tutor.SectionPart && q.Quantity == n && q.Station.At.Equal(st.At) && q.Station.Side == st.Side
		})
		if !asked {
			_, done = c.settled(d.Member, func(q tutor.Question) bool {
				return q.Kind == tutor.SectionPart && q.Station.At.Cmp(st.At) <= 0
			})
			done = done && last
		}
		known[i], last = done, done
	}
	return known
}

// knownStretch reports whether all that is asked about a stretch is settled.
func (c growing) knownStretch(d statics.Diagram, p statics.Stretch, stations []statics.Station, known []bool, n statics.Quantity) bool {
	for i, st := range stations {
		from, until := st.At.Cmp(p.From), st.At.Cmp(p.Until)
		within := from > 0 && until < 0 || from == 0 && st.Side != statics.Before || until == 0 && st.Side != statics.After
		if within && !passing(st, n) && !known[i] {
			return false
		}
	}
	_, done := c.settled(d.Member, func(q tutor.Question) bool {
		return q.Shape() && quantityOf(q) == n && q.Stretch.From.Equal(p.From)
	})
	return done
}
