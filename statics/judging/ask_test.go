package judging

import (
	"testing"

	"unpin/statics/slip"
)

// TestAsksOfThings: the number of those asked about decides the verb, their aspects what is asked.
func TestAsksOfThings(t *testing.T) {
	t.Parallel()
	about := func(force bool, aspects ...slip.Aspect) thing {
		all := thing{who: "x", force: force}
		for _, a := range aspects {
			all.aspects[a] = true
		}
		return all
	}
	one, two := []string{"the 20 kN load"}, []string{"the 20 kN load", "the 3 kN load"}
	for _, c := range []struct {
		of   thing
		who  []string
		want string
	}{
		{about(false), one, "does the 20 kN load count in this sum"},
		{about(false), two, "which of the 20 kN load and the 3 kN load count in this sum"},
		{about(false, slip.Sense), one, "with what sense does the 20 kN load enter"},
		{about(false, slip.Sense), two, "with what sense do the 20 kN load and the 3 kN load enter"},
		{about(false, slip.Size, slip.Arm), two, "with what arm and size do the 20 kN load and the 3 kN load enter"},
		{about(true, slip.Size), []string{"Cx"}, "with what value does Cx enter"},
		{about(false, slip.Presence, slip.Arm), one, "does the 20 kN load count in this sum and with what arm"},
		{about(true, slip.Size), []string{"Cy", "Cx", "RE" + beyondCut, "Dx" + beyondCut}, "with what value do Cy, Cx and, beyond the cut, RE and Dx enter"},
		{about(false, slip.Sense), []string{"the two 12 kN pulls of the rope at D" + beyondCut}, "with what sense do the two 12 kN pulls of the rope at D beyond the cut enter"},
		{thing{ask: "which side is it"}, nil, "which side is it"},
	} {
		if got := c.of.asks(c.who); got != c.want {
			t.Errorf("asks %q, want %q", got, c.want)
		}
	}
}
