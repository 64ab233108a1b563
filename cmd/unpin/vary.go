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
	"unpin/problems/variant"
	"unpin/statics/notation"
)

// newVary makes other numbers for a frame.
func newVary() *cobra.Command {
	var v varying
	cmd := &cobra.Command{
		Use:   "vary PROBLEM|SET",
		Short: "Give every student other numbers.",
		Long: "Make copies of a problem with other numbers: those that its file allows under vary, or else sensible ones found for\n" +
			"it. A copy is as good as the problem: determinate, of the same plan, as hard, tidy, to scale, and no mistake is\n" +
			"hidden by its numbers. The list says who has what; with -o each copy is a problem file in the folder, and the list\n" +
			"stands beside them as variants.csv. The numbers follow from problem and code alone, whatever the version of unpin.\n\n" +
			"Of a set each student gets a copy of every problem, drawn by the set's id and seed; a set is a file that lists\n" +
			"problems: unpin help set. A roster is CSV whose first line names the columns: id, and if wanted name, group, extra, print, attempt. With\n" +
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
	m, err := meaningOf(word, cmd.InOrStdin())
	if err != nil {
		return err
	}
	if m.set != nil && cmd.Flags().Changed("seed") {
		return usageFault(cmd, "a set has its own seed: write it in %s, not --seed", word)
	}
	m.warn(cmd)
	batch, err := m.batch(v.seed)
	if err != nil {
		fmt.Fprintf(cmd.ErrOrStderr(), "unpin: %v\n", err)
		return errNo
	}
	warnTexts(cmd, m.problems())
	if v.code != "" {
		return v.again(cmd, batch)
	}
	class, err := v.class(cmd, m)
	if err != nil {
		return err
	}
	all, err := handouts(cmd, batch, class)
	if err != nil {
		return err
	}
	list := batch.List(all)
	if m.set == nil {
		list = variant.List(batch[0].Maker, firsts(all))
	}
	if err := v.deliver(cmd, batch, all, list); err != nil {
		return err
	}
	v.tell(cmd, len(all)*len(batch), batch.Equal(class, all))
	return nil
}

// firsts are the copies of handouts of one problem.
func firsts(all []variant.Handout) []variant.Copy {
	copies := make([]variant.Copy, len(all))
	for i, h := range all {
		copies[i] = h.Copies[0]
	}
	return copies
}

// handouts finds the copies of a class. That there are not enough good ones is said.
func handouts(cmd *cobra.Command, batch variant.Batch, class variant.Class) ([]variant.Handout, error) {
	var shown func(int)
	all, err := batch.Handouts(cmd.Context(), class, func(done, all int) {
		if shown == nil {
			shown = orSilent(progress(cmd, "copies found", all))
		}
		shown(done)
	})
	var short *variant.Shortage
	if errors.As(err, &short) {
		fmt.Fprintf(cmd.ErrOrStderr(), "unpin: %v\n", err)
		return nil, errNo
	}
	tellLong(cmd, batch, all)
	return all, err
}

// tellLong warns of copies whose forces have many decimals, for nothing tidier was found.
func tellLong(cmd *cobra.Command, batch variant.Batch, all []variant.Handout) {
	for i, line := range batch {
		long := 0
		for _, h := range all {
			if h.Copies[i].Long {
				long++
			}
		}
		if long > 0 {
			fmt.Fprintf(cmd.ErrOrStderr(), "warning: In %d of %s of %s a force has more than two decimals: too few sets of numbers are tidier. More values under vary would give some.\n",
				long, copiesText(len(all)), notation.Visible(line.Problem().Name))
		}
	}
}

// orSilent is the function, or one that does nothing in place of none.
func orSilent(shown func(int)) func(int) {
	if shown == nil {
		return func(int) {}
	}
	return shown
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

// class is who gets copies: those of the roster, or nobody in particular.
func (v varying) class(cmd *cobra.Command, m meaning) (variant.Class, error) {
	if v.roster == "" {
		return variant.Nobody(v.copies), nil
	}
	roster, err := readRoster(cmd, v.roster)
	if err != nil {
		return variant.Class{}, err
	}
	return classOf(cmd, m.set, roster), nil
}

// classOf is the class of a roster, for a set if there is one. Who has no group where groups have one copy is told.
func classOf(cmd *cobra.Command, set *problems.Set, roster *variant.Roster) variant.Class {
	c := variant.Class{Students: roster.Students, Groups: set != nil && set.Same == problems.Group}
	alone := 0
	for _, s := range c.Students {
		if s.Group == "" {
			alone++
		}
	}
	if c.Groups && alone > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: The set gives each group one copy, and %d of %d students are in no group: they get numbers of their own.\n", alone, len(c.Students))
	}
	return c
}

// readRoster reads the roster at a path, and names the columns that are passed over.
func readRoster(cmd *cobra.Command, path string) (*variant.Roster, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	defer file.Close()
	roster, err := variant.ReadRoster(path, file)
	if err != nil {
		return nil, err
	}
	if len(roster.Ignored) > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s: passed over, for they mean nothing here: %s.\n", path, notation.List(roster.Ignored))
	}
	return roster, nil
}

// again writes the copy of a code.
func (v varying) again(cmd *cobra.Command, batch variant.Batch) error {
	at, draw, err := batch.Decode(v.code)
	if err != nil {
		return usageFault(cmd, "%v", err)
	}
	p, err := batch[at].At(draw)
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
func (v varying) deliver(cmd *cobra.Command, batch variant.Batch, all []variant.Handout, list []byte) error {
	if v.folder == "" {
		_, err := io.WriteString(cmd.OutOrStdout(), notation.VisibleLines(string(list)))
		return err
	}
	var files []wholeFile
	for _, h := range all {
		for i, own := range h.Copies {
			p, err := batch[i].At(own.Draw)
			if err != nil {
				return err
			}
			files = append(files, wholeFile{copyName(p, own.Code), []byte(copyText(p, own.Code))})
		}
	}
	return v.writeAll(append(files, wholeFile{variant.ListName, list}), progress(cmd, "files written", len(files)))
}

// copiesText is a number of copies.
func copiesText(n int) string {
	if n == 1 {
		return "1 copy"
	}
	return fmt.Sprintf("%d copies", n)
}

// tell says what was made.
func (v varying) tell(cmd *cobra.Command, copies, equal int) {
	text := copiesText(copies)
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
