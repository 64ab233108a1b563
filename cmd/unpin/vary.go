package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/notation"
)

// newVary makes other numbers for a frame.
func newVary() *cobra.Command {
	var v varying
	cmd := &cobra.Command{
		Use:   "vary PROBLEM",
		Short: "Give every student other numbers.",
		Long: "Make copies of a problem with other numbers: those that its file allows under vary, or else sensible ones found for\n" +
			"it. A copy is as good as the problem: determinate, of the same plan, as hard, tidy, to scale, and no mistake is\n" +
			"hidden by its numbers. The list says who has what; with -o each copy is a problem file in the folder, and the list\n" +
			"stands beside them as variants.csv. The numbers follow from problem and code alone, whatever the version of unpin.\n\n" +
			"A roster is CSV whose first line names the columns: id, and if wanted name, group, extra, print, attempt. With\n" +
			"--copies no two have the same numbers; with --roster two may, and how many do is told.\n" +
			"The exit code is 1 if there are not enough good copies.",
		Args: oneProblem,
		RunE: func(cmd *cobra.Command, words []string) error {
			return v.run(cmd, words[0])
		},
	}
	cmd.Flags().IntVar(&v.copies, "copies", 0, "make `N` copies, numbered from 1")
	cmd.Flags().StringVar(&v.roster, "roster", "", "make a copy for each student of `FILE`")
	cmd.Flags().StringVar(&v.seed, "seed", "1", "the `SEED` of the draws, to be kept from students")
	cmd.Flags().StringVar(&v.code, "code", "", "write the copy of a `CODE` once more, as a problem file")
	cmd.Flags().StringVarP(&v.folder, "output", "o", "", "write the copies into `FOLDER`")
	return cmd
}

// oneProblem wants one PROBLEM.
func oneProblem(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return someProblems(cmd, args)
	}
	return perhapsProblem(cmd, args)
}

// varying is what is asked of vary.
type varying struct {
	copies int
	roster string
	seed   string
	code   string
	folder string
}

// mostCopies is the most copies of one problem, as many as a roster may have students.
const mostCopies = 20_000

// run makes the copies and delivers them.
func (v varying) run(cmd *cobra.Command, word string) error {
	if err := v.settle(cmd); err != nil {
		return err
	}
	p, err := find(word, cmd.InOrStdin())
	if err != nil {
		return err
	}
	warn(cmd, p)
	maker, err := variant.New(p)
	if err != nil {
		fmt.Fprintf(cmd.ErrOrStderr(), "unpin: %s has no copies: %v\n", p.Name, err)
		return errNo
	}
	v.warnText(cmd, p)
	source := variant.Source{Set: p.Name, Seed: v.seed, Place: 1}
	if v.code != "" {
		return v.again(cmd, maker, source)
	}
	job, err := v.job(cmd, source)
	if err != nil {
		return err
	}
	copies, err := maker.Copies(context.Background(), job)
	var short *variant.Shortage
	if errors.As(err, &short) {
		fmt.Fprintf(cmd.ErrOrStderr(), "unpin: of %s %v\n", p.Name, short)
		return errNo
	}
	if err != nil {
		return err
	}
	return v.deliver(cmd, maker, copies)
}

// settle refuses flags that do not go together.
func (v varying) settle(cmd *cobra.Command) error {
	var chosen []string
	for _, name := range []string{"copies", "roster", "code"} {
		if cmd.Flags().Changed(name) {
			chosen = append(chosen, "--"+name)
		}
	}
	switch {
	case len(chosen) == 0:
		return usageFault(cmd, "how many copies are wanted is not said: --copies 30, or --roster FILE")
	case len(chosen) > 1:
		return usageFault(cmd, "%s do not go together: use one of them", notation.List(chosen))
	case chosen[0] == "--copies" && (v.copies < 1 || v.copies > mostCopies):
		return usageFault(cmd, "--copies cannot be %d: it is from 1 to %d", v.copies, mostCopies)
	case v.code != "" && cmd.Flags().Changed("seed"):
		return usageFault(cmd, "a code says all of its numbers: --seed has no effect with --code")
	}
	return nil
}

// warnText tells of numbers in the text that stay what they are in all copies.
func (v varying) warnText(cmd *cobra.Command, p *problems.Problem) {
	if n := p.PlainNumber(); n != "" {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: The text has the number %s, which is the same in all copies; where it should change, write {h} for the given number h.\n", n)
	}
}

// job is the copies that are wanted.
func (v varying) job(cmd *cobra.Command, source variant.Source) (variant.Job, error) {
	job := variant.Job{Source: source, Wishes: variant.Numbered(v.copies), Distinct: true}
	if v.roster != "" {
		file, err := os.Open(v.roster)
		if err != nil {
			return job, fmt.Errorf("unpin: %s cannot be read: %w", v.roster, plainReason(err))
		}
		defer file.Close()
		roster, err := variant.ReadRoster(v.roster, file)
		if err != nil {
			return job, err
		}
		if len(roster.Ignored) > 0 {
			fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s: passed over, for they mean nothing here: %s.\n", v.roster, notation.List(roster.Ignored))
		}
		job.Wishes, job.Distinct = roster.Wishes(), false
	}
	job.Progress = progress(cmd, "copies found", len(job.Wishes))
	return job, nil
}

// again writes the copy of a code.
func (v varying) again(cmd *cobra.Command, maker *variant.Maker, source variant.Source) error {
	_, draw, err := source.Decode(v.code)
	if err != nil {
		return usageFault(cmd, "%v", err)
	}
	p, err := maker.At(draw)
	if err != nil {
		return fmt.Errorf("unpin: the copy of %s cannot be read: %w", v.code, err)
	}
	text := copyText(p, strings.ToUpper(v.code))
	if v.folder == "" {
		_, err = io.WriteString(cmd.OutOrStdout(), text)
		return err
	}
	return v.writeAll([]wholeFile{{copyName(p, strings.ToUpper(v.code)), []byte(text)}}, nil)
}

// copyName is the name of a copy's file.
func copyName(p *problems.Problem, code string) string { return p.Name + "-" + code + ".yaml" }

// copyText is the file of a copy. Where it can have comments, one on top says which copy it is.
func copyText(p *problems.Problem, code string) string {
	text := p.Source()
	if strings.HasPrefix(strings.TrimSpace(text), "{") {
		return text
	}
	return fmt.Sprintf("# Copy %s of %s.\n%s", code, notation.Visible(p.Name), text)
}

// A wholeFile is a file to be written into a folder.
type wholeFile struct {
	name    string
	content []byte
}

// deliver writes the list of the copies, and with a folder the copies too.
func (v varying) deliver(cmd *cobra.Command, maker *variant.Maker, copies []variant.Copy) error {
	list := variant.List(maker, copies)
	if v.folder == "" {
		if _, err := io.WriteString(cmd.OutOrStdout(), notation.VisibleLines(string(list))); err != nil {
			return err
		}
	} else {
		files := make([]wholeFile, 0, len(copies)+1)
		for _, c := range copies {
			p, err := maker.At(c.Draw)
			if err != nil {
				return err
			}
			files = append(files, wholeFile{copyName(p, c.Code), []byte(copyText(p, c.Code))})
		}
		if err := v.writeAll(append(files, wholeFile{variant.ListName, list}), progress(cmd, "files written", len(copies))); err != nil {
			return err
		}
	}
	v.tell(cmd, copies)
	return nil
}

// tell says what was made.
func (v varying) tell(cmd *cobra.Command, copies []variant.Copy) {
	text, equal := fmt.Sprintf("%d copies", len(copies)), 0
	for _, c := range copies {
		if c.Equal {
			equal++
		}
	}
	if v.roster != "" {
		text += fmt.Sprintf(", %d of them with numbers that another has", equal)
	}
	if v.folder != "" {
		text += "; who has what: " + filepath.Join(v.folder, variant.ListName)
	}
	fmt.Fprintln(cmd.ErrOrStderr(), text+".")
}

// writeAll writes files into the folder, each whole or not at all. A list of other copies is not written over.
func (v varying) writeAll(files []wholeFile, done func(int)) error {
	if err := os.MkdirAll(v.folder, 0o777); err != nil {
		return fmt.Errorf("unpin: the folder %s cannot be made: %w", v.folder, plainReason(err))
	}
	last := files[len(files)-1]
	list := filepath.Join(v.folder, last.name)
	if old, err := os.ReadFile(list); err == nil && string(old) != string(last.content) && last.name == variant.ListName {
		return fmt.Errorf("unpin: %s lists other copies, which some may have already: name another folder, or remove it", list)
	}
	for i, f := range files {
		if err := deliver(f.content, filepath.Join(v.folder, f.name), nil); err != nil {
			return err
		}
		if done != nil {
			done(i + 1)
		}
	}
	return nil
}
