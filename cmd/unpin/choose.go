package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/statics/notation"
)

// choose lists the problems of the library by line and asks for one, by its number or its name. Other words list those that hold
// them, and an empty line lists all again. It gives "" where the student leaves: with quit, or at the end of input.
func choose(in *bufio.Reader, out io.Writer) (string, error) {
	names := problems.Names()
	listSought(out, names, problems.Search{})
	narrowed := false
	for {
		if _, err := fmt.Fprintln(out, "? problem [number, name or words]"); err != nil {
			return "", err
		}
		line, err := in.ReadString('\n')
		word := strings.ToLower(strings.TrimSpace(line))
		n, bad := strconv.Atoi(word)
		sought := problems.SearchFor(word)
		switch {
		case err != nil && !errors.Is(err, io.EOF):
			return "", err
		case word == "quit", word == "" && err != nil:
			return "", nil
		case bad == nil && n >= 1 && n <= len(names):
			return names[n-1], nil
		case slices.Contains(names, word):
			return word, nil
		case err != nil:
			return "", nil
		case bad != nil && sought.Asks():
			narrowed = listSought(out, names, sought) || narrowed
			continue
		case narrowed && word == "":
			narrowed = false
			listSought(out, names, problems.Search{})
			continue
		}
		fmt.Fprintf(out, "Type a number from 1 to %d or a name of the list, words to find some, such as bridge, grade 3 or skill couple, or quit.\n", len(names))
	}
}

// listSought lists what is sought of the problems, with their numbers in the whole list, and how many they are; it reports whether
// there are any.
func listSought(out io.Writer, names []string, sought problems.Search) bool {
	shown := 0
	for i, name := range names {
		if p, _ := problems.Library(name); sought.Fit(name, p) < problems.NoFit {
			shown++
			fmt.Fprintf(out, "%d: %s: %s\n", i+1, name, notation.ASCII(p.Title))
		}
	}
	switch {
	case shown == 0:
		fmt.Fprintln(out, "No problem holds all of that.")
	case sought.Asks():
		fmt.Fprintf(out, "%d of %d shown; an empty line shows all again.\n", shown, len(names))
	}
	return shown > 0
}
