package main

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"unpin/problems/worksheet"
)

// recordSheets records the sheets of a problem and of a copy of it, the n-th that is recorded: each level on paper in turn and all of
// them as texts, keys, the table of answers, and questions for platforms. Two students stand on the roster, one with large print.
func recordSheets(r *recorder, s subject, n int) {
	var complaints bytes.Buffer
	write := func(name string, args ...string) {
		var out, errs bytes.Buffer
		if code := run(append([]string{"sheet", s.word}, args...), strings.NewReader(""), &out, &errs); code != done || errs.Len() > 0 {
			fmt.Fprintf(&complaints, "%s: exit code %d\n%s", name, code, errs.String())
		}
		if out.Len() > 0 {
			r.add("sheets/"+s.name+"/"+name, out.Bytes())
		}
	}
	for _, level := range worksheet.Levels {
		write(level+".txt", "--as", "text", "--level", level)
	}
	level, paper := worksheet.Levels[n%len(worksheet.Levels)], []string{"a4", "letter"}[n/len(worksheet.Levels)%2]
	class := []string{"--roster", "testdata/recorded-roster.csv"}
	on := func(args ...string) []string { return slices.Concat(class, args) }
	write(level+".pdf", on("--as", "pdf", "--level", level, "--paper", paper)...)
	write(level+".html", "--as", "html", "--level", level)
	write(level+".md", "--as", "markdown", "--level", level)
	write("key.pdf", on("--as", "pdf", "--key")...)
	write("key.txt", on("--as", "text", "--key")...)
	write("answers.csv", on("--table")...)
	write("questions.zip", on("--as", "qti", "--qti", questionVersions[n%2])...)
	r.add("sheets/"+s.name+"/errors.txt", complaints.Bytes())
}
