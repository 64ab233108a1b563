package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/statics"
)

// find reads the problem that a word on the command line means: "-" what comes on standard input, a name from the
// library, or else a file. A word with a folder or an ending is always a file.
func find(word string, in io.Reader) (*problems.Problem, error) {
	if word == "-" {
		return problems.ReadFrom("standard input", in)
	}
	if word == "" {
		return nil, errors.New("the name of the problem is empty. " + whatProblemsAre())
	}
	if fromLibrary(word) {
		p, _ := problems.Library(word)
		return p, nil
	}
	if strings.ContainsRune(word, filepath.Separator) || filepath.Ext(word) != "" {
		return problems.Load(word)
	}
	if _, err := os.Stat(word); err == nil {
		return problems.Load(word)
	}
	if meant := problems.NamedAlike(word); meant != "" {
		return nil, fmt.Errorf("there is no problem %q; did you mean %s?", word, meant)
	}
	if meant := nearest(word, problems.Names()); meant != "" {
		return nil, fmt.Errorf("there is no problem %q; did you mean %s?", word, meant)
	}
	return nil, fmt.Errorf("there is no problem %q. %s", word, whatProblemsAre())
}

// fromLibrary reports whether a word means a problem of the library. No name there has a folder or an ending.
func fromLibrary(word string) bool {
	_, ok := problems.Library(word)
	return ok
}

// solved is the problem that a word means and its frame, counted and, if it is determinate, solved.
func solved(cmd *cobra.Command, word string) (*problems.Problem, *statics.Solution, error) {
	p, err := find(word, cmd.InOrStdin())
	if err != nil {
		return nil, nil, err
	}
	s, err := statics.Solve(p.Frame)
	return p, s, err
}

// sound is errNo where the frame is not determinate.
func sound(s *statics.Solution) error {
	if s.Count.Determinacy() != statics.Determinate {
		return errNo
	}
	return nil
}

// warn tells what is legal in a problem but likely a mistake.
func warn(cmd *cobra.Command, p *problems.Problem) {
	for _, w := range p.Warnings {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s\n", w)
	}
}
