// Package answered answers in advance a question that bubbletea puts to the terminal when it is initialised, even for a
// command that shows no screen: which colour its ground has (OSC 11). The answer is of no use here, since the screen's
// colours are read on either ground; a terminal that does not reply holds the program up for five seconds, and what was
// typed meanwhile is lost.
//
// Packages that are ready are initialised in the order of their import paths (the Go specification, "Program
// initialization"; the order by paths is the toolchain's since Go 1.21). So this is a module of its own, of a name that
// comes before "github.com", and it stays one until bubbletea asks no more.
package answered

import "github.com/charmbracelet/lipgloss"

func init() { lipgloss.SetHasDarkBackground(true) }
