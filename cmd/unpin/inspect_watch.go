package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"
	"github.com/spf13/cobra"

	"unpin/problems/worksheet"
)

// settled is how long a file must stay as it is before it is read: an editor may write it in several goes.
const settled = 80 * time.Millisecond

// keepWatch inspects one file, and again at each save, until a signal ends the program.
func (w inspecting) keepWatch(cmd *cobra.Command, words []string) error {
	if len(words) != 1 || words[0] == "-" || fromLibrary(words[0]) {
		return usageFault(cmd, "--watch takes one problem file")
	}
	path := words[0]
	if info, err := os.Stat(path); err != nil || info.IsDir() {
		return fmt.Errorf("unpin: there is no file %s to watch", path)
	}
	ctx := cmd.Context()
	if ctx == nil {
		ctx = context.Background()
	}
	first := true
	return watchFile(ctx, path, func() {
		if !first {
			fmt.Fprintf(cmd.OutOrStdout(), "\n%s\n\n", strings.Repeat("=", 79))
		}
		first = false
		if err := w.look(cmd, path); err != nil && !errors.Is(err, errNo) {
			fmt.Fprintln(cmd.ErrOrStderr(), err)
		}
	})
}

// look inspects a file and draws its frame beside it, unless it is a set. Of what cannot be read the last figure stays.
func (w inspecting) look(cmd *cobra.Command, path string) error {
	err := w.all(cmd, []string{path})
	if err != nil && !errors.Is(err, errNo) {
		return err
	}
	if isSet(path) {
		return err // it has no figure
	}
	p, s, errRead := solved(cmd, path)
	if errRead != nil {
		return errRead
	}
	svg, errDrawn := worksheet.SVG(p, s, worksheet.Figures[0])
	if errDrawn != nil {
		return errDrawn
	}
	return errors.Join(err, deliver(svg, strings.TrimSuffix(path, filepath.Ext(path))+".svg", nil))
}

// watchFile calls a function at once, and then whenever the file at the path has been saved and stays as it is for a moment,
// until the context ends. Its folder is watched, not the file: many editors put a new file in the place of the old one.
func watchFile(ctx context.Context, path string, look func()) error {
	watcher, err := fsnotify.NewWatcher()
	if err != nil {
		return fmt.Errorf("unpin: files cannot be watched here: %w", err)
	}
	defer watcher.Close()
	if err := watcher.Add(filepath.Dir(path)); err != nil {
		return fmt.Errorf("unpin: %s cannot be watched: %w", filepath.Dir(path), plainReason(err))
	}
	look()
	still := time.NewTimer(time.Hour)
	still.Stop()
	for {
		select {
		case event := <-watcher.Events:
			if filepath.Base(event.Name) == filepath.Base(path) && event.Op&^fsnotify.Chmod != 0 {
				still.Reset(settled)
			}
		case err := <-watcher.Errors:
			return fmt.Errorf("unpin: %s cannot be watched any longer: %w", path, err)
		case <-still.C:
			look()
		case <-ctx.Done():
			return nil
		}
	}
}
