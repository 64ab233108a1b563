package database

import (
	"context"
	"time"

	"github.com/jackc/pgx/v5"
)

// An Added is a line with whose it is.
type Added struct {
	Place   int64
	Learner string
	Line    []byte
}

// Since lists up to so many lines of all learners behind a place, in the order of their places. In PostgreSQL a line may become visible
// after one of another learner with a greater place; who follows reads some again.
func (db *DB) Since(ctx context.Context, place int64, most int) (all []Added, err error) {
	rows, err := db.sql.QueryContext(ctx, db.places(`SELECT place, learner, line FROM lines WHERE place > $1 ORDER BY place LIMIT $2`), place, most)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	for rows.Next() {
		var a Added
		if err := rows.Scan(&a.Place, &a.Learner, &a.Line); err != nil {
			return nil, err
		}
		all = append(all, a)
	}
	return all, rows.Err()
}

// Last is the place of the last line of all.
func (db *DB) Last(ctx context.Context) (place int64, err error) {
	err = db.sql.QueryRowContext(ctx, `SELECT COALESCE(MAX(place), 0) FROM lines`).Scan(&place)
	return place, err
}

// channel is where hosts tell each other that there is something new.
const channel = "unpin"

// Tell tells all who listen that something has changed, and by whom. What it is they read: a notice that is missed costs no more than time.
func (db *DB) Tell(ctx context.Context, by string) error {
	if !db.Shared() {
		return nil
	}
	return db.do(ctx, `SELECT pg_notify($1, $2)`, channel, by)
}

// How long a listener waits for a notice before it makes sure that its connection stands, and before it connects anew.
const (
	quiet  = 20 * time.Second
	paused = time.Second
)

// Listen calls heard with who told something, until the context ends; with nobody after each time that it could not listen. With SQLite
// nothing is told.
func (db *DB) Listen(ctx context.Context, heard func(by string)) {
	for db.Shared() && ctx.Err() == nil {
		db.listen(ctx, heard)
		select {
		case <-ctx.Done():
		case <-time.After(paused):
		}
	}
}

// listen listens as long as a connection stands.
func (db *DB) listen(ctx context.Context, heard func(by string)) {
	dialling, cancel := context.WithTimeout(ctx, patience)
	defer cancel()
	conn, err := pgx.Connect(dialling, db.address)
	if err != nil {
		return
	}
	defer conn.Close(dialling)
	if _, err := conn.Exec(dialling, "LISTEN "+channel); err != nil {
		return
	}
	heard("")
	for ctx.Err() == nil {
		waiting, cancel := context.WithTimeout(ctx, quiet)
		note, err := conn.WaitForNotification(waiting)
		late := waiting.Err() != nil
		cancel()
		switch {
		case err == nil:
			heard(note.Payload)
		case !late || ping(ctx, conn) != nil:
			return
		}
	}
}

// ping makes sure that a connection stands.
func ping(ctx context.Context, conn *pgx.Conn) error {
	short, cancel := context.WithTimeout(ctx, patience/4)
	defer cancel()
	return conn.Ping(short)
}
