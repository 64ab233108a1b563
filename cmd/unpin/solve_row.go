package main

import (
	"io"
	"strings"

	"unpin/problems/worksheet"
	"unpin/statics/notation"
)

// inRow reports whether the solutions of several problems stand one after the other, so that each can be written and
// forgotten. A page for a browser and a printed document tell at their head how many there are; pictures of Markdown are
// named apart.
func (w writing) inRow() bool {
	return w.format == "text" || w.format == "json" || w.format == "markdown" && w.pictures == ""
}

// oneByOne writes each solution as soon as it is found and all before it are written.
func (w writing) oneByOne(all *many) error {
	return deliverPieces(w.file, all.cmd.OutOrStdout(), func(to io.Writer) error {
		r := row{to: to}
		switch w.format {
		case "text":
			r.between = "\n\n"
		case "markdown":
			r.between = "\n"
		case "json":
			r.between, r.open, r.close, r.end = ",\n", "[", "]", "\n"
		}
		err := all.solve(w.said, func(one worksheet.Solved, said string) error {
			warn(all.cmd, one.Problem)
			return r.add(said)
		})
		if err != nil {
			return err
		}
		return r.finish()
	})
}

// said is one solution in a format in which they stand one after the other, with nothing in it that would steer a terminal.
func (w writing) said(_ int, one worksheet.Solved) string {
	text := ""
	switch list := []worksheet.Solved{one}; w.format {
	case "json":
		text = strings.TrimSpace(string(worksheet.JSON(one.Problem, one.Solution)))
	case "markdown":
		text = worksheet.Markdown(list, w.options())
	default:
		text = worksheet.Text(list, w.options())
	}
	return notation.VisibleLines(text)
}

// A row writes texts one after the other.
type row struct {
	to                   io.Writer
	between, open, close string // open and close stand around several, not around one
	end                  string // at the end of all
	held                 string // the first, until it is known whether there are several
	count                int
}

// add writes a text as soon as what stands before it is known.
func (r *row) add(text string) error {
	r.count++
	switch {
	case r.count == 1 && r.open != "":
		r.held = text
		return nil
	case r.count == 2:
		text = r.open + r.held + r.between + text
		r.held = ""
	case r.count > 2:
		text = r.between + text
	}
	_, err := io.WriteString(r.to, text)
	return err
}

// finish writes what is still to be written; of no text at all nothing.
func (r *row) finish() error {
	text := r.held + r.end
	switch {
	case r.count == 0 || text == "":
		return nil
	case r.count > 1:
		text = r.close + r.end
	}
	_, err := io.WriteString(r.to, text)
	return err
}
