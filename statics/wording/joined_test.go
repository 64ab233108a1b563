package wording

import (
	"testing"

	"unpin/statics"
)

// TestPinForces: what joins the parts is called what it is, a sleeve no pin.
func TestPinForces(t *testing.T) {
	t.Parallel()
	of := func(kinds ...statics.ConnectionKind) *statics.Frame {
		f := &statics.Frame{}
		for _, k := range kinds {
			f.Connections = append(f.Connections, statics.Connection{Kind: k})
		}
		return f
	}
	for _, k := range []struct {
		frame     *statics.Frame
		forces, a string
	}{
		{of(), "the pin forces", "a pin"},
		{of(statics.Pin, statics.Pin), "the pin forces", "a pin"},
		{of(statics.Sleeve), "the forces at the sleeve", "a sleeve"},
		{of(statics.Slot, statics.Pin), "the forces at the pin and slot", "a pin or a slot"},
		{of(statics.Sleeve, statics.Pin, statics.Sleeve), "the forces at the pin and sleeves", "a pin or a sleeve"},
	} {
		if got := PinForces(k.frame); got != k.forces {
			t.Errorf("%v: %q, not %q", k.frame.Connections, got, k.forces)
		}
		if got := APin(k.frame); got != k.a {
			t.Errorf("%v: %q, not %q", k.frame.Connections, got, k.a)
		}
	}
}
