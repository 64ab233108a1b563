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
