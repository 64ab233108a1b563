package tutor

import (
	"strings"
	"testing"

	"unpin/problems/librarytest"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
)

// Rows: what is typed at a question of jetty-deck's first sum, RB*8 - 20*2.5 - 4*3*9.5 = 0 about A, what is said, and the
// question in hand after it.
func TestWholeLines(t *testing.T) {
	t.Parallel()
	rows := []struct{ at, typed, says, next string }{
		{"2 force", "-20*2.5", "right: that is the whole term", "3 force"},
		{"2 force", "20*2.5 cw", "right: that is the whole term", "3 force"},
		{"2 force", "-50 kNm", "right: that is the whole term", "3 force"},
		{"2 force", "20*2.5", "right: that is the size of the term", "2 sign"},
		{"2 force", "+20*2.5", "not yet: ", "2 force"},
		{"2 force", "20*2.5 ccw", "not yet: ", "2 force"},
		{"2 force", "-20*3", "not yet: ", "2 force"},
		{"2 force", "20", "right: ", "2 arm"},
		{"2 force", "50", "As it stands this is the whole term", "2 force"}, // or 50 for 20 by mistake: asked, not guessed
		{"2 force", "-20", "The force is asked for without a sign, and is right without it", "2 force"},
		{"2 arm", "-2.5 m", "The arm is asked for without a sign, and is right without it", "2 arm"},
		{"3 force", "20*2.5", "That is the size of the term of the 20 kN load on AB: the term of the uniform load 4 kN/m on BC is asked for here.", "3 force"},
		{"2 force", "-4*3*9.5", "That is the size of the term of the uniform load 4 kN/m on BC: the term of the 20 kN load on AB is asked for here.", "2 force"},
		{"2 force", "RB*8", "That is the size of the term of RB: the term of the 20 kN load on AB is asked for here.", "2 force"},
		{"2 force", "20*3", "not yet: the arm is the shortest distance", "2 force"},
		{"3 force", "4*3*8", "not yet: ", "3 force"},
		{"3 force", "4*8", "not yet: ", "3 force"},
		{"2 arm", "50", "As it stands this is the whole term", "2 arm"},
		{"3 force", "114", "As it stands this is the whole term, its force times its arm: type that with its sign or as a product, or its force alone.", "3 force"},
		{"2 arm", "50 kNm", "right: that is the size of the term", "2 sign"},
		{"2 force", "-5*10", "right: the term has this value, though", "3 force"},
		{"2 force", "-2.5*4*5", "right: that is the whole term", "3 force"},
		{"2 force", "-100/2", "right: the term has this value, though", "3 force"},
		{"2 sign", "-20*2.5", "right: that is the whole term", "3 force"},
		{"3 force", "-4*3*9.5", "right: that is the whole term", "RB"},
		{"3 force", "-4 x 3 x 8", "not yet: ", "3 force"},
		{"3 force", "4*3", "right: ", "3 arm"},
		{"1 arm", "RB*8", "right: that is the whole term", "2 force"},
		{"1 arm", "8 RB", "right: that is the whole term", "2 force"},
		{"1 arm", "-RB*8", "not yet: ", "1 arm"},
		{"1 arm", "RB*11", "not yet: ", "1 arm"},
		{"2 force", "RB*8 - 20*2.5 - 4*3*9.5 = 0", "right: that is the whole sum", "RB"},
		{"3 arm", "ΣM_A = RB*8 - 20*2.5 - 4*3*9.5 = 0", "right: that is the whole sum", "RB"},
		{"2 force", "RB*8 - 20*2.5 - 4*3*8 = 0", "not yet: ", "2 force"},
		{"2 force", "RB*8 - 20*2.5 - 4*3*9.5", "A whole sum is an equation: end it with = 0", "2 force"},
		{"1 sign", "RB*8 - 20*2.5", "A whole sum is an equation: end it with = 0", "1 sign"},
		{"2 force", "RB*8 - 20*2.5 - 4*3*8* = 0", "a number should stand", "2 force"},
	}
	short := func(q Question) string {
		word, number, _ := strings.Cut(q.Name, " ")
		return strings.TrimSpace(number + " " + word)
	}
	for _, r := range rows {
		l := lesson(t, "jetty-deck", Terms)
		for q, asking := l.Now(); asking && short(q) != r.at; q, asking = l.Now() {
			l.Type("tell")
		}
		reply := l.Type(r.typed)
		q, _ := l.Now()
		if !strings.HasPrefix(reply.Lines[0], r.says) || short(q) != r.next {
			t.Errorf("%q at %s: %v, then %s; want %q, then %s", r.typed, r.at, reply.Lines, short(q), r.says, r.next)
		}
	}
}

// A plus before the force of a term without an arm makes it the whole term; before an arm it is only a plus.
func TestPlusOfATerm(t *testing.T) {
	t.Parallel()
	l, seen := lesson(t, "well-crane", Terms), 0
	for q, asking := l.Now(); asking && q.Step >= 0; q, asking = l.Now() {
		line, want := answerExactly(l, q), "right: "
		if q.ofTerm() {
			s := l.about.solution.Plan[q.Step].Sums[q.Sum]
			switch term := s.Terms()[q.Term]; {
			case q.Kind == TermSize && !s.Moment && term.Force == statics.None && l.bench().judge().ShownSign(s, term) > 0:
				line, want, seen = "+"+line, "right: that is the whole term", seen+1
			case q.Kind == TermArm:
				line = "+" + line
			}
		}
		if r := l.Type(line); !strings.HasPrefix(r.Lines[0], want) {
			t.Fatalf("%q at %s: %v", line, q.Name, r.Lines)
		}
	}
	if seen == 0 {
		t.Error("no force without an arm is positive")
	}
}

// A whole term may be worked to three figures: its arm here is 4/3 m, in MA - Bx*4 - 9*4*2 - 0.5*6*4*1.3333 = 0.
func TestWholeTermsRounded(t *testing.T) {
	t.Parallel()
	rows := []struct{ typed, says string }{
		{"-0.5*6*4*4/3", "right: that is the whole term"},
		{"-0.5*6*4*1.33", "right: that is the whole term"},
		{"-12*1.333", "right: that is the whole term"},
		{"-15.96", "right: that is the whole term"},
		{"12*1.33", "right: that is the size of the term"},
		{"+12*1.33", "not yet: "},
		{"-12*1.3", "not yet: "},
		{"-12*1.35", "not yet: "},
		{"-12*2.67", "not yet: "},
		{"-15.9", "not yet: "},
	}
	for _, r := range rows {
		l := lesson(t, "sluice-panels", Terms)
		for q, asking := l.Now(); asking; q, asking = l.Now() {
			if s := l.about.solution.Plan[max(q.Step, 0)].Sums[q.Sum]; q.Kind == TermSize && s.Terms()[q.Term].Arm.Mul(exact.Int(3)).Equal(exact.Int(4)) {
				break
			}
			l.Type("tell")
		}
		if reply := l.Type(r.typed); !strings.HasPrefix(reply.Lines[0], r.says) {
			t.Errorf("%q: %v; want %q", r.typed, reply.Lines, r.says)
		}
	}
}

// Every sum of every problem is taken as the solution writes it, whole, and taken up again from the record.
func TestWholeSumsOfTheLibrary(t *testing.T) {
	t.Parallel()
	for _, name := range librarytest.Names() {
		s := store(t)
		l := kept(t, s, name, Terms, clock())
		for {
			q, asking := l.Now()
			if !asking || q.Step < 0 {
				break
			}
			line := answerExactly(l, q)
			if q.ofTerm() {
				line = l.about.words().Symbols(l.about.solution.Plan[q.Step].Sums[q.Sum])
			}
			if r := l.Type(line); r.Verdict != judging.Exact || r.Kind != Judged {
				t.Fatalf("%s: %q at %s: %v", name, line, q.Name, r.Lines)
			}
		}
		at, _ := l.Position()
		again := kept(t, s, name, Terms, clock())
		again.Resume()
		if now, _ := again.Position(); now != at || again.Earlier() != at {
			t.Errorf("%s: %d of %d questions are taken up", name, now, at)
		}
	}
}
