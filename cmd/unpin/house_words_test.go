package main

import (
	"fmt"
	"io/fs"
	"path"
	"strings"
	"unicode"
	"unicode/utf8"
)

// strangers are words that say where and by what means the project was made, which is no business of its readers, in
// small letters. They are put together from pieces so that this file does not hold them.
var strangers = []string{
	"/wo" + "rk/", "/ro" + "ot/", "/ho" + "me/", "/tm" + "p/", // places on one machine
	"proxy.gol" + "ang", "sum.gol" + "ang", "gosum" + "db", // hosts of module registries
	"sess" + "ion", "sess" + "ions", "ag" + "ent", "ag" + "ents", "suba" + "gent", "sha" + "red/", "iss" + "ue #", "se" + "ed document",
}

// checkWords looks for strangers in documents, scripts, problem files and code.
func checkWords(h *house) []string {
	var complaints []string
	err := fs.WalkDir(h.files, ".", func(name string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && (name == ".git" || entry.Name() == "fuzz" || name == "cmd/unpin/testdata/house"):
			return fs.SkipDir
		case entry.IsDir() || name == "go.sum" || !wordy(name):
			return nil
		}
		text, err := fs.ReadFile(h.files, name)
		for _, word := range strangersIn(strings.ToLower(string(text))) {
			complaints = append(complaints, fmt.Sprintf("%s: %q does not belong in the project", name, word))
		}
		return err
	})
	if err != nil {
		complaints = append(complaints, err.Error())
	}
	return complaints
}

// strangersIn lists the strangers that a text in small letters holds as words of their own.
func strangersIn(text string) []string {
	var found []string
	for _, word := range strangers {
		for rest := text; ; {
			before, after, ok := strings.Cut(rest, word)
			if !ok {
				break
			}
			if !endsInLetter(before, word) && !beginsWithLetter(after, word) {
				found = append(found, word)
				break
			}
			rest = after
		}
	}
	return found
}

// endsInLetter reports whether what stands before a word that begins with a letter makes it part of a longer one.
func endsInLetter(before, word string) bool {
	last, _ := utf8.DecodeLastRuneInString(before)
	return unicode.IsLetter(rune(word[0])) && unicode.IsLetter(last)
}

// beginsWithLetter is the same for what stands after a word that ends in a letter.
func beginsWithLetter(after, word string) bool {
	first, _ := utf8.DecodeRuneInString(after)
	return unicode.IsLetter(rune(word[len(word)-1])) && unicode.IsLetter(first)
}

// wordy reports whether a file is one that people read or write.
func wordy(name string) bool {
	switch path.Ext(name) {
	case ".go", ".md", ".yaml", ".txt", ".txtar", ".json", ".svg", ".mod":
		return true
	}
	return name == ".ci/run"
}
