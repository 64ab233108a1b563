// Package database keeps what a class does in one database, for one host or several: SQLite in a file, or PostgreSQL. Each learner
// has a log of their own in it (record.Log), which no other learner's log reaches.
//
// # Tables
//
//	lines   place, learner, line: what record.Store adds, in its order; the line as it would stand in a file
//	notes   learner, name, text: short texts beside them
//	hosts   host, name, seen: the hosts of the class, each as it starts, and when it was last there, by the database's clock
//	seats   place, ticket, learner, host: the sessions in hand; of two of one learner the later one goes on
//	schema_version  version: how far the tables were brought, see migrations
//
// Places of one learner grow in the order in which lines become visible, so that a reader that goes on from where it was misses none:
// SQLite has one writer at a time, and in PostgreSQL a learner's writers wait for each other.
package database
