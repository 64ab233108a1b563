//go:build !windows

package screen

import (
	"os"
	"os/signal"

	"golang.org/x/sys/unix"
)

// signals are those that the screen answers to.
var signals = []os.Signal{unix.SIGINT, unix.SIGTERM, unix.SIGHUP, unix.SIGQUIT, suspended, resized}

// Those of them that do not end it.
const (
	suspended = unix.SIGTSTP
	resized   = unix.SIGWINCH
)

// suspendGroup asks the whole job to rest, as the terminal does for ctrl+z where it is not held.
func suspendGroup() { unix.Kill(0, unix.SIGTSTP) }

// rest stops this process until it is told to go on, as a job at rest does. Where nobody is to tell it, as in a window of
// its own without a shell, it does not rest: a group of processes with the leader of the session in it is no shell's job.
func rest() {
	if session, err := unix.Getsid(0); err != nil || session == unix.Getpgrp() {
		return
	}
	on := make(chan os.Signal, 1)
	signal.Notify(on, unix.SIGCONT)
	defer signal.Stop(on)
	unix.Kill(os.Getpid(), unix.SIGSTOP) // not SIGTSTP: the runtime keeps that from stopping a program which has ever asked for it
	<-on
}
