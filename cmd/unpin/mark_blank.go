package main

import (
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems/variant"
	"unpin/statics/notation"
	"unpin/tutor/marking"
)

// marksOnly are the flags that say something of marks, of which a table to be filled in has none.
var marksOnly = []string{"as", "scheme", "tell", "strict", "feedback", "override", "compare", "pages"}

// writeBlank writes the table to be filled in: once, or for each student of a roster or of a list of copies.
func (m mark) writeBlank(cmd *cobra.Command, desk *desk, args []string) error {
	if len(args) > 1 {
		return usageFault(cmd, "--blank writes a table of answers and takes none: leave out %s", args[1])
	}
	if i := slices.IndexFunc(marksOnly, cmd.Flags().Changed); i >= 0 {
		return usageFault(cmd, "--blank marks nothing: leave out --%s", marksOnly[i])
	}
	if err := notOver(cmd, m.file, append(args, m.roster, m.variants)); err != nil {
		return err
	}
	students := desk.listed
	if m.roster != "" {
		roster, err := readRoster(cmd, m.roster)
		if err != nil {
			return err
		}
		students = roster.Students
	}
	table, without := desk.blank(students)
	if len(without) > 0 {
		fmt.Fprintf(cmd.ErrOrStderr(), "without a copy in %s, and so left out: %s.\n", m.variants, notation.VisibleLines(notation.List(without)))
	}
	return deliver(table, m.file, visibleWriter{cmd.OutOrStdout()})
}

// blank is the table of answers to be filled in, by each student's own copy, and with its code, where there is a list of copies; without
// students once, with nobody's name. The second result names those of whom the list has none.
func (d *desk) blank(students []variant.Student) (table []byte, without []string) {
	if len(students) == 0 {
		students = []variant.Student{{Attempt: 1}}
	}
	again := slices.ContainsFunc(students, func(s variant.Student) bool { return s.Attempt > 1 })
	rows := [][]string{{"student", "problem", "quantity", "value"}}
	coded := len(d.handed) > 0
	if coded {
		rows[0] = append(rows[0], "code")
	}
	if again {
		rows[0] = append(rows[0], "attempt")
	}
	for _, s := range students {
		for _, t := range d.tasks {
			paper := &marking.Paper{Student: s.ID, Problem: t.problem.Name, Attempt: s.Attempt}
			_, marker, why := d.of(paper)
			if why != "" {
				without = append(without, s.ID)
				break
			}
			for _, name := range marker.Wanted() {
				row := []string{s.ID, t.problem.Name, name, ""}
				if coded {
					row = append(row, d.codeOf(paper, t))
				}
				if again {
					row = append(row, fmt.Sprint(s.Attempt))
				}
				rows = append(rows, row)
			}
		}
	}
	return variant.WriteCSV(rows), without
}
