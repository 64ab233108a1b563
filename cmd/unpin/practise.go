package main

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/record"
	"unpin/tutor/screen"
)

// practiseLong is the help of the lesson.
const practiseLong = `Solve a problem step by step. Every value is asked for and judged exactly. hint, tell, back, sheet, help and quit
work at every question. Without PROBLEM you choose one: of the library, of the folder's files or of its sets. Where there
is no terminal it is the first of the library. Of a SET you choose one of its problems, which are asked in the
conventions and at the level of the set. With --exam a SET is
one paper: its problems in any order, under one clock, until it is handed in.`

// newPractise is the lesson.
func newPractise() *cobra.Command {
	var level, paper string
	var exam, plain, ascii bool
	var ask askFlag
	var short drilling
	cmd := &cobra.Command{
		Use:     "practise [PROBLEM|SET]",
		Aliases: []string{"practice"},
		Short:   "Solve a problem step by step, every value judged.",
		Long:    practiseLong,
		Args:    perhapsProblem,
		RunE: func(cmd *cobra.Command, args []string) error {
			r, err := tutor.ParseLevel(level)
			if err != nil {
				return err
			}
			screened := onTerminal(cmd) && !plain
			switch {
			case cmd.Flags().Changed("level"):
			case exam:
				r = tutor.Plan
			case screened: // each step at the level that its kind has earned
				r = tutor.Gradual
			}
			if err := forPaper(cmd, paper, exam, args); err != nil {
				return err
			}
			o := screen.Options{Level: r, Exam: exam, ASCII: ascii}
			own := ask.preferences(cmd)
			if wanted, err := short.asked(cmd); err != nil {
				return err
			} else if wanted {
				return short.run(cmd, o, own, args, screened)
			}
			if len(args) == 0 && screened {
				return show(cmd, o, own)
			}
			in := bufio.NewReader(cmd.InOrStdin())
			var of picked
			if len(args) == 0 {
				var err error
				if of, err = fromLibraryList(cmd, in); err != nil || of.word == "" {
					return err
				}
				args = []string{of.word}
			}
			if exam && isSet(args[0]) { // the whole paper, whichever of its problems was chosen
				return sitting{level: level, paper: paper, own: own, screen: o, screened: screened}.run(cmd, args[0], in)
			}
			begin := tutor.New
			if !screened {
				begin = tutor.NewPlain
			}
			task, left, err := fromSet(cmd, args, of.task, in, &r)
			if err != nil || left {
				return err
			}
			lesson, err := lessonFor(cmd, args[0], task, own, func(p *problems.Problem) (*tutor.Lesson, error) { return begin(p, r, exam) })
			if err != nil {
				return err
			}
			if err := work(cmd, lesson, o, own, in, screened); err != nil {
				return err
			}
			return writePaper(cmd, lesson, paper)
		},
	}
	levels := oneOf(&level, tutor.Values.String(), tutor.Levels())
	levels.old = tutor.OldLevels
	cmd.Flags().Var(levels, "level", "how much of each step is left to you; if absent gradual on the screen, values line by line, plan in an exam")
	cmd.Flags().Lookup("level").DefValue = ""
	cmd.Flags().SetNormalizeFunc(formerNames)
	cmd.Flags().BoolVar(&exam, "exam", false, "no verdicts and no help until the end; for practice, since unpin solve has the key")
	cmd.Flags().StringVar(&paper, "answers", "", "with --exam: write the answers to `FILE` at the end, for unpin mark")
	cmd.Flags().BoolVar(&plain, "plain", false, "one fact a line, one answer a line, no drawing")
	short.flags(cmd)
	cmd.Flags().Var(&ask, "ask", "conventions of your course, remembered: moments=cw,shear=ccw; default forgets them")
	cmd.Flags().BoolVar(&ascii, "ascii", false, "draw with no sign beyond ASCII")
	return cmd
}

// fromLibraryList has a problem of the library or of a set in the folder chosen line by line; where there is no terminal it is the first
// of the library.
func fromLibraryList(cmd *cobra.Command, in *bufio.Reader) (picked, error) {
	if onTerminal(cmd) {
		return choose(in, wrapped(cmd.OutOrStdout()), ".")
	}
	first, others := problems.Names()[0], problems.Names()[1:]
	fmt.Fprintf(cmd.ErrOrStderr(), "%s is the first problem of the library; unpin practise NAME takes another: %s.\n", first, strings.Join(others, ", "))
	return picked{word: first}, nil
}

// work does a lesson on the screen, or line by line.
func work(cmd *cobra.Command, lesson *tutor.Lesson, o screen.Options, own notation.Preferences, in *bufio.Reader, screened bool) error {
	if screened {
		o.Lesson, o.Level = lesson, lesson.Level()
		return show(cmd, o, own)
	}
	keep(cmd, lesson)
	lesson.Clock = time.Now
	return tutor.Plain(lesson, in, wrapped(cmd.OutOrStdout()))
}

// forPaper refuses to write answers of what is no exam, or over a file that is read.
func forPaper(cmd *cobra.Command, path string, exam bool, words []string) error {
	if path != "" && (!exam || len(words) == 0) {
		return usageFault(cmd, "--answers writes the answers of an exam on one problem or over a set: unpin practise PROBLEM|SET --exam --answers FILE")
	}
	return notOver(cmd, path, words)
}

// writePaper writes the paper of an exam, once it is over.
func writePaper(cmd *cobra.Command, lesson *tutor.Lesson, path string) error {
	if path == "" {
		return nil
	}
	text, over := tutor.PaperOf(lesson)
	return deliverPaper(cmd, text, over, path)
}

// deliverPaper writes the text of a paper, once its exam is over.
func deliverPaper(cmd *cobra.Command, text string, over bool, path string) error {
	if !over {
		fmt.Fprintf(cmd.ErrOrStderr(), "The exam is not over: %s is written at its end. unpin takes it up again where you left it.\n", path)
		return nil
	}
	return deliver([]byte(text), path, cmd.OutOrStdout())
}

// formerNames takes a flag by the name that it had before.
func formerNames(_ *pflag.FlagSet, name string) pflag.NormalizedName {
	if name == "rung" {
		name = "level"
	}
	return pflag.NormalizedName(name)
}

// newLesson begins a lesson on a problem. A frame that is not determinate is refused with the reason.
func newLesson(cmd *cobra.Command, word string, begin func(*problems.Problem) (*tutor.Lesson, error)) (*tutor.Lesson, error) {
	if word == "-" {
		return nil, usageFault(cmd, "the answers come on standard input, so the problem cannot; name a file")
	}
	p, s, err := solved(cmd, word)
	if err != nil {
		return nil, err
	}
	warn(cmd, p)
	if no := sound(s); no != nil {
		if _, err := io.WriteString(cmd.OutOrStdout(), notation.VisibleLines(worksheet.Text(worksheet.One(p, s), worksheet.Options{}))); err != nil {
			return nil, err
		}
		return nil, no
	}
	return begin(p)
}

// keep has the lesson's progress kept in the user's state folder. Where it cannot be kept the student is told, and the
// lesson goes on.
func keep(cmd *cobra.Command, lesson *tutor.Lesson) {
	complain := func(err error) { fmt.Fprintf(cmd.ErrOrStderr(), "warning: %v\n", err) }
	store, err := record.Open()
	if err != nil {
		complain(err)
		return
	}
	lesson.Keep(store, time.Now, complain)
}
