package kept

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// spill is a file of lines that wait.
type spill struct{ path string }

// The names of these files.
const (
	pathBegins = "waiting-"
	pathEnds   = ".jsonl"
)

// pathOf is the file of a host.
func pathOf(folder, host string) string { return filepath.Join(folder, pathBegins+host+pathEnds) }

// add writes one, and waits until it is on the disk.
func (s spill) add(one waiting) error {
	text, err := json.Marshal(one)
	if err != nil {
		return err
	}
	file, err := os.OpenFile(s.path, os.O_WRONLY|os.O_APPEND|os.O_CREATE, 0o600)
	if err != nil {
		return err
	}
	before, err := file.Seek(0, io.SeekEnd)
	if err == nil {
		_, err = file.Write(append(text, '\n'))
	}
	if err = errors.Join(err, file.Sync()); err != nil {
		err = errors.Join(err, file.Truncate(before)) // a line that is told to be lost must not come in later
	}
	return errors.Join(err, file.Close())
}

// empty removes the file.
func (s spill) empty() error {
	if err := os.Remove(s.path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}

// read reads what waits.
func (s spill) read() (all []waiting, err error) {
	file, err := os.Open(s.path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	in := bufio.NewReader(file)
	for {
		line, err := in.ReadBytes('\n')
		if errors.Is(err, io.EOF) {
			return all, nil // what has no end was never acknowledged
		}
		if err != nil {
			return nil, err
		}
		var one waiting
		if json.Unmarshal(bytes.TrimSpace(line), &one) == nil {
			all = append(all, one)
		}
	}
}

// TakeUp puts into the base what other hosts have left in the folder. A file is removed where its host is not among those that are there:
// the others go on with theirs. It returns how many lines there were.
func (k *Keeper) TakeUp(ctx context.Context, there func(host string) bool) (lines int, err error) {
	found, err := filepath.Glob(filepath.Join(escaped(filepath.Dir(k.spill.path)), pathBegins+"*"+pathEnds))
	if err != nil {
		return 0, err
	}
	for _, path := range found {
		host := strings.TrimSuffix(strings.TrimPrefix(filepath.Base(path), pathBegins), pathEnds)
		if path == k.spill.path || there(host) {
			continue
		}
		all, err := spill{path}.read()
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		for _, one := range all {
			if err == nil {
				err = k.put(ctx, one)
			}
		}
		if err == nil {
			err = spill{path}.empty()
		}
		if err != nil {
			return lines, err
		}
		lines += len(all)
	}
	return lines, nil
}

// escaped is a folder's name in a pattern.
func escaped(folder string) string {
	return strings.NewReplacer(`\`, `\\`, `*`, `\*`, `?`, `\?`, `[`, `\[`).Replace(folder)
}
