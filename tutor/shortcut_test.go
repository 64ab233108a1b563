package tutor

import (
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/notation"
)

// Where a problem asks for two-force members to be used at once, the lesson asks for their pulls in place of their pin
// forces, at every level; N, V and M along all members, theirs too, are what they were.
func TestTwoForceMembersAtOnce(t *testing.T) {
	t.Parallel()
	pulls := 0
	for _, name := range problems.Names() {
		p, _ := problems.Library(name)
		c := p.Conventions
		c.TwoForce = notation.TwoForceShortcut
		for _, level := range []Level{Read, Values, Terms, Plan, Blank, Gradual} {
			l, err := New(p.In(c), level, false)
			if err != nil {
				t.Fatal(err)
			}
			if l.about.solution.Full() == l.about.solution {
				break // it has no two-force members
			}
			asked := map[string]bool{}
			for q, asking := l.Now(); asking; q, asking = l.Now() {
				asked[q.Name] = true
				if q.Kind == SectionPart && level == Values {
					checkShortcutSection(t, l, q)
				}
				for _, line := range []string{"7.77", "hint", "hint", "hint", "tell", ""} {
					if now, asking := l.Now(); !asking || now.Name != q.Name || now.Kind != q.Kind {
						break
					}
					l.Type(line)
				}
			}
			for _, f := range l.about.solution.Forces {
				if f.Kind == statics.MemberPull {
					pulls++
					if !asked[f.Name] && level != Read && level != Gradual {
						t.Errorf("%s, %s: %s is not asked for", name, level, f.Name)
					}
				}
			}
		}
	}
	if pulls < 6 {
		t.Errorf("only %d pulls in all lessons", pulls)
	}
}

// checkShortcutSection holds what is said of N, V or M against the solution in which all members are parts.
func checkShortcutSection(t *testing.T, l *Lesson, q Question) {
	t.Helper()
	if v := l.about.section(q, l.about.solution.Values).Value(); !v.Equal(q.truth) {
		t.Errorf("%s, %s: the kept piece gives %v, want %v", l.about.problem.Name, q.Name, v, q.truth)
	}
	a, s := l.about.section(q, l.about.solution.Values).Sum()
	for _, term := range s.Terms() {
		if term.Force != statics.None && strings.HasPrefix(a.Forces[term.Force].Name, "F_") {
			t.Errorf("%s, %s: the sum of the kept piece holds %s", l.about.problem.Name, q.Name, a.Forces[term.Force].Name)
		}
	}
}
