package worksheet

import (
	"unpin/problems"
	"unpin/statics"
)

// A Solved is a problem with the solution of its frame.
type Solved struct {
	Problem  *problems.Problem
	Solution *statics.Solution
}

// One is a problem by itself, as the documents take it.
func One(p *problems.Problem, s *statics.Solution) []Solved { return []Solved{{p, s}} }

// Parts are the names of the parts of a solution, in the order in which they stand.
var Parts = []string{"given", "bodies", "sums", "results", "diagrams"}

// Options say how a document is laid out. Which of them a format heeds stands with it.
type Options struct {
	Width int       // the widest line of a text; 0 is 80, and no less than 60 serve
	ASCII bool      // a text has no character beyond ASCII but those of the problem's own title and text
	Only  []string  // which of Parts a solution has; none is all
	Paper PaperSize // of a PDF
}

// has reports whether the part of a solution is asked for, or any of several.
func (o Options) has(parts ...string) bool {
	for _, part := range parts {
		for _, only := range o.Only {
			if part == only {
				return true
			}
		}
	}
	return len(o.Only) == 0
}

// written are documents with the solutions of several problems, in a format that has figures or not.
func written(all []Solved, o Options, pictures bool) []*document {
	var documents []*document
	for _, k := range all {
		d := newDocument(k.Problem, k.Solution, o.ASCII)
		d.pictures = pictures
		d.solution(o)
		documents = append(documents, d)
	}
	return documents
}
