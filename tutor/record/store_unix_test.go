//go:build unix

package record

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"
	"time"
)

// What is no regular file is refused at once, for reading and for writing.
func TestNotAFile(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	fifo, device := filepath.Join(dir, "fifo"), filepath.Join(dir, "device")
	if err := syscall.Mkfifo(fifo, 0o600); err != nil {
		t.Skip("no FIFO here: ", err)
	}
	if err := os.Symlink("/dev/zero", device); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{fifo, device, dir} {
		done := make(chan [2]error, 1)
		go func() {
			_, _, reading := At(path).Records()
			done <- [2]error{reading, At(path).Add(Record{Run: "a"})}
		}()
		select {
		case errs := <-done:
			if errs[0] == nil || errs[1] == nil {
				t.Errorf("%s is taken for a file: %v", path, errs)
			}
		case <-time.After(time.Minute):
			t.Fatalf("%s hangs", path)
		}
	}
}
