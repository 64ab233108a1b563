package slip

import (
	"unpin/statics"
	"unpin/statics/exact"
)

var connectionSlips = []Slip{
	{ID: "pin-support-one-way", Group: Connection, About: Presence, Needs: Choosing, Source: "SD8, LT, TB", find: pinSupportOneWay,
		Says: "A pinned support has two reaction components: are both reactions of the pinned support in the sum?"},
	{ID: "roller-not-square", Group: Connection, About: Line, Needs: Measuring, Source: "SD8", find: rollerNotSquare,
		Says: "A roller pushes perpendicular to the surface it rolls on: along which line does this reaction act?"},
	{ID: "end-couple-left-off", Group: Connection, About: Presence, Needs: Choosing, Source: "SD7, PLM", find: endCoupleLeftOff,
		Says: "A support that prevents rotation also exerts a couple: is the couple of the support in this sum?"},
	{ID: "loaded-as-two-force", Group: Connection, About: Answer, Needs: Choosing, Source: "SD8", find: loadedAsTwoForce,
		Says: "Only a part with no load between its two pins carries its force along the line through them: what does the sum itself give?"},
	{ID: "along-bent-member", Group: Connection, About: Answer, Needs: Choosing, Source: "TB", find: alongBentMember,
		Says: "The force of a two-force member acts from pin to pin, even where the member is bent: in which direction does this force act?"},
	{ID: "member-missed-at-pin", Group: Connection, About: Presence, Needs: Choosing, Source: "TB", find: memberMissedAtPin,
		Says: "A pin is in equilibrium under the forces of all the parts it joins: is the force of each part in this sum?"},
}

// pinSupportOneWay leaves out a known component of a pinned support.
func pinSupportOneWay(s *setting) []change {
	return s.reactions(s.pinned).grouped(s.byGiver).leftOut()
}

// rollerNotSquare lets an inclined roller push straight up or across.
func rollerNotSquare(s *setting) []change {
	var all []change
	rollers := s.where(func(t statics.Term) bool {
		if isLoad(t) || isCouple(t) || t.Why == statics.InsideBody || !s.question.Known(t.Force) && t.Force != s.question.Force {
			return false
		}
		f := s.Assembly.Forces[t.Force]
		p, ok := s.support(f.Joint)
		return f.Kind == statics.Reaction && ok && p.Kind == statics.Roller && slanting(f.Along)
	})
	for _, g := range rollers.grouped(s.byGiver) {
		along := s.Assembly.Forces[g.first().Force].Along
		for _, v := range []statics.Vector{{X: along.X}, {Y: along.Y}} {
			all = append(all, g.redirected(one, v))
		}
	}
	return all
}

func endCoupleLeftOff(s *setting) []change {
	return s.reactions(func(f statics.Force) bool { return f.Couple }).grouped(s.byGiver).leftOut()
}

// partner is the other component of the pin force that is asked for, as it is known; false where there is none.
func (s *setting) partner() (value exact.Num, across bool, ok bool) {
	f := s.Assembly.Forces[s.question.Force]
	if f.Kind == statics.Reaction || f.Couple || slanting(f.Along) {
		return exact.Num{}, false, false
	}
	for i, g := range s.Assembly.Forces {
		if i != s.question.Force && g.Joint == f.Joint && g.On == f.On && g.By == f.By && !g.Couple && s.question.Known(i) {
			return s.question.Values[i], f.Along.Y.IsZero(), true
		}
	}
	return exact.Num{}, false, false
}

// alongLine gives the component that is asked for as if the pin force lay along v.
func (s *setting) alongLine(v statics.Vector) []change {
	value, across, ok := s.partner()
	if !ok || !slanting(v) || value.IsZero() {
		return nil
	}
	x := over(value.Mul(v.Y), v.X)
	if across {
		x = over(value.Mul(v.X), v.Y)
	}
	return []change{given(x)}
}

func loadedAsTwoForce(s *setting) []change {
	if len(s.sum.Body) != 1 || s.Assembly.IsPin(s.sum.Body[0]) || len(s.Assembly.ActionsOn(s.sum.Body)) == 0 {
		return nil
	}
	ends := s.ends(s.sum.Body[0])
	if len(ends) != 2 {
		return nil
	}
	return s.alongLine(s.at(ends[0]).To(s.at(ends[1])))
}

func alongBentMember(s *setting) []change {
	if len(s.sum.Body) != 1 || s.Assembly.IsPin(s.sum.Body[0]) || len(s.Assembly.ActionsOn(s.sum.Body)) > 0 {
		return nil
	}
	part := s.Assembly.Parts[s.sum.Body[0]]
	if len(s.ends(s.sum.Body[0])) != 2 || len(part.Members) < 2 {
		return nil
	}
	var all []change
	for _, m := range part.Members {
		if mem := s.Assembly.Frame.Members[m]; mem.From == s.Assembly.Forces[s.question.Force].Joint || mem.To == s.Assembly.Forces[s.question.Force].Joint {
			all = append(all, s.alongLine(s.Assembly.Frame.Span(m))...)
		}
	}
	return all
}

func memberMissedAtPin(s *setting) []change {
	if len(s.sum.Body) != 1 || !s.Assembly.IsPin(s.sum.Body[0]) {
		return nil
	}
	return s.pinForces().grouped(s.byGiver).leftOut()
}
