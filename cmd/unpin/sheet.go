package main

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/problems/worksheet"
	"unpin/tutor/marking"
)

// newSheet prints question sheets, keys and the table of answers.
func newSheet() *cobra.Command {
	var s sheeting
	cmd := &cobra.Command{
		Use:   "sheet SET|PROBLEM...",
		Short: "Print question sheets, their keys, and a table of all answers.",
		Long: "Print the problems of a set (unpin help set), or problems by themselves, as a question sheet: one with the problems'\n" +
			"own numbers, or one for each of --copies N, of the students of --roster FILE, or of those of a list that unpin vary\n" +
			"or this command wrote, --variants FILE. --key prints the keys in their place, --table one table of all answers with\n" +
			"the wrong values that are likeliest and the mistake behind each, for marking by hand.\n\n" +
			"-o FILE is one file for the printer, in the format of its ending. -o FOLDER takes all of it: sheets, keys, the table\n" +
			"and the list of who has what; with --each one file for each student. The column print of a roster is heeded: a4,\n" +
			"letter, large (print of about 18 points), text (a text for a screen reader). --code prints one sheet or key again.\n\n" +
			"--as qti, or -o FILE.zip, makes questions for a learning platform: a content package of 1EdTech QTI 2.1, or with\n" +
			"--qti 3 of 3.0, of whose copies the platform draws one for each problem; with --each one package for each student.\n" +
			"Answers are numbers with a decimal point, whatever the problem prints; points are by the scheme of the set, or that of\n" +
			"unpin mark, but what follows from an earlier mistake earns nothing there. What a platform cannot tell from the right\n" +
			"answer is said on standard error. A sheet, a key or a question is for teaching: no real structure rests on it.\n" +
			"The exit code is 1 if a frame is not determinate, or there are not enough good copies.",
		Args: someProblems,
		RunE: func(cmd *cobra.Command, words []string) error {
			s.cmd = cmd
			return s.run(words)
		},
	}
	cmd.Flags().IntVar(&s.copies, "copies", 0, "make `N` copies, numbered from 1")
	cmd.Flags().StringVar(&s.roster, "roster", "", "make a copy for each student of `FILE`")
	cmd.Flags().StringVar(&s.variants, "variants", "", "print the copies that are listed in `FILE`; with --roster only those of its students")
	cmd.Flags().StringVar(&s.code, "code", "", "print the copy of a `CODE` again")
	cmd.Flags().StringVar(&s.seed, "seed", "1", "the `SEED` of the draws of problems by themselves, to be kept from students")
	cmd.Flags().BoolVar(&s.key, "key", false, "the keys: answers, checks and small diagrams")
	cmd.Flags().BoolVar(&s.full, "full", false, "keys with the whole solution")
	cmd.Flags().BoolVar(&s.table, "table", false, "one table of all answers, with likely wrong values")
	cmd.Flags().Var(oneOf(&s.level, "", worksheet.Levels), "level", "how much of each step is left to the student; if not given, that of the set, or plan")
	cmd.Flags().Var(oneOf(&s.paper, worksheet.A4.Name, []string{worksheet.A4.Name, worksheet.Letter.Name}), "paper", "the paper of a PDF, where the roster does not say")
	cmd.Flags().BoolVar(&s.duplex, "duplex", false, "an even number of pages for each student, for printing on both sides")
	cmd.Flags().Var(oneOf(&s.format, "", sheetFormats), "as", "the format; if not given, the one that FILE's ending names")
	cmd.Flags().Var(oneOf(&s.qti, questionVersions[0], questionVersions), "qti", "the version of the questions of --as qti")
	cmd.Flags().BoolVar(&s.each, "each", false, "one file for each student")
	cmd.Flags().StringVarP(&s.output, "output", "o", "", "write to `FILE|FOLDER`, not to standard output; a name without an ending is a folder")
	return cmd
}

// sheeting is what is asked of sheet, and what was made of it.
type sheeting struct {
	cmd                            *cobra.Command
	copies                         int
	roster, variants, code, seed   string
	key, full, table, duplex, each bool
	level, paper, format, output   string
	qti                            string
	folder                         bool // output is one

	heading  worksheet.Heading
	tasks    []problems.Task
	setLevel string
	set      *problems.Set   // nil for problems by themselves
	scheme   *marking.Scheme // of questions for a platform
	batch    variant.Batch   // of the tasks; nil where their own numbers are printed
	handouts []variant.Handout
	list     []byte // who has what; nil where nobody has a copy
}

// run reads what is to be printed, finds who has what, and writes it.
func (s *sheeting) run(words []string) error {
	if err := s.settle(); err != nil {
		return err
	}
	reads, err := s.read(words)
	if err != nil {
		return err
	}
	if err := s.spare(reads); err != nil {
		return err
	}
	if err := s.assign(); err != nil {
		return err
	}
	return s.write()
}

// read reads the set, or the problems. It returns the files that were read.
func (s *sheeting) read(words []string) (reads []string, err error) {
	var faults []error
	refused := false
	for _, word := range words {
		m, err := meaningOf(word, s.cmd.InOrStdin())
		if err != nil {
			faults = append(faults, err)
			continue
		}
		if m.set != nil && len(words) > 1 {
			return nil, usageFault(s.cmd, "a sheet is of one set, or of problems: %s is a set, and %d words are given", word, len(words))
		}
		if m.set == nil && slices.ContainsFunc(s.tasks, func(t problems.Task) bool { return t.Name == m.problem.Name }) {
			return nil, usageFault(s.cmd, "two problems are called %s: their codes and answers could not be told apart", m.problem.Name)
		}
		m.warn(s.cmd)
		reads = append(reads, readsOf(word, m)...)
		if s.format == questionsFormat && s.scheme == nil {
			if s.scheme, err = m.scheme(word); err != nil {
				faults = append(faults, err)
			}
		}
		if err := s.take(m); err != nil {
			fmt.Fprintf(s.cmd.ErrOrStderr(), "unpin: %v\n", err)
			refused = true
		}
	}
	if refused && len(faults) == 0 {
		return nil, errNo
	}
	return reads, errorsOf(faults)
}

// take notes the tasks of a set, or a problem as one. The error says that its frame is not determinate.
func (s *sheeting) take(m meaning) error {
	if m.set != nil {
		s.set, s.tasks, s.setLevel = m.set, m.set.Tasks, m.set.Level
		s.heading = worksheet.Heading{Title: m.set.Title, Course: m.set.Course}
		return nil
	}
	t, err := problems.Alone(m.problem)
	if err != nil {
		return err
	}
	if s.tasks = append(s.tasks, t); len(s.tasks) > 1 {
		s.heading.Title = fmt.Sprintf("%d problems", len(s.tasks))
	}
	return nil
}
