// Command unpin teaches how plane frames are taken apart at their pins and solved by equilibrium. This package holds
// flags, wiring and exit codes, one file a command; all work is done by the packages below.
package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"unpin/tutor/screen"
)

func main() {
	watch()
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// The exit codes.
const (
	done  = 0
	no    = 1 // the work is sound but the answer is no
	badIn = 2 // bad use or unreadable input; endedBy has those of signals
)

// errNo ends a command whose answer is no and which has already said why.
var errNo = errors.New("the answer is no")

// run carries out one command line and returns the exit code. Results go to out, all else to errs. Where out is a pipe
// that its reader has closed, the runtime ends the program without a word, as people expect of "| head".
func run(args []string, in io.Reader, out, errs io.Writer) (code int) {
	errs = visibleWriter{errs}
	defer func() {
		if fault := recover(); fault != nil {
			fmt.Fprintf(errs, "unpin: internal error: %v (a fault of the program, whatever the input)\n", fault)
			code = badIn
		}
	}()
	root := newRoot()
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(out)
	root.SetErr(errs)
	var unhelped error
	root.SetHelpFunc(helpWith(root.HelpFunc(), &unhelped))
	var ended screen.Ended
	switch err := cmp.Or(root.Execute(), unhelped); {
	case err == nil:
		return done
	case errors.Is(err, errNo):
		return no
	case errors.As(err, &ended):
		return endedBy(ended.Signal)
	default:
		fmt.Fprintln(errs, plainError(err))
		return badIn
	}
}

// plainError is an error as it is told: one of writing to standard output says so, and not by which name the system knows it.
func plainError(err error) error {
	if path := (*fs.PathError)(nil); errors.As(err, &path) && path.Path == os.Stdout.Name() {
		return fmt.Errorf("unpin: standard output cannot be written: %w", path.Err)
	}
	return err
}
