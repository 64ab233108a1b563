// Package backup writes all that a class has into one file, while its host goes on, and fills an empty folder and store from it.
//
// # The file
//
// A tar archive (POSIX.1-1988, pax), compressed by gzip (RFC 1952):
//
//	unpin-backup.json   {"version": 1, "made": a time}
//	folder/…            the files of the class's folder, but for its database
//	notes-000001.jsonl  the short texts of the store, a line of JSON each: learner, name, text in base 64; as many parts as it takes
//	lines-000001.jsonl  what learners did: place, learner, line
//	whole.json          {"files": …, "notes": …, "lines": …, "digest": SHA-256 over the name, the length and the content of all before}
//
// All of the store is as it was at one moment, later than the reading of the files: whatever was acknowledged before the backup was
// begun is in it. Files hold the host's key and digests of codes, so they are for their owner's eyes.
package backup
