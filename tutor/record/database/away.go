package database

import (
	"context"
	"database/sql"
	"errors"
	"slices"

	"github.com/jackc/pgx/v5/pgconn"
	lite "modernc.org/sqlite"
)

// Away reports whether what went wrong lies with the database, which may be there again later, and not with what was asked of it.
func Away(err error) bool {
	if err == nil || errors.Is(err, sql.ErrNoRows) {
		return false
	}
	var refused *pgconn.PgError
	if errors.As(err, &refused) && len(refused.Code) == 5 {
		// Connections, resources, an operator's doing, the system, an abandoned or read-only transaction; the classes are PostgreSQL's (its manual, appendix A).
		return slices.Contains([]string{"08", "53", "57", "58", "40", "25"}, refused.Code[:2])
	}
	var fault *lite.Error
	if errors.As(err, &fault) {
		// SQLITE_BUSY, LOCKED, READONLY, IOERR, FULL, CANTOPEN (sqlite.org/rescode.html); the lowest byte is the primary code.
		return slices.Contains([]int{5, 6, 8, 10, 13, 14}, fault.Code()&0xff)
	}
	return true
}

// Alive makes sure that the database answers. Where it does not, connections at rest are given up: those to a server that went away
// without a word would each have to be waited for.
func (db *DB) Alive(ctx context.Context) error {
	var one int
	err := db.sql.QueryRowContext(ctx, `SELECT 1`).Scan(&one)
	if err != nil {
		db.sql.SetMaxIdleConns(0)
		db.sql.SetMaxIdleConns(db.connections)
	}
	return err
}

// AppendOnce adds a line behind all that a learner has, if they have none that is the same: for a line of which it is not known whether
// it came in before.
func (db *DB) AppendOnce(ctx context.Context, learner string, line []byte) error {
	var there bool
	err := db.sql.QueryRowContext(ctx, db.places(`SELECT EXISTS (SELECT 1 FROM lines WHERE learner = $1 AND line = $2)`), learner, string(line)).Scan(&there)
	if err != nil || there {
		return err
	}
	return db.do(ctx, db.append, learner, string(line))
}
