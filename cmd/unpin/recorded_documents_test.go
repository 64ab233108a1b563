package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"

	"unpin/problems/worksheet"
)

// recordDocuments records what solve and inspect write of a problem in every format. What goes to standard error, and exit
// codes other than 0, are gathered in an output of their own.
func recordDocuments(r *recorder, s subject) {
	var complaints bytes.Buffer
	write := func(name string, args ...string) bool {
		var out, errs bytes.Buffer
		code := run(args, strings.NewReader(""), &out, &errs)
		if code != done || errs.Len() > 0 {
			fmt.Fprintf(&complaints, "%s: exit code %d\n%s", name, code, errs.String())
		}
		if out.Len() > 0 {
			r.add("documents/"+s.name+"/"+name, out.Bytes())
		}
		return code == done
	}
	write("inspect.txt", "inspect", s.word)
	write("inspect.json", "inspect", "--as", "json", s.word)
	write("solve.txt", "solve", s.word)
	write("solve.md", "solve", "--as", "markdown", s.word)
	write("solve.html", "solve", "--as", "html", s.word)
	write("solve.json", "solve", "--as", "json", s.word)
	write("solve.pdf", "solve", "--as", "pdf", s.word)
	for _, figure := range worksheet.Figures {
		write(figure+".svg", "solve", "--as", "svg", "--figure", figure, s.word)
	}
	for step := 1; write(fmt.Sprintf("step-%d.svg", step), "solve", "--as", "svg", "--step", fmt.Sprint(step), s.word); {
		step++
	}
	r.add("documents/"+s.name+"/errors.txt", complaints.Bytes())
}

// partsOf names the parts of a problem's frame.
func partsOf(word string) []string {
	var out, errs bytes.Buffer
	run([]string{"solve", "--as", "json", word}, strings.NewReader(""), &out, &errs)
	var solution struct{ Parts []struct{ Name string } }
	if json.Unmarshal(out.Bytes(), &solution) != nil {
		return nil
	}
	var names []string
	for _, p := range solution.Parts {
		names = append(names, p.Name)
	}
	return names
}
