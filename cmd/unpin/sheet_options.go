package main

import (
	"errors"
	"os"
	"path/filepath"
	"strings"

	"unpin/problems/variant"
	"unpin/problems/worksheet"
	"unpin/statics/notation"
)

// sheetFormats are the ways to write sheets, keys and tables.
var sheetFormats = []string{"pdf", "html", "markdown", "text", "csv", questionsFormat}

// sheetEndings are those of files that tell the format.
var sheetEndings = map[string]string{".pdf": "pdf", ".html": "html", ".md": "markdown", ".txt": "text", ".csv": "csv", ".zip": questionsFormat}

// settle settles format and output, and refuses options that contradict each other or that would be of no effect.
func (s *sheeting) settle() error {
	for _, check := range []func() error{s.checkWho, s.checkWhat, s.settleOutput, s.settleFormat, s.checkLooks, s.checkQuestions} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

// given reports whether a flag stands on the command line.
func (s *sheeting) given(name string) bool { return s.cmd.Flags().Changed(name) }

// givenOf lists those of some flags that stand on the command line.
func (s *sheeting) givenOf(names ...string) []string {
	var all []string
	for _, name := range names {
		if s.given(name) {
			all = append(all, "--"+name)
		}
	}
	return all
}

// checkWho refuses flags that say in two ways for whom sheets are.
func (s *sheeting) checkWho() error {
	for _, apart := range [][]string{{"copies", "roster", "code"}, {"copies", "variants"}, {"seed", "variants"}, {"seed", "code"}, {"code", "each"}, {"code", "table"}} {
		if both := s.givenOf(apart...); len(both) > 1 {
			return usageFault(s.cmd, "%s do not go together: use one of them", notation.List(both))
		}
	}
	switch {
	case s.given("copies") && (s.copies < 1 || s.copies > mostCopies):
		return usageFault(s.cmd, "--copies cannot be %d: it is from 1 to %d", s.copies, mostCopies)
	case s.given("seed") && len(s.givenOf("copies", "roster")) == 0:
		return usageFault(s.cmd, "--seed is for --copies and --roster, from which numbers are drawn")
	case s.given("each") && len(s.givenOf("copies", "roster", "variants")) == 0:
		return usageFault(s.cmd, "--each is for --copies, --roster and --variants, which say for whom")
	}
	return nil
}

// checkWhat refuses flags that say in two ways what is printed.
func (s *sheeting) checkWhat() error {
	switch {
	case s.table && (s.key || s.full):
		return usageFault(s.cmd, "the table and the keys are two things: use --table or --key")
	case s.table && s.each:
		return usageFault(s.cmd, "the table is one for all: leave --each out")
	case s.given("level") && (s.key || s.full || s.table):
		return usageFault(s.cmd, "--level is for question sheets: a key and a table have all answers")
	}
	s.key = s.key || s.full
	return nil
}

// settleOutput finds out whether the output is a file or a folder.
func (s *sheeting) settleOutput() error {
	if s.output == "" || s.output == "-" {
		if s.each {
			return usageFault(s.cmd, "--each writes many files: say into which folder, -o FOLDER")
		}
		return nil
	}
	info, err := os.Stat(s.output)
	s.folder = err == nil && info.IsDir() || strings.HasSuffix(s.output, string(filepath.Separator)) || err != nil && filepath.Ext(s.output) == ""
	switch {
	case s.each && !s.folder:
		return usageFault(s.cmd, "--each writes many files: -o %s is to be a folder, a name without an ending", s.output)
	case s.folder && s.given("code"):
		return usageFault(s.cmd, "--code prints one sheet: -o %s is to be a file", s.output)
	}
	return nil
}

// settleFormat takes the format from the ending of the file where --as does not give it.
func (s *sheeting) settleFormat() error {
	ending := ""
	if !s.folder && s.output != "-" {
		ending = filepath.Ext(s.output)
	}
	named, known := sheetEndings[ending]
	switch {
	case s.format != "" && known && named != s.format:
		return usageFault(s.cmd, "-o %s is named as %s and --as says %s: leave --as out, or name the file %s", s.output, named, s.format, strings.TrimSuffix(s.output, ending)+sheetEnding(s.format))
	case s.format != "":
	case known:
		s.format = named
	case ending != "":
		return usageFault(s.cmd, "the ending %s of -o %s names no format: the endings are .pdf, .html, .md, .txt, .csv and .zip; with --as FORMAT any will do", ending, s.output)
	case s.folder:
		s.format = "pdf"
	case s.table:
		s.format = "csv"
	default:
		s.format = "text"
	}
	switch {
	case s.format == "csv" && !s.table:
		return usageFault(s.cmd, "a CSV holds the table of answers: add --table")
	case s.table && (s.format == "html" || s.format == "text" || s.format == questionsFormat):
		return usageFault(s.cmd, "the table of answers is pdf, markdown or csv, not %s", s.format)
	}
	return nil
}

// sheetEnding is the ending of a format.
func sheetEnding(format string) string {
	for ending, named := range sheetEndings {
		if named == format {
			return ending
		}
	}
	return ""
}

// checkLooks refuses options that the format does not heed.
func (s *sheeting) checkLooks() error {
	for _, name := range []string{"paper", "duplex"} {
		if s.given(name) && s.format != "pdf" {
			return usageFault(s.cmd, "--%s is for pdf, and this is %s", name, s.format)
		}
	}
	if s.table && s.given("duplex") {
		return usageFault(s.cmd, "--duplex is for sheets and keys: the table is one for all")
	}
	return nil
}

// size is the paper of who does not say otherwise.
func (s *sheeting) size() worksheet.PaperSize {
	if s.paper == worksheet.Letter.Name {
		return worksheet.Letter
	}
	return worksheet.A4
}

// sheetLevel is how much a sheet leaves to the student. The levels of a lesson that a sheet does not have are taken as the nearest.
func (s *sheeting) sheetLevel() worksheet.Level {
	word := s.level
	if word == "" {
		word = map[string]string{"": "plan", "read": "values", "gradual": "plan"}[s.setLevel]
	}
	if word == "" {
		word = s.setLevel
	}
	level, err := worksheet.ParseLevel(word)
	if err != nil {
		panic("internal error: " + err.Error()) // both lists of levels are closed
	}
	return level
}

// spare refuses to write over what is read.
func (s *sheeting) spare(reads []string) error {
	for _, more := range []string{s.roster, s.variants} {
		if more != "" {
			reads = append(reads, more)
		}
	}
	targets := []string{s.output}
	if s.folder {
		targets = nil
		for _, name := range []string{sheetsName, keysName, answersName} {
			for _, ending := range []string{sheetEnding(s.format), ".csv", ".txt"} {
				targets = append(targets, filepath.Join(s.output, name+ending))
			}
		}
	}
	for _, target := range targets {
		if target == "" || target == "-" {
			continue
		}
		if word, over := readFrom(s.cmd.InOrStdin(), target, reads); over {
			return usageFault(s.cmd, "%s would be written over %s, which is read: name another", target, word)
		}
	}
	return nil
}

// errorsOf is several errors as one, or nil.
func errorsOf(all []error) error { return errors.Join(all...) }

// listPath is where the list of who has what stands beside sheets in a folder.
func (s *sheeting) listPath() string { return filepath.Join(s.output, variant.ListName) }
