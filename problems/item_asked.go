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

// A NamedSection is what the name of N, V or M at a place says: M(BC, 2.4), V(BC, 2.4 after).
type NamedSection struct {
	Quantity      statics.Quantity
	Member, Place string // as written
	Side          statics.Side
	side          string // the same in a word
}

var sectionForm = notation.Pattern(`^([NVM])\s*\(\s*([A-Z][A-Za-z0-9']*)\s*,\s*(.+?)(?:\s+(before|after))?\s*\)$`)

// ReadSectionName reads such a name; false where a text is none. Whether member and place are the frame's is not looked at.
func ReadSectionName(text string) (NamedSection, bool) {
	parts := sectionForm().FindStringSubmatch(strings.TrimSpace(text))
	if parts == nil {
		return NamedSection{}, false
	}
	side := map[string]statics.Side{"before": statics.Before, "after": statics.After}[parts[4]]
	return NamedSection{statics.Quantity(strings.Index("NVM", parts[1])), parts[2], parts[3], side, parts[4]}, true
}

// itemAt is the item that a word names at a place where nothing special is.
func (p Solved) itemAt(word string) (Item, error) {
	name, ok := ReadSectionName(word)
	if !ok {
		return Item{}, fmt.Errorf("%q is no answer of this problem: write reactions, pins, N, V, M, diagrams, a force (%s), or a place along a member (M(%s, 0))",
			word, notation.List(p.forceNames()), p.Frame.Members[0].Name)
	}
	member := slices.IndexFunc(p.Frame.Members, func(m statics.Member) bool { return m.Name == name.Member })
	if member < 0 {
		return Item{}, fmt.Errorf("%q names no member of this frame: write its members as its file does", word)
	}
	at, err := exact.Parse(name.Place)
	if err != nil {
		return Item{}, fmt.Errorf("%q: %w", word, err)
	}
	if p.Diagrams[member].Withheld {
		return Item{}, fmt.Errorf("%q cannot be asked: %s lies in a rigid ring, where equilibrium alone does not give N, V and M", word, name.Member)
	}
	forces, on := p.Diagrams[member].Section(at, name.Side)
	if !on {
		return Item{}, fmt.Errorf("%q lies off %s, which is %s long", word, name.Member, PlaceText(p.Frame.Length(member)))
	}
	q := name.Quantity
	if before, within := p.Diagrams[member].Section(at, statics.Before); within && name.Side == statics.Both && !before.Of(q).Equal(forces.Of(q)) {
		return Item{}, fmt.Errorf("%q jumps there: write %s(%s, %s before) or after", word, q.Letter(), name.Member, name.Place)
	}
	st := statics.Station{At: at, Side: name.Side, InternalForces: forces, Exact: true}
	return SectionItem(p.Solution, member, q, st, name.side), nil
}

// forceNames are the names of all forces.
func (p Solved) forceNames() []string {
	var names []string
	for _, item := range p.ForceItems() {
		names = append(names, item.Name)
	}
	return names
}
