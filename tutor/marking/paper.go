package marking

import (
	"cmp"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// A Paper is what one student answered to one problem.
type Paper struct {
	Student string
	Problem string // a name, or empty where only a code or nothing is said
	Code    string // of the student's copy; empty where none is said
	Attempt int    // from 1
	Entries []Entry
	Level   string // at which the working was written
	// Conventions are those by which the paper is written, where it says so; else the problem's hold.
	Conventions notation.Preferences
	Work        []string // the working, as it was typed in an exam; none on other papers
	Line        int      // where it begins in the file
	seal        int      // which of the sealed papers of the file it stands in, from 1; 0 for none
}

// An Entry is one answer as it was written.
type Entry struct {
	Line     int
	Quantity string // Cy, V(BC, 2.4 after)
	Value    string // 9.5 kN up
	Time     string // when it was given, or empty
}

// An Unread answer is one that nothing is made of.
type Unread struct {
	Lines []int // of the file, rising; several where they contradict each other
	Text  string
	Why   string // a clause, what is wrong and what would be right
}

// Answers are the papers of a file.
type Answers struct {
	Papers  []*Paper // by student, problem, code and attempt, whatever the order of the file
	Faults  []Unread // what belongs to no paper
	Ignored []string // columns that mean nothing here
	Notes   []string // what else there is to know of the file, a clause each
}

// key is what makes two lines be of one paper.
func (p *Paper) key() string {
	return strings.Join([]string{p.Student, p.Problem, p.Code, string(rune(p.Attempt))}, "\x00")
}

// order sorts papers by student, problem, code and attempt.
func (p *Paper) order(q *Paper) int {
	return cmp.Or(cmp.Compare(p.Student, q.Student), cmp.Compare(p.Problem, q.Problem), cmp.Compare(p.Code, q.Code), cmp.Compare(p.Attempt, q.Attempt))
}

// gather puts entries of one paper together, and sorts papers and entries. A sealed paper is whole: of two that are called the same the first
// counts.
func (a *Answers) gather(lines []string) {
	byKey := map[string]*Paper{}
	var all []*Paper
	for _, p := range a.Papers {
		if p.Student+p.Problem+p.Code == "" && len(p.Entries)+len(p.Work) == 0 {
			continue // its heads could not be read
		}
		first := byKey[p.key()]
		if first != nil && first.seal != p.seal {
			a.fault(p.Line, lines[p.Line-1], "this paper stands at line %d of the file as well, and that one counts: leave out one of them", first.Line)
			continue
		}
		if first != nil {
			first.Entries, first.Work = append(first.Entries, p.Entries...), append(first.Work, p.Work...)
			first.Level = cmp.Or(first.Level, p.Level)
			first.Conventions = first.Conventions.With(p.Conventions)
			continue
		}
		byKey[p.key()], all = p, append(all, p)
	}
	slices.SortStableFunc(all, (*Paper).order)
	a.Papers = all
}
