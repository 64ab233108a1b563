package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"unpin/tutor/marking"
)

// givePage writes the page of one student.
func (o *outcome) givePage(results []*marking.Result) error {
	if err := os.MkdirAll(o.feedback, 0o777); err != nil {
		return fmt.Errorf("unpin: the folder %s cannot be made: %w", o.feedback, plainReason(err))
	}
	f := marking.Feedback{Results: results, Tell: o.tell}
	var page []byte
	switch o.as {
	case "html":
		page = []byte(f.HTML())
	case "pdf":
		var err error
		if page, err = f.PDF(); err != nil {
			return err
		}
	default:
		page = []byte(f.Text())
	}
	return deliver(page, filepath.Join(o.feedback, o.pageName(results[0].Paper.Student)), nil)
}

// pageName is the name of a student's page, of nobody else's: the id, with what no file name may have replaced.
func (o *outcome) pageName(student string) string {
	safe := strings.Map(func(c rune) rune {
		if strings.ContainsRune(`/\:*?"<>|.`, c) || c < ' ' {
			return '_'
		}
		return c
	}, student)
	if safe == "" {
		safe = "paper"
	}
	ending := map[string]string{"html": ".html", "pdf": ".pdf"}[o.as]
	if ending == "" {
		ending = ".txt"
	}
	name := safe + ending
	for n := 2; ; n++ {
		key := strings.ToLower(name) // some file systems do not tell S1 from s1
		if whose, taken := o.pages[key]; !taken || whose == student {
			o.pages[key] = student
			return name
		}
		name = fmt.Sprintf("%s-%d%s", safe, n, ending)
	}
}
