package main

import (
	"os"
	"os/signal"
	"sync"
	"syscall"
)

// fatal are the signals that end the program, with the exit codes that shells give for them: 128 and the number.
var fatal = []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP, syscall.SIGQUIT}

// endedBy is the exit code of a program that a signal has ended.
func endedBy(sig os.Signal) int {
	if number, ok := sig.(syscall.Signal); ok {
		return 128 + int(number)
	}
	return badIn
}

// watched brings the signals that end the program while it is watched.
var watched = make(chan os.Signal, 1)

// watch ends the program at a signal, with nothing half-written left behind.
func watch() {
	noticeSignals()
	go func() {
		sig := <-watched
		unfinished.remove()
		os.Exit(endedBy(sig))
	}()
}

// noticeSignals has signals come to watched. What whoever started the program has ignored, as a hangup under nohup, stays
// ignored.
func noticeSignals() {
	for _, sig := range fatal {
		if !signal.Ignored(sig) {
			signal.Notify(watched, sig)
		}
	}
}

// unwatched leaves signals to the screen while it is shown.
func unwatched(show func() error) error {
	signal.Stop(watched)
	defer noticeSignals()
	return show()
}

// unfinished are the files that are being written.
var unfinished files

// files is a set of paths that several goroutines use.
type files struct {
	lock  sync.Mutex
	paths map[string]bool
}

func (f *files) add(path string) {
	f.lock.Lock()
	defer f.lock.Unlock()
	if f.paths == nil {
		f.paths = map[string]bool{}
	}
	f.paths[path] = true
}

func (f *files) drop(path string) {
	f.lock.Lock()
	defer f.lock.Unlock()
	delete(f.paths, path)
}

// remove removes the files; what is added later stays, since the program ends.
func (f *files) remove() {
	f.lock.Lock()
	for path := range f.paths {
		os.Remove(path)
	}
}
