package database

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"net/url"
	"os"
	"strings"

	_ "github.com/jackc/pgx/v5/stdlib" // the driver pgx
	_ "modernc.org/sqlite"             // the driver sqlite

	"unpin/tutor/record"
)

// A DB is a database of practice. Several goroutines, and several programs, may use it at once.
type DB struct {
	sql *sql.DB
	dialect
	address string
}

// Open opens a database and brings its tables up to date: PostgreSQL where the address begins with postgres:// or postgresql://, else
// SQLite in the file of that name, which is made where there is none.
func Open(ctx context.Context, address string) (*DB, error) {
	d := sqlite
	source := "file:" + (&url.URL{Path: address}).EscapedPath() + "?" + sqliteSettings
	if strings.HasPrefix(address, "postgres://") || strings.HasPrefix(address, "postgresql://") {
		d, source = postgres, address
	} else if file, err := os.OpenFile(address, os.O_RDWR|os.O_CREATE, 0o600); err == nil { // SQLite itself would let others read it
		file.Close()
	}
	pool, err := sql.Open(d.driver, source)
	if err != nil {
		return nil, fmt.Errorf("the database cannot be opened: %w", err)
	}
	pool.SetMaxOpenConns(d.connections)
	pool.SetMaxIdleConns(d.connections)
	db := &DB{pool, d, address}
	if err := db.migrate(ctx); err != nil {
		return nil, errors.Join(fmt.Errorf("the database cannot be used: %w", err), pool.Close())
	}
	return db, nil
}

// Close ends the use of the database.
func (db *DB) Close() error { return db.sql.Close() }

// Learner is the store of one learner, by a name of the caller's choice.
func (db *DB) Learner(id string) *record.Store { return record.On(db.Log(id)) }

// Shared reports whether several machines may use the database.
func (db *DB) Shared() bool { return db.driver == postgres.driver }

// Learners lists those of whom something is kept, in the order of their names.
func (db *DB) Learners(ctx context.Context) ([]string, error) {
	rows, err := db.sql.QueryContext(ctx, db.places(`SELECT DISTINCT learner FROM lines ORDER BY learner`))
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var all []string
	for rows.Next() {
		var id string
		if err := rows.Scan(&id); err != nil {
			return nil, err
		}
		all = append(all, id)
	}
	return all, rows.Err()
}
