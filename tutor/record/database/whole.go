package database

import (
	"context"
	"database/sql"
	"errors"
)

// A Note is a text beside the lines, with whose it is.
type Note struct {
	Learner string `json:"learner"`
	Name    string `json:"name"`
	Text    []byte `json:"text"`
}

// A Kept is a line with its place and whose it is.
type Kept struct {
	Place   int64  `json:"place"`
	Learner string `json:"learner"`
	Line    string `json:"line"`
}

// Whole goes over all that is kept, as it is at one moment, while others go on writing: the notes, then the lines by their places.
func (db *DB) Whole(ctx context.Context, note func(Note) error, line func(Kept) error) error {
	tx, err := db.sql.BeginTx(ctx, &sql.TxOptions{Isolation: db.snapshot, ReadOnly: true})
	if err != nil {
		return err
	}
	defer tx.Rollback()
	err = each(ctx, tx, `SELECT learner, name, text FROM notes ORDER BY learner, name`, func(rows *sql.Rows) error {
		var n Note
		return errors.Join(rows.Scan(&n.Learner, &n.Name, &n.Text), note(n))
	})
	if err != nil {
		return err
	}
	return each(ctx, tx, `SELECT place, learner, line FROM lines ORDER BY place`, func(rows *sql.Rows) error {
		var k Kept
		if err := rows.Scan(&k.Place, &k.Learner, &k.Line); err != nil {
			return err
		}
		return line(k)
	})
}

// each goes over the rows of a query.
func each(ctx context.Context, tx *sql.Tx, query string, take func(*sql.Rows) error) error {
	rows, err := tx.QueryContext(ctx, query)
	if err != nil {
		return err
	}
	defer rows.Close()
	for rows.Next() {
		if err := take(rows); err != nil {
			return err
		}
	}
	return rows.Err()
}

// ErrNotEmpty is that something is kept already where all is to be filled in.
var ErrNotEmpty = errors.New("it is not empty: what it holds is not written over")

// Fill puts into an empty database what another one had, whole or not at all.
func (db *DB) Fill(ctx context.Context, from func(note func(Note) error, line func(Kept) error) error) error {
	tx, err := db.sql.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer tx.Rollback()
	if db.lock != "" {
		if _, err := tx.ExecContext(ctx, db.lock); err != nil {
			return err
		}
	}
	var there bool
	if err := tx.QueryRowContext(ctx, `SELECT EXISTS (SELECT 1 FROM lines) OR EXISTS (SELECT 1 FROM notes)`).Scan(&there); err != nil {
		return err
	}
	if there {
		return ErrNotEmpty
	}
	notes, err := tx.PrepareContext(ctx, db.places(`INSERT INTO notes (learner, name, text) VALUES ($1, $2, $3)`))
	if err != nil {
		return err
	}
	lines, err := tx.PrepareContext(ctx, db.places(`INSERT INTO lines (place, learner, line) `+db.given+` VALUES ($1, $2, $3)`))
	if err != nil {
		return err
	}
	last := int64(0)
	err = from(func(n Note) error {
		_, err := notes.ExecContext(ctx, n.Learner, n.Name, n.Text)
		return err
	}, func(k Kept) error {
		last = max(last, k.Place)
		_, err := lines.ExecContext(ctx, k.Place, k.Learner, k.Line)
		return err
	})
	if err == nil && db.goOn != "" && last > 0 {
		_, err = tx.ExecContext(ctx, db.goOn, last)
	}
	if err != nil {
		return err
	}
	return tx.Commit()
}
