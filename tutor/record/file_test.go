package record_test

import (
	"path/filepath"
	"testing"

	"unpin/tutor/record"
	"unpin/tutor/record/logtest"
)

func TestFileKeeps(t *testing.T) {
	t.Parallel()
	logtest.Keeps(t, func(t testing.TB) (record.Log, func() record.Log) {
		path := filepath.Join(t.TempDir(), "new", "practice.jsonl")
		again := func() record.Log { return record.File(path) }
		return again(), again
	})
}
