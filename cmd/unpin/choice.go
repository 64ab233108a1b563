package main

import (
	"fmt"
	"slices"
	"strings"
)

// A choice is a flag whose value is one word of a list.
type choice struct {
	value *string
	words []string
	old   map[string]string // words that stood for others before
}

// oneOf makes a flag that takes one of the words, with its default.
func oneOf(value *string, preset string, words []string) *choice {
	*value = preset
	return &choice{value: value, words: words}
}

// Set takes a word that is in the list.
func (c *choice) Set(word string) error {
	if now, old := c.old[word]; old {
		word = now
	}
	if !slices.Contains(c.words, word) {
		return fmt.Errorf("it is one of %s", strings.Join(c.words, ", "))
	}
	*c.value = word
	return nil
}

// String is the word chosen.
func (c *choice) String() string {
	if c.value == nil {
		return ""
	}
	return *c.value
}

// Type is how help names the value.
func (c *choice) Type() string { return strings.Join(c.words, "|") }

// A selection is a flag whose value is some words of a list, with commas between.
type selection struct {
	value *[]string
	words []string
}

// someOf makes a flag that takes some of the words; it is empty without.
func someOf(value *[]string, words []string) *selection { return &selection{value, words} }

// Set takes words that are in the list; a flag given again adds to them.
func (s *selection) Set(text string) error {
	for word := range strings.SplitSeq(text, ",") {
		word = strings.TrimSpace(word)
		if !slices.Contains(s.words, word) {
			if word == "" {
				return fmt.Errorf("the parts are %s, with commas between", strings.Join(s.words, ", "))
			}
			return fmt.Errorf("%s is none of %s", word, strings.Join(s.words, ", "))
		}
		*s.value = append(*s.value, word)
	}
	return nil
}

// String is the words chosen.
func (s *selection) String() string {
	if s.value == nil {
		return ""
	}
	return strings.Join(*s.value, ",")
}

// Type is how help names the value.
func (s *selection) Type() string { return "PARTS" }
