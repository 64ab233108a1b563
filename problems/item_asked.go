package problems

import (
	"fmt"
	"slices"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Asked lists the items that the words of find choose, each once: those of Items in their order, then those at other places, in
// the order of the words. A word is reactions, pins, N, V, M or diagrams, or the name of an item: "Cy", "M(BC, 2.4)", which may be
// any place along the member, with before or after where the value jumps. No words choose all items. A word that
// chooses nothing is an error, but for the six, which some frames have nothing of.
func (p Solved) Asked(find []string) ([]Item, error) {
	all := p.Items()
	if len(find) == 0 {
		return all, nil
	}
	wanted := make([]bool, len(all))
	var elsewhere []Item
	for _, word := range find {
		found := slices.Contains(itemGroups, word)
		for i, item := range all {
			if item.answersTo(word, p) {
				wanted[i], found = true, true
			}
		}
		if found {
			continue
		}
		item, err := p.itemAt(word)
		if err != nil {
			return nil, err
		}
		if !slices.ContainsFunc(elsewhere, func(e Item) bool { return e.Name == item.Name }) {
			elsewhere = append(elsewhere, item)
		}
	}
	var asked []Item
	for i, item := range all {
		if wanted[i] {
			asked = append(asked, item)
		}
	}
	return append(asked, elsewhere...), nil
}

// itemGroups are the words that choose items of a kind.
var itemGroups = []string{"reactions", "pins", "N", "V", "M", "diagrams"}

// answersTo reports whether a word of find chooses the item.
func (item Item) answersTo(word string, p Solved) bool {
	force := item.Force != statics.None
	switch word {
	case "reactions":
		return force && p.Forces[item.Force].Kind == statics.Reaction
	case "pins":
		return force && p.Forces[item.Force].Kind != statics.Reaction
	case "diagrams":
		return !force
	case "N", "V", "M":
		return !force && !item.Place && item.Quantity.Letter() == word
	}
	return notation.NameMatches(word, item.Name)
}

// sectionWord is M(BC, 2.4) or V(BC, 2.4 after).
var sectionWord = notation.Pattern(`^([NVM])\(\s*([A-Z][A-Za-z0-9']*)\s*,\s*([0-9./]+)(?:\s+(before|after))?\s*\)$`)

// itemAt is the item that a word names at a place where nothing special is.
func (p Solved) itemAt(word string) (Item, error) {
	parts := sectionWord().FindStringSubmatch(strings.TrimSpace(word))
	if parts == nil {
		return Item{}, fmt.Errorf("%q is no answer of this problem: write reactions, pins, N, V, M, diagrams, a force (%s), or a place along a member (M(%s, 0))",
			word, notation.List(p.forceNames()), p.Frame.Members[0].Name)
	}
	member := slices.IndexFunc(p.Frame.Members, func(m statics.Member) bool { return m.Name == parts[2] })
	if member < 0 {
		return Item{}, fmt.Errorf("%q names no member of this frame: write its members as its file does", word)
	}
	at, err := exact.Parse(parts[3])
	if err != nil {
		return Item{}, fmt.Errorf("%q: %w", word, err)
	}
	if p.Diagrams[member].Withheld {
		return Item{}, fmt.Errorf("%q cannot be asked: %s lies in a rigid ring, where equilibrium alone does not give N, V and M", word, parts[2])
	}
	side := map[string]statics.Side{"before": statics.Before, "after": statics.After}[parts[4]]
	forces, on := p.Diagrams[member].Section(at, side)
	if !on {
		return Item{}, fmt.Errorf("%q lies off %s, which is %s long", word, parts[2], PlaceText(p.Frame.Length(member)))
	}
	q := statics.Quantity(strings.Index("NVM", parts[1]))
	if before, within := p.Diagrams[member].Section(at, statics.Before); within && side == statics.Both && !before.Of(q).Equal(forces.Of(q)) {
		return Item{}, fmt.Errorf("%q jumps there: write %s(%s, %s before) or after", word, parts[1], parts[2], parts[3])
	}
	st := statics.Station{At: at, Side: side, InternalForces: forces, Exact: true}
	return SectionItem(p.Solution, member, q, st, parts[4]), nil
}

// forceNames are the names of all forces.
func (p Solved) forceNames() []string {
	var names []string
	for _, item := range p.ForceItems() {
		names = append(names, item.Name)
	}
	return names
}
