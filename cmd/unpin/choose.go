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

// choose lists the problems of the library by line and asks for one, by its number or its name. It gives "" where the
// student leaves: with quit, or at the end of input.
func choose(in *bufio.Reader, out io.Writer) (string, error) {
	names := problems.Names()
	for i, name := range names {
		p, _ := problems.Library(name)
		fmt.Fprintf(out, "%d: %s: %s\n", i+1, name, notation.ASCII(p.Title))
	}
	for {
		if _, err := fmt.Fprintln(out, "? problem [number or name]"); err != nil {
			return "", err
		}
		line, err := in.ReadString('\n')
		word := strings.ToLower(strings.TrimSpace(line))
		n, bad := strconv.Atoi(word)
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
		}
		fmt.Fprintf(out, "Type a number from 1 to %d or a name of the list, or quit.\n", len(names))
	}
}
