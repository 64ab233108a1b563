package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// newMark makes marks of answers.
func newMark() *cobra.Command {
	var m mark
	cmd := &cobra.Command{
		Use:   "mark PROBLEM|SET [ANSWERS...]",
		Short: "Mark answers, with follow-through.",
		Long: "Hold answers against a problem: of one person who worked it alone, or of a class. Each value is right, right\n" +
			"(rounded), carried (it follows from an earlier value of the student's that is not right), right in size but not in\n" +
			"sense, a known mistake, wrong or missing; and it is told in which values the trouble began. True values are only told\n" +
			"with --tell.\n\n" +
			"ANSWERS is a file, or - for standard input; on a terminal it may be left out. It has a line for each answer:\n" +
			"  student: s017               of a class; problem: or code: may follow\n" +
			"  conventions: shear=ccw      signs by conventions of one's own, over the problem's; words as in Cy = 9.5 up need none\n" +
			"  Cy = 9.5 kN up              a force; Cy.CD = 9.5 down on the other part at the pin\n" +
			"  V(BC, 2.4 after) = -6       N, V or M at a place along a member\n" +
			"  M(AB, 0) = 90 tension left  a moment by the side that it stretches\n" +
			"  max M(BC) = 34.2 at 5.96    a peak and its place\n" +
			"  shape M(BC, 0..12.5) = 2 down  the degree of a curve, and whether its slope falls (down) or rises (up) on the way\n" +
			"  # comment\n" +
			"or it is CSV with the columns student, problem, quantity, value, and if wanted code, attempt, time; --blank writes one\n" +
			"to be filled in. A code names a student's copy with other numbers; where only the problem is named, the copy is that of\n" +
			"the list --variants, or else the problem's own numbers; papers that fit other numbers are told. Of a set each student\n" +
			"has a paper for each problem. Of several files a paper that names no student is that of its file's name.\n\n" +
			"An exam's paper, as practise --exam --answers writes it, holds its working as well: marks then have, for each force,\n" +
			"body for Cy (the bodies and sums chosen), method for Cy (the equation: every term, and none besides), terms for Cy (all\n" +
			"right), as far as the level asked for them, and check. They earn what working in the scheme says.\n\n" +
			"The scheme, where none is given:\n" + indented(problems.DefaultScheme) + "\n" +
			"The exit code is 2 if a file cannot be read, and with --strict 1 if marks are lost.",
		Args: markArgs,
		RunE: func(cmd *cobra.Command, args []string) error { return m.run(cmd, args) },
	}
	cmd.Flags().Var(oneOf(&m.format, "text", []string{"text", "csv", "json"}), "as", "the format of the marks")
	cmd.Flags().StringVar(&m.scheme, "scheme", "", "mark by the scheme in `FILE`")
	cmd.Flags().StringVar(&m.variants, "variants", "", "the list of who has which copy, as vary writes it, in `FILE`")
	cmd.Flags().BoolVar(&m.tell, "tell", false, "tell the true values")
	cmd.Flags().BoolVar(&m.blank, "blank", false, "write the CSV of answers to be filled in; with --roster or --variants for each student")
	cmd.Flags().BoolVar(&m.strict, "strict", false, "exit with 1 if marks are lost")
	cmd.Flags().StringVar(&m.feedback, "feedback", "", "write a page for each student into `FOLDER`")
	cmd.Flags().StringVar(&m.override, "override", "", "give answers the points decided in `FILE`: student,problem,quantity,got,reason")
	cmd.Flags().StringVar(&m.compare, "compare", "", "tell what differs from earlier marks, CSV in `FILE`, in place of the marks")
	cmd.Flags().StringVar(&m.roster, "roster", "", "tell who is not on the roster in `FILE`, and who has no paper")
	cmd.Flags().Var(oneOf(&m.as, "text", []string{"text", "html", "pdf"}), "pages", "the format of the pages of --feedback")
	cmd.Flags().StringVarP(&m.file, "output", "o", "", "write the marks to `FILE`, not to standard output")
	return cmd
}

// indented is a text that stands in from the margin.
func indented(text string) string {
	return "  " + string(bytes.ReplaceAll([]byte(text), []byte("\n"), []byte("\n  ")))
}

func markArgs(cmd *cobra.Command, args []string) error {
	switch {
	case len(args) == 0:
		return usageFault(cmd, "mark needs a problem, and answers. %s", whatProblemsAre())
	case len(args) > 2 && slices.Contains(args[1:], "-"):
		return usageFault(cmd, "answers come on standard input, or from files, not both")
	}
	return nil
}

// mark is what is asked of mark.
type mark struct {
	format, scheme, feedback, file, variants string
	override, compare, roster, as            string
	tell, blank, strict                      bool
}

// run marks, and delivers the marks.
func (m mark) run(cmd *cobra.Command, args []string) error {
	if args[0] == "-" && slices.Contains(args[1:], "-") {
		return usageFault(cmd, "the problem and the answers cannot both come on standard input: name a file")
	}
	if m.compare != "" && m.format != "text" {
		return usageFault(cmd, "--compare tells differences as text, not as %s: leave out --as", m.format)
	}
	if m.feedback == "" && cmd.Flags().Changed("pages") {
		return usageFault(cmd, "--pages is the format of the pages of --feedback: name a folder with it")
	}
	desk, err := newDesk(cmd, args[0], m.variants)
	if err != nil {
		return err
	}
	if m.blank {
		return m.writeBlank(cmd, desk, args)
	}
	if err := notOver(cmd, m.file, append(args, m.override, m.compare, m.roster, m.scheme, m.variants)); err != nil {
		return err
	}
	scheme, err := m.readScheme(desk, args[0])
	if err != nil {
		return err
	}
	if unknown := scheme.Unknown(desk.markers()); len(unknown) > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: the scheme names %s, and nothing in %s is called so.\n", notation.Visible(notation.List(unknown)), notation.List(desk.names()))
	}
	answers, err := m.answers(cmd, desk, args[1:])
	if err != nil {
		return err
	}
	m.complain(cmd, answers, desk)
	if len(answers.Papers) == 0 {
		return errors.New("unpin: no answer can be read: write one a line, such as Cy = 9.5 kN up, or a table as --blank begins it")
	}
	if err := m.checks(cmd, desk, answers.Papers); err != nil {
		return err
	}
	o, err := m.marked(desk, answers, scheme)
	if err != nil {
		return err
	}
	document, err := o.document()
	if err != nil {
		return err
	}
	out := cmd.OutOrStdout()
	if m.format == "text" {
		out = wrapped(out)
	}
	if err := deliver(document, m.file, visibleWriter{out}); err != nil {
		return err
	}
	if m.feedback != "" {
		fmt.Fprintf(cmd.ErrOrStderr(), "%s in %s.\n", wording.Counted(len(o.pages), "page"), m.feedback)
	}
	if m.strict && (len(answers.Faults) > 0 || o.lost) {
		return errNo
	}
	return nil
}

// marked marks all papers. Decisions that fit no paper are told before anything is written.
func (m mark) marked(desk *desk, answers *marking.Answers, scheme *marking.Scheme) (*outcome, error) {
	o, err := m.newOutcome(scheme)
	if err != nil {
		return nil, err
	}
	if len(o.decisions) > 0 {
		if err := desk.mark(answers, scheme, o.decide); err != nil {
			return nil, err
		}
		if err := o.undecided(m.override); err != nil {
			return nil, err
		}
	}
	return o, desk.mark(answers, scheme, o.take)
}

// checks tells of papers that are late, of nobody known, or likely of other numbers.
func (m mark) checks(cmd *cobra.Command, desk *desk, papers []*marking.Paper) error {
	var roster *variant.Roster
	if m.roster != "" {
		var err error
		if roster, err = readRoster(cmd, m.roster); err != nil {
			return err
		}
	}
	m.checkClass(cmd, desk, papers, roster)
	m.checkCopies(cmd, desk, papers, roster)
	m.checkTimes(cmd, desk, papers, roster)
	return nil
}

// complain tells of lines that belong to no paper, and of columns that mean nothing.
func (m mark) complain(cmd *cobra.Command, answers *marking.Answers, desk *desk) {
	for _, f := range slices.Concat(answers.Faults, desk.refused(answers.Papers)) {
		fmt.Fprintf(cmd.ErrOrStderr(), "unread, %s: %s: %s.\n", marking.Lines(f.Lines), f.Text, f.Why)
	}
	for _, n := range answers.Notes {
		fmt.Fprintf(cmd.ErrOrStderr(), "note: %s.\n", n)
	}
	if len(answers.Ignored) > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: columns passed over, for they mean nothing here: %q.\n", answers.Ignored)
	}
}

// readScheme is the scheme of the file, or that which the set names, or the default.
func (m mark) readScheme(desk *desk, word string) (*marking.Scheme, error) {
	if m.scheme == "" {
		return desk.means.scheme(word)
	}
	s, err := problems.LoadScheme(m.scheme)
	return (*marking.Scheme)(s), err
}

// answers reads the answers, from a file, from standard input, or on a terminal as they are typed.
func (m mark) answers(cmd *cobra.Command, desk *desk, words []string) (*marking.Answers, error) {
	if len(words) > 0 && words[0] != "-" {
		return readAnswers(words)
	}
	in := io.Reader(cmd.InOrStdin())
	if len(words) == 0 && !onTerminal(cmd) {
		return nil, usageFault(cmd, "mark needs answers: name a file, or - for standard input")
	}
	if onTerminal(cmd) {
		in = desk.ask(in, wrapped(cmd.OutOrStdout()))
	}
	return marking.ReadAnswers("standard input", in)
}
