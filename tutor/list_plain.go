package tutor

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

// A Choice is a problem of a list from which one is chosen by line.
type Choice struct {
	Name    string            // by which it is chosen
	Problem *problems.Problem // nil for an exam
	Title   string            // of an exam
}

// title is what it is called.
func (c Choice) title() string {
	if c.Problem == nil {
		return c.Title
	}
	return c.Problem.Title
}

// ChooseByLine lists problems and asks for one, by its number or its name, whatever its case. Other words list those that hold them, and
// an empty line lists all again. It gives the place in the list, or -1 where the student leaves: with quit, or at the end of input.
func ChooseByLine(in *bufio.Reader, out io.Writer, all []Choice) (int, error) {
	listSought(out, all, problems.Search{})
	for narrowed := false; ; {
		if _, err := fmt.Fprintln(out, "? problem [number, name or words]"); err != nil {
			return -1, err
		}
		line, err := in.ReadString('\n')
		if err != nil && !errors.Is(err, io.EOF) {
			return -1, err
		}
		word := strings.ToLower(strings.TrimSpace(line))
		if at := meant(all, word); at >= 0 {
			return at, nil
		}
		_, bad := strconv.Atoi(word)
		switch sought := problems.SearchFor(word); {
		case err != nil, word == "quit":
			return -1, nil
		case bad != nil && sought.Asks():
			narrowed = listSought(out, all, sought) || narrowed
			continue
		case narrowed && word == "":
			narrowed = false
			listSought(out, all, problems.Search{})
			continue
		}
		fmt.Fprintf(out, "Type a number from 1 to %d or a name of the list, words to find some, such as bridge, grade 3 or skill couple, or quit.\n", len(all))
	}
}

// meant is the place that a word in small letters means by a number or a name, or -1.
func meant(all []Choice, word string) int {
	if n, err := strconv.Atoi(word); err == nil && n >= 1 && n <= len(all) {
		return n - 1
	}
	return slices.IndexFunc(all, func(l Choice) bool { return strings.ToLower(l.Name) == word })
}

// listSought lists what is sought of the problems, with their numbers in the whole list, and how many they are; it reports whether
// there are any.
func listSought(out io.Writer, all []Choice, sought problems.Search) bool {
	shown := 0
	for i, l := range all {
		if sought.Fit(l.Name, l.Problem) < problems.NoFit {
			shown++
			fmt.Fprintf(out, "%d: %s: %s\n", i+1, notation.VisibleLines(l.Name), notation.ASCII(notation.VisibleLines(l.title())))
		}
	}
	switch {
	case shown == 0 && sought.Asks():
		fmt.Fprintln(out, "No problem holds all of that.")
	case sought.Asks():
		fmt.Fprintf(out, "%d of %d shown; an empty line shows all again.\n", shown, len(all))
	}
	return shown > 0
}
