package database

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io"
	"iter"
	"time"

	"unpin/tutor/record"
)

// A log is what is kept of one learner.
type log struct {
	db      *DB
	learner string
}

// Log is the log of a learner, by a name of the caller's choice.
func (db *DB) Log(learner string) record.Log { return log{db, learner} }

// How long one statement may take: a database that does not answer is told of, and stops nobody for ever. SQLite waits for another
// writer; a server answers soon or not at all.
const (
	patience       = 20 * time.Second
	patienceServer = 4 * time.Second
)

// bounded is how long a statement of the database may take.
func (db *DB) bounded() (context.Context, context.CancelFunc) {
	if db.Shared() {
		return context.WithTimeout(context.Background(), patienceServer)
	}
	return context.WithTimeout(context.Background(), patience)
}

// execute runs a statement.
func (l log) execute(statement string, values ...any) error {
	ctx, cancel := l.db.bounded()
	defer cancel()
	_, err := l.db.sql.ExecContext(ctx, l.db.places(statement), values...)
	return err
}

// Append adds a line behind all that the learner has.
func (l log) Append(line []byte) error { return l.execute(l.db.append, l.learner, string(line)) }

// page is how many lines are read at a time.
const page = 500

// Lines reads the lines by pages.
func (l log) Lines(from int64) iter.Seq2[record.Line, error] {
	return func(yield func(record.Line, error) bool) {
		for {
			lines, err := l.lines(from)
			if err != nil {
				yield(record.Line{}, err)
				return
			}
			for _, line := range lines {
				if from = line.Next; !yield(line, nil) {
					return
				}
			}
			if len(lines) < page {
				return
			}
		}
	}
}

// lines reads one page.
func (l log) lines(from int64) ([]record.Line, error) {
	ctx, cancel := l.db.bounded()
	defer cancel()
	rows, err := l.db.sql.QueryContext(ctx, l.db.places(`SELECT place, line FROM lines WHERE learner = $1 AND place >= $2 ORDER BY place LIMIT $3`), l.learner, from, page)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var all []record.Line
	for rows.Next() {
		var line record.Line
		if err := rows.Scan(&line.At, &line.Text); err != nil {
			return nil, err
		}
		line.Next = line.At + 1
		all = append(all, line)
	}
	return all, rows.Err()
}

// Note reads a text of the learner's.
func (l log) Note(name string) ([]byte, error) {
	ctx, cancel := l.db.bounded()
	defer cancel()
	var text []byte
	err := l.db.sql.QueryRowContext(ctx, l.db.places(`SELECT text FROM notes WHERE learner = $1 AND name = $2`), l.learner, name).Scan(&text)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, nil
	}
	return text, err
}

// SetNote keeps a text of the learner's.
func (l log) SetNote(name string, text []byte) error {
	if text == nil {
		return l.execute(`DELETE FROM notes WHERE learner = $1 AND name = $2`, l.learner, name)
	}
	return l.execute(`INSERT INTO notes (learner, name, text) VALUES ($1, $2, $3) ON CONFLICT (learner, name) DO UPDATE SET text = excluded.text`, l.learner, name, text)
}

// FirstNote is the text that a learner's note has, or from now on the one that is offered: whoever comes first makes it for all.
func (db *DB) FirstNote(learner, name string, offered []byte) ([]byte, error) {
	l := log{db, learner}
	if err := l.execute(`INSERT INTO notes (learner, name, text) VALUES ($1, $2, $3) ON CONFLICT (learner, name) DO NOTHING`, learner, name, offered); err != nil {
		return nil, err
	}
	return l.Note(name)
}

// Place is where a note stands, for people.
func (l log) Place(name string) string { return "the class's database, " + name + " of " + l.learner }

// Export writes every line.
func (l log) Export(to io.Writer) error {
	for line, err := range l.Lines(0) {
		if err == nil {
			_, err = fmt.Fprintf(to, "%s\n", line.Text)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// Erase removes the learner's lines.
func (l log) Erase() error {
	err := l.execute(`DELETE FROM lines WHERE learner = $1`, l.learner)
	if err == nil && l.db.erased != "" {
		err = l.execute(l.db.erased)
	}
	return err
}
