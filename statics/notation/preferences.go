package notation

import (
	"fmt"
	"slices"
	"strings"
)

// Preferences are conventions by name and word, as far as said: those of a learner's course, which win over a problem's.
// No name is there twice. The zero value prefers nothing.
type Preferences []Preference

// A Preference is one convention by its name and its word: moments, cw.
type Preference struct{ Name, Word string }

// ReadPreferences reads "moments=cw,shear=counter-clockwise": names and words of a problem file, and blanks mean nothing.
// The error says what would be right.
func ReadPreferences(text string) (Preferences, error) {
	var all Preferences
	for part := range strings.SplitSeq(text, ",") {
		name, word, found := strings.Cut(part, "=")
		name, word = strings.TrimSpace(name), strings.TrimSpace(word)
		var c Conventions
		switch err := c.Set(name, word); {
		case !found:
			return nil, fmt.Errorf("%s is no convention and its word: write such as moments=cw,shear=counter-clockwise", quoted(part))
		case err != nil:
			return nil, err
		case slices.ContainsFunc(all, func(p Preference) bool { return p.Name == name }):
			return nil, fmt.Errorf("%s is settled twice: settle it once", name)
		}
		all = append(all, Preference{name, c.Word(name)})
	}
	return all, nil
}

// With are these preferences with others, which win.
func (p Preferences) With(others Preferences) Preferences {
	kept := slices.DeleteFunc(slices.Clone(p), func(old Preference) bool {
		return slices.ContainsFunc(others, func(x Preference) bool { return x.Name == old.Name })
	})
	return append(kept, others...)
}

// Over are conventions with what is preferred in place of theirs.
func (p Preferences) Over(c Conventions) Conventions {
	for _, x := range p {
		if err := c.Set(x.Name, x.Word); err != nil {
			panic("internal error: a preference that was not read: " + err.Error())
		}
	}
	return c
}

// String is the text that ReadPreferences reads.
func (p Preferences) String() string {
	var all []string
	for _, x := range p {
		all = append(all, x.Name+"="+x.Word)
	}
	return strings.Join(all, ",")
}
