package main

import (
	"errors"
	"strconv"
)

// An ordinal is a flag whose value is a number from 1; 0 is none.
type ordinal int

// Set takes a whole number from 1.
func (n *ordinal) Set(word string) error {
	v, err := strconv.Atoi(word)
	if err != nil || v < 1 {
		return errors.New("it is a whole number from 1")
	}
	*n = ordinal(v)
	return nil
}

// String is the number, or nothing.
func (n *ordinal) String() string {
	if *n == 0 {
		return ""
	}
	return strconv.Itoa(int(*n))
}

// Type is how help names the value.
func (n *ordinal) Type() string { return "number" }
