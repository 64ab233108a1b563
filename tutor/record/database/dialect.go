package database

import (
	"context"
	"database/sql"
	"fmt"
	"strings"
)

// A dialect is what one kind of database wants otherwise.
type dialect struct {
	driver      string
	connections int
	question    bool   // parameters are ?1, not $1
	lock        string // held to the end of the transaction: one program at a time brings the tables up to date
	append      string
	erased      string             // run after lines were erased, so that no copy of them is left in the file; or empty
	now         string             // the clock, in microseconds since 1970
	snapshot    sql.IsolationLevel // of a transaction that reads all as it is at one moment
	given       string             // in an INSERT that gives the places of lines
	goOn        string             // has places go on behind one
	migrations  []string           // each brings the tables from the version that is its index to the next
}

// sqliteSettings: several programs may read while one writes; a writer waits for another; what was added is on the disk, and what was
// erased is not. A reader that might write asks for that at once, so that two do not wait for each other.
const sqliteSettings = "_pragma=busy_timeout(10000)&_pragma=journal_mode(WAL)&_pragma=synchronous(FULL)&_pragma=secure_delete(1)&_txlock=immediate"

var sqlite = dialect{
	driver:      "sqlite",
	connections: 4,
	question:    true,
	append:      `INSERT INTO lines (learner, line) VALUES ($1, $2)`,
	erased:      `PRAGMA wal_checkpoint(TRUNCATE)`,
	now:         `CAST(unixepoch('subsec') * 1000000 AS INTEGER)`,
	migrations: []string{`
		CREATE TABLE lines (place INTEGER PRIMARY KEY AUTOINCREMENT, learner TEXT NOT NULL, line TEXT NOT NULL);
		CREATE INDEX lines_of ON lines (learner, place);
		CREATE TABLE notes (learner TEXT NOT NULL, name TEXT NOT NULL, text BLOB NOT NULL, PRIMARY KEY (learner, name))`, `
		CREATE TABLE hosts (host TEXT PRIMARY KEY, name TEXT NOT NULL, seen INTEGER NOT NULL);
		CREATE TABLE seats (place INTEGER PRIMARY KEY AUTOINCREMENT, ticket TEXT NOT NULL UNIQUE, learner TEXT NOT NULL, host TEXT NOT NULL)`},
}

var postgres = dialect{
	driver:      "pgx",
	connections: 16,
	lock:        `SELECT pg_advisory_xact_lock(7042026)`,
	append: `WITH alone AS MATERIALIZED (SELECT pg_advisory_xact_lock(hashtextextended($1, 7042026)) AS held)
		INSERT INTO lines (learner, line) SELECT $1, $2 FROM alone WHERE held IS NOT NULL`,
	snapshot: sql.LevelRepeatableRead,
	given:    `OVERRIDING SYSTEM VALUE`,
	goOn:     `SELECT setval(pg_get_serial_sequence('lines', 'place'), $1)`,
	now:      `CAST(extract(epoch FROM clock_timestamp()) * 1000000 AS BIGINT)`,
	migrations: []string{`
		CREATE TABLE lines (place BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY, learner TEXT NOT NULL, line TEXT NOT NULL);
		CREATE INDEX lines_of ON lines (learner, place);
		CREATE TABLE notes (learner TEXT NOT NULL, name TEXT NOT NULL, text BYTEA NOT NULL, PRIMARY KEY (learner, name))`, `
		CREATE TABLE hosts (host TEXT PRIMARY KEY, name TEXT NOT NULL, seen BIGINT NOT NULL);
		CREATE TABLE seats (place BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY, ticket TEXT NOT NULL UNIQUE, learner TEXT NOT NULL, host TEXT NOT NULL)`},
}

// places is a statement with the parameters as the dialect has them.
func (d dialect) places(statement string) string {
	if d.question {
		return strings.ReplaceAll(statement, "$", "?")
	}
	return statement
}

// migrate brings the tables up to date, whole or not at all.
func (db *DB) migrate(ctx context.Context) error {
	tx, err := db.sql.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer tx.Rollback()
	var version int
	for _, statement := range []string{db.lock, `CREATE TABLE IF NOT EXISTS schema_version (version INTEGER NOT NULL)`} {
		if statement == "" {
			continue
		}
		if _, err := tx.ExecContext(ctx, statement); err != nil {
			return err
		}
	}
	if err := tx.QueryRowContext(ctx, `SELECT COALESCE(MAX(version), 0) FROM schema_version`).Scan(&version); err != nil {
		return err
	}
	if version > len(db.migrations) {
		return fmt.Errorf("its tables are of version %d, from a newer version of unpin: this one knows %d", version, len(db.migrations))
	}
	for ; version < len(db.migrations); version++ {
		if _, err := tx.ExecContext(ctx, db.migrations[version]); err != nil {
			return err
		}
		if _, err := tx.ExecContext(ctx, db.places(`INSERT INTO schema_version (version) VALUES ($1)`), version+1); err != nil {
			return err
		}
	}
	return tx.Commit()
}
