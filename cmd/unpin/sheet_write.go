package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"

	"unpin/problems/variant"
	"unpin/problems/worksheet"
)

// What stands in a folder: sheets, keys and answers, each as a file with the ending of its format or, one for each student, as a folder.
const (
	sheetsName  = "sheets"
	keysName    = "keys"
	answersName = "answers"
)

// paperWriters write papers in each format but PDF, whose pages are made before.
var paperWriters = map[string]func(w io.Writer, papers iter.Seq[worksheet.Paper], o worksheet.PaperOptions) error{
	"html": worksheet.PapersHTML,
	"text": worksheet.PapersText,
	"markdown": func(w io.Writer, papers iter.Seq[worksheet.Paper], o worksheet.PaperOptions) error {
		_, err := worksheet.PapersMarkdown(w, papers, o, "")
		return err
	},
}

// write writes what is asked for to where it is wanted.
func (s *sheeting) write() error {
	if s.folder {
		return s.intoFolder()
	}
	if n := len(s.handouts) * len(s.tasks); s.format == "pdf" && !s.table && n > mostOfOneFile {
		return usageFault(s.cmd, "one PDF cannot hold %d papers of %d problems: -o FOLDER parts them into several", len(s.handouts), len(s.tasks))
	}
	shown := orSilent(progress(s.cmd, "sheets written", len(s.handouts)))
	return deliverPieces(s.output, s.cmd.OutOrStdout(), func(to io.Writer) error {
		if s.table {
			return s.answers(to, s.format, shown)
		}
		s.warnText()
		return s.document(to, s.format, s.key, s.handouts, shown)
	})
}

// warnText tells who wants a text where one file holds the sheets of all.
func (s *sheeting) warnText() {
	for _, h := range s.handouts {
		if s.wantsText(h) {
			fmt.Fprintf(s.cmd.ErrOrStderr(), "warning: %s is to have a text, and the file holds the sheets of all as %s: -o FOLDER makes one beside them.\n", h.Student.ID, s.format)
			return
		}
	}
}

// document writes the papers of handouts as one document.
func (s *sheeting) document(to io.Writer, format string, key bool, all []variant.Handout, shown func(int)) error {
	if format == questionsFormat {
		return s.questions(to, all, shown)
	}
	var fault error
	o := worksheet.PaperOptions{Key: key, Full: s.full, Duplex: s.duplex}
	if format == "pdf" {
		press := worksheet.NewPress(o, runtime.GOMAXPROCS(0))
		err := worksheet.PagesPDF(to, papersAs(s, all, &fault, shown, press.Pages))
		return errors.Join(fault, err)
	}
	same := func(p worksheet.Paper) worksheet.Paper { return p }
	err := paperWriters[format](to, papersAs(s, all, &fault, shown, same), o)
	return errors.Join(fault, err)
}

// A part is one thing that is written into a folder.
type part struct {
	name  string
	write func(shown func(int)) error
}

// intoFolder writes into a folder all that is asked for: sheets, keys and the table at once, then the list of who has what.
func (s *sheeting) intoFolder() error {
	if err := os.MkdirAll(s.output, 0o777); err != nil {
		return fmt.Errorf("unpin: the folder %s cannot be made: %w", s.output, plainReason(err))
	}
	parts := s.parts()
	shown := s.together(len(parts))
	faults := make([]error, len(parts))
	var all sync.WaitGroup
	for i, p := range parts {
		all.Go(func() { faults[i] = p.write(shown) })
	}
	all.Wait()
	if s.list != nil {
		faults = append(faults, deliver(s.list, s.listPath(), nil))
	}
	if err := errorsOf(faults); err != nil {
		return err
	}
	fmt.Fprintf(s.cmd.ErrOrStderr(), "%s: %s.\n", s.output, s.madeText(parts))
	return nil
}

// together shows the progress of several parts as one.
func (s *sheeting) together(parts int) func(int) {
	shown := orSilent(progress(s.cmd, "pieces written", parts*len(s.handouts)))
	var lock sync.Mutex
	done := 0
	return func(int) {
		lock.Lock()
		defer lock.Unlock()
		done++
		shown(done)
	}
}

// madeText says what stands in the folder.
func (s *sheeting) madeText(parts []part) string {
	text := fmt.Sprintf("%d papers", len(s.handouts))
	for i, p := range parts {
		text += map[bool]string{true: ": ", false: ", "}[i == 0] + p.name
	}
	if s.list != nil {
		text += "; who has what: " + variant.ListName
	}
	return text
}

// parts are what is written into a folder: what the flags name, or all of it.
func (s *sheeting) parts() []part {
	all := !s.key && !s.table
	var parts []part
	if all {
		parts = append(parts, s.papersPart(sheetsName, false))
	}
	if all && s.format != questionsFormat || s.key {
		parts = append(parts, s.papersPart(keysName, true))
	}
	if all || s.table {
		format := s.format
		if all {
			format = "csv"
		}
		name := answersName + sheetEnding(format)
		parts = append(parts, part{name, func(shown func(int)) error {
			return deliverPieces(filepath.Join(s.output, name), nil, func(to io.Writer) error { return s.answers(to, format, shown) })
		}})
	}
	return parts
}

// papersPart is the sheets or the keys: one file, or a folder with one for each student.
func (s *sheeting) papersPart(name string, key bool) part {
	if s.each {
		return part{name, func(shown func(int)) error { return s.eachInto(filepath.Join(s.output, name), key, shown) }}
	}
	printed, texts := s.printed()
	volumes := s.volumes(printed)
	names := volumeNames(name, sheetEnding(s.format), len(volumes))
	if len(texts) > 0 {
		volumes, names = append(volumes, texts), append(names, name+".txt")
	}
	return part{strings.Join(names, ", "), func(shown func(int)) error {
		var faults []error
		for i, all := range volumes {
			format := s.format
			if len(texts) > 0 && i == len(volumes)-1 {
				format = "text"
			}
			faults = append(faults, deliverPieces(filepath.Join(s.output, names[i]), nil, func(to io.Writer) error {
				return s.document(to, format, key, all, shown)
			}))
		}
		return errorsOf(faults)
	}}
}

// wantsText reports whether who has a handout is to have it as a text, and not in the format of all others. Questions for a
// platform are texts as they are.
func (s *sheeting) wantsText(h variant.Handout) bool {
	return h.Student.Print == "text" && s.format != "text" && s.format != questionsFormat
}

// printed parts the handouts into those on paper and those that are wanted as a text.
func (s *sheeting) printed() (printed, texts []variant.Handout) {
	for _, h := range s.handouts {
		if s.wantsText(h) {
			texts = append(texts, h)
		} else {
			printed = append(printed, h)
		}
	}
	return printed, texts
}

// mostToldFiles is how many files that cannot be written are told by name.
const mostToldFiles = 3

// eachInto writes a file for each student into a folder. One that cannot be written does not stop the others.
func (s *sheeting) eachInto(folder string, key bool, shown func(int)) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return fmt.Errorf("unpin: the folder %s cannot be made: %w", folder, plainReason(err))
	}
	names := fileNames(s.handouts)
	type made struct {
		place   int
		ending  string
		content []byte
		err     error
	}
	var faults []error
	failed := 0
	err := inOrder(len(s.handouts), never, func(i int) made {
		h, format := s.handouts[i], s.format
		if s.wantsText(h) {
			format = "text"
		}
		var out bytes.Buffer
		err := s.document(&out, format, key, []variant.Handout{h}, func(int) {})
		return made{i, sheetEnding(format), out.Bytes(), err}
	}, func(m made) error {
		if m.err == nil {
			m.err = deliver(m.content, filepath.Join(folder, names[m.place]+m.ending), nil)
		}
		if m.err != nil {
			if failed++; failed <= mostToldFiles {
				faults = append(faults, m.err)
			}
		}
		shown(m.place + 1)
		return nil
	})
	if failed > mostToldFiles {
		faults = append(faults, fmt.Errorf("unpin: and %d more files of %d", failed-mostToldFiles, len(s.handouts)))
	}
	return errors.Join(err, errorsOf(faults))
}
