package screen

import (
	"os"
	"syscall"
)

// signals are those that the screen answers to.
var signals = []os.Signal{os.Interrupt, syscall.SIGTERM}

// Those that do not end a program do not exist here: bubbletea tells of another size.
const (
	suspended = syscall.Signal(-1)
	resized   = syscall.Signal(-2)
)

func suspendGroup() {}

func rest() {}
