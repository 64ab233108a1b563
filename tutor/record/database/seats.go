package database

import (
	"context"
	"time"
)

// A Seat is a session of a learner at one of the hosts.
type Seat struct {
	Place   int64 // of two seats of one learner that of the greater place goes on
	Ticket  string
	Learner string
	Host    string // as it is known to Beat
	Name    string // of the host, for people
}

// Absent is after what time without a beat a host counts as gone, with its seats; one that was seen at a time still to come, before the
// clock was put right, is too, until it beats again.
const Absent = 10 * time.Second

// Beat says that a host is there.
func (db *DB) Beat(ctx context.Context, host, name string) error {
	return db.do(ctx, `INSERT INTO hosts (host, name, seen) VALUES ($1, $2, `+db.now+`) ON CONFLICT (host) DO UPDATE SET name = excluded.name, seen = excluded.seen`, host, name)
}

// Depart says that a host is there no longer: itself, and all that had its name before.
func (db *DB) Depart(ctx context.Context, host, name string) error {
	if err := db.do(ctx, `DELETE FROM seats WHERE host = $1 OR host IN (SELECT host FROM hosts WHERE name = $2)`, host, name); err != nil {
		return err
	}
	return db.do(ctx, `DELETE FROM hosts WHERE host = $1 OR name = $2`, host, name)
}

// Sit seats a learner at a host, by a ticket that nobody else has.
func (db *DB) Sit(ctx context.Context, ticket, learner, host string) error {
	return db.do(ctx, `INSERT INTO seats (ticket, learner, host) VALUES ($1, $2, $3) ON CONFLICT (ticket) DO NOTHING`, ticket, learner, host)
}

// Leave gives a seat up.
func (db *DB) Leave(ctx context.Context, ticket string) error {
	return db.do(ctx, `DELETE FROM seats WHERE ticket = $1`, ticket)
}

// Hosts lists the hosts that are there, each with its name.
func (db *DB) Hosts(ctx context.Context) (map[string]string, error) {
	rows, err := db.sql.QueryContext(ctx, db.places(`SELECT host, name FROM hosts WHERE seen >= `+db.now+` - $1 AND seen <= `+db.now+` + $1`), Absent.Microseconds())
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	all := map[string]string{}
	for rows.Next() {
		var host, name string
		if err := rows.Scan(&host, &name); err != nil {
			return nil, err
		}
		all[host] = name
	}
	return all, rows.Err()
}

// Seats lists the seats at hosts that are there, of one learner or, with an empty name, of all, in the order in which they were taken.
func (db *DB) Seats(ctx context.Context, learner string) (all []Seat, err error) {
	rows, err := db.sql.QueryContext(ctx, db.places(`SELECT place, ticket, learner, seats.host, name FROM seats JOIN hosts ON hosts.host = seats.host
		WHERE seen >= `+db.now+` - $1 AND seen <= `+db.now+` + $1 AND ($2 = '' OR learner = $2) ORDER BY place`), Absent.Microseconds(), learner)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	for rows.Next() {
		var s Seat
		if err := rows.Scan(&s.Place, &s.Ticket, &s.Learner, &s.Host, &s.Name); err != nil {
			return nil, err
		}
		all = append(all, s)
	}
	return all, rows.Err()
}

// Fade removes what hosts that are gone for long have left.
func (db *DB) Fade(ctx context.Context) error {
	const long = 6 * Absent
	if err := db.do(ctx, `DELETE FROM hosts WHERE seen < `+db.now+` - $1 OR seen > `+db.now+` + $1`, long.Microseconds()); err != nil {
		return err
	}
	return db.do(ctx, `DELETE FROM seats WHERE host NOT IN (SELECT host FROM hosts)`)
}

// Now is what time it is by the clock that all hosts of the class go by: the database's, or the machine's where it is SQLite.
func (db *DB) Now(ctx context.Context) (time.Time, error) {
	var now int64
	err := db.sql.QueryRowContext(ctx, `SELECT `+db.now).Scan(&now)
	return time.UnixMicro(now), err
}

// do runs a statement.
func (db *DB) do(ctx context.Context, statement string, values ...any) error {
	_, err := db.sql.ExecContext(ctx, db.places(statement), values...)
	return err
}
