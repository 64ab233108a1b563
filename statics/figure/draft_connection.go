package figure

import (
	"unpin/statics"
)

// connection adds the symbol of a pin, slot or sleeve.
func (d *draft) connection(c statics.Connection) {
	at := d.joint(c.Joint)
	look := Look{Role: PinMark}
	switch c.Kind {
	case statics.Slot:
		d.Symbols = append(d.Symbols, Symbol{Kind: SlotSymbol, At: at, Toward: vector(c.Along), Text: "slot", Look: look})
		return
	case statics.Sleeve:
		d.Symbols = append(d.Symbols, Symbol{Kind: SleeveSymbol, At: at, Toward: vector(c.Along), Text: "sleeve", Look: look})
		return
	}
	for _, toward := range d.hinges(c) {
		d.Symbols = append(d.Symbols, Symbol{Kind: PinSymbol, At: at, Toward: toward, Look: look})
	}
}

// hinges tells where the circles of a pin stand: on the joint, or, where one piece runs through and the others are
// single members hinged to it, beside the joint on each of these.
func (d *draft) hinges(c statics.Connection) []Direction {
	if c.Main == statics.None || len(c.Pieces[c.Main]) < 2 {
		return []Direction{{}}
	}
	var list []Direction
	for i, piece := range c.Pieces {
		if i == c.Main || !d.inside[piece[0]] {
			continue
		}
		if len(piece) > 1 {
			return []Direction{{}}
		}
		a, b := d.ends(piece[0])
		if d.f.Members[piece[0]].To == c.Joint {
			a, b = b, a
		}
		list = append(list, a.To(b))
	}
	return list
}
