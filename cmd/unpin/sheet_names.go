package main

import (
	"fmt"
	"strings"
	"unicode"

	"unpin/problems/variant"
)

// fileNames are names for the files of students, all different, whatever their ids are.
func fileNames(all []variant.Handout) []string {
	names := make([]string, len(all))
	taken := map[string]bool{}
	for i, h := range all {
		name := studentFile(h.Student.ID)
		if h.Student.Attempt > 1 {
			name += fmt.Sprintf("-%d", h.Student.Attempt)
		}
		for n := 2; taken[strings.ToLower(name)]; n++ { // some file systems take capitals for small letters
			name = fmt.Sprintf("%s-%d", studentFile(h.Student.ID), n)
		}
		taken[strings.ToLower(name)] = true
		names[i] = name
	}
	return names
}

// studentFile is an id as the name of a file: letters, digits and some signs stay, all else becomes _. No name is hidden, or one
// that a system keeps for itself.
func studentFile(id string) string {
	name := strings.Map(func(c rune) rune {
		if unicode.IsLetter(c) || unicode.IsDigit(c) || strings.ContainsRune("-_.@+", c) {
			return c
		}
		return '_'
	}, id)
	reserved := strings.ToUpper(name)
	if len(reserved) == 4 && strings.Contains("123456789", reserved[3:]) {
		reserved = reserved[:3]
	}
	switch reserved {
	case "CON", "PRN", "AUX", "NUL", "COM", "LPT":
		return "_" + name
	}
	if name == "" || strings.HasPrefix(name, ".") || strings.HasPrefix(name, "-") || strings.HasSuffix(name, ".") {
		return "_" + name
	}
	return name
}
