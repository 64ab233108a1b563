package marking

import (
	"sync"

	"unpin/statics"
	"unpin/statics/judging"
)

// knownCases is what many papers share: what their quantities mean, and cases with true values, since many of a class have their
// first mistake in the same sum.
type knownCases struct {
	mutex sync.Mutex
	cases map[caseKey]*knownCase
	meant map[string]meaning // what quantities mean
}

// A caseKey is an item, with the sum it is taken from for a force.
type caseKey struct {
	item int
	row  *row
}

type knownCase struct {
	mutex sync.Mutex
	*judging.Case
}

// judge holds a value against a case, which is made where it is new.
func (k *knownCases) judge(key caseKey, fresh func(caseKey) *judging.Case, v judging.Typed) judged {
	c := k.of(key, fresh)
	c.mutex.Lock()
	defer c.mutex.Unlock()
	return judge(c.Case, v)
}

// right reports whether a value is right to a case.
func (k *knownCases) right(key caseKey, fresh func(caseKey) *judging.Case, v judging.Typed) bool {
	c := k.of(key, fresh)
	c.mutex.Lock()
	defer c.mutex.Unlock()
	return c.Verdict(v).Right()
}

func (k *knownCases) of(key caseKey, fresh func(caseKey) *judging.Case) *knownCase {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	c := k.cases[key]
	if c == nil {
		c = &knownCase{Case: fresh(key)}
		k.cases[key] = c
	}
	return c
}

// plainCase is a case with true values, of a force that is taken from no row that of the plan's own step.
func (m *Marker) plainCase(key caseKey) *judging.Case {
	item := m.Items[key.item]
	switch {
	case item.Place:
		return m.judge.Place(item.Member, item.Station, item.Stretch)
	case item.Force == statics.None:
		return m.judge.Section(item.Member, item.Station, item.Quantity)
	case key.row == nil:
		return m.stepCase(m.judge, item.Force)
	}
	return caseIn(m.judge, item.Force, key.row)
}

// stepCase is a force as the plan's own step gives it.
func (m *Marker) stepCase(j judging.Judge, force int) *judging.Case {
	step := m.stepOf[force]
	before := m.KnownBefore(step)
	known := func(f int) bool { _, ok := before(f); return ok }
	return j.Force(judging.Step{Sums: m.Plan[step].Sums, Gives: m.Plan[step].Gives, Known: known}, force)
}
