package main

import "strings"

// A document is a Markdown file reduced to what can be checked.
type document struct {
	name   string
	blocks []block
	spans  []span
}

// A block is a fenced block of code.
type block struct {
	line  int // of its first line of content, from 1
	info  string
	lines []string
}

// A span is code within a line of text.
type span struct {
	line int
	text string
}

// readMarkdown finds the fenced blocks and the code spans of a file.
func readMarkdown(name, text string) document {
	d := document{name: name}
	var open *block
	for i, line := range strings.Split(text, "\n") {
		fence, isFence := strings.CutPrefix(line, "```")
		switch {
		case isFence && open == nil:
			open = &block{line: i + 2, info: fence}
		case isFence:
			d.blocks = append(d.blocks, *open)
			open = nil
		case open != nil:
			open.lines = append(open.lines, line)
		default:
			for n, piece := range strings.Split(line, "`") {
				if n%2 == 1 {
					d.spans = append(d.spans, span{i + 1, piece})
				}
			}
		}
	}
	return d
}
