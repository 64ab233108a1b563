package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// giveFeedback writes a page for each student.
func (m mark) giveFeedback(cmd *cobra.Command, results []*marking.Result) error {
	if err := os.MkdirAll(m.feedback, 0o777); err != nil {
		return fmt.Errorf("unpin: the folder %s cannot be made: %w", m.feedback, plainReason(err))
	}
	pages := map[string]*strings.Builder{}
	var order []string
	for _, r := range results {
		name := pageName(r.Paper.Student)
		if pages[name] == nil {
			pages[name], order = &strings.Builder{}, append(order, name)
			fmt.Fprintln(pages[name], wording.Caution)
		}
		fmt.Fprint(pages[name], "\n", r.Text(m.tell))
	}
	for _, name := range order {
		if err := deliver([]byte(notation.VisibleLines(pages[name].String())), filepath.Join(m.feedback, name), nil); err != nil {
			return err
		}
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "%s in %s.\n", wording.Counted(len(order), "page"), m.feedback)
	return nil
}

// pageName is the name of a student's page: the id, with what no file name may have replaced.
func pageName(student string) string {
	if student == "" {
		return "paper.txt"
	}
	safe := strings.Map(func(c rune) rune {
		if strings.ContainsRune(`/\:*?"<>|.`, c) || c < ' ' {
			return '_'
		}
		return c
	}, student)
	return safe + ".txt"
}
