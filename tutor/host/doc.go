// Package host serves lessons to a class over SSH (RFC 4251 to 4254): nothing to install, each learner's work kept on the host.
//
// A learner is known by a key that was bound to an id of the roster, or by a personal code. A key that nobody knows yet gets no
// further than the question for a code; the right one binds it. Codes are kept as digests only.
//
// There is no shell behind a session, no forwarding and no subsystem: a session is the lesson on the screen, or, without a terminal,
// one of the words of words.go. Whatever goes wrong in one session ends that session alone.
package host
