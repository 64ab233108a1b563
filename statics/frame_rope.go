package statics

import "errors"

// A Pull is one of the two forces of a rope that runs over a wheel: as large as the rope's tension, and tangent to the
// wheel. The moments of the two about the wheel's joint cancel.
type Pull struct {
	Along Vector // the direction in which the rope leaves the wheel, unscaled
	Off   Vector // from the wheel's joint to where the rope leaves the wheel
}

// Pulls are the two pulls of a rope, that along Along first. The rope lies on that side of the wheel which is away from its
// other end, for it bends round the wheel; where both ends run the same way, that along Along leaves on their left.
func (l *Load) Pulls() [2]Pull {
	first, second := l.Along.Left(), l.Second.Left().Neg()
	if l.Along.Cross(l.Second).Sign() > 0 {
		first, second = first.Neg(), second.Neg()
	}
	return [2]Pull{{l.Along, l.rim(first)}, {l.Second, l.rim(second)}}
}

// rim is the place on the rim of a rope's wheel in a direction from its middle.
func (l *Load) rim(out Vector) Vector {
	if l.Radius.IsZero() {
		return Vector{}
	}
	u, _ := out.unit()
	return u.Times(l.Radius)
}

// checkRope reports what makes a rope unfit.
func (l *Load) checkRope() error {
	switch {
	case l.Joint == None:
		return errors.New("is a rope, whose wheel needs a joint")
	case l.Second.IsZero():
		return errors.New("is a rope that needs a second direction")
	case l.Along.Cross(l.Second).IsZero() && l.Along.Dot(l.Second).Sign() < 0:
		return errors.New("is a rope that does not bend round its wheel")
	case l.Radius.Sign() < 0:
		return errors.New("is a rope over a wheel of negative radius")
	}
	return nil
}
