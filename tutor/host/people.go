package host

import (
	"crypto/pbkdf2"
	"crypto/rand"
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"fmt"
	"strings"

	"unpin/tutor/record"
	"unpin/tutor/record/database"
)

// people knows who is who: codes and keys, each with the id of the roster that it stands for. They are kept as notes, so that
// several hosts on one database know the same.
type people struct {
	notes  record.Log
	secret []byte // makes digests of no use for another class
}

// The names of notes.
const (
	secretNote = "secret"
	codeNote   = "code " // and the digest of the code
	codeOfNote = "code of "
	keyNote    = "key " // and the key's fingerprint
)

// knownPeople reads what is kept, or begins it: once, whoever of several hosts is first.
func knownPeople(data *database.DB) (people, error) {
	secret, err := data.FirstNote(peopleName, secretNote, []byte(rand.Text()))
	if err != nil {
		return people{}, fmt.Errorf("it cannot be read who is who: %w", err)
	}
	return people{data.Log(peopleName), secret}, nil
}

// codeSigns are those of codes: none that is taken for another in print.
const codeSigns = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"

// codeLength gives 49 bits: with the limits on guessing more than anybody tries in the life of a class.
const codeLength = 10

// newCode makes a code for an id in place of its earlier one.
func (p people) newCode(id string) (string, error) {
	var b strings.Builder
	for random := make([]byte, 1); b.Len() < codeLength; {
		rand.Read(random)
		if n := int(random[0]); n < len(codeSigns)*8 { // so that all signs are equally likely
			b.WriteByte(codeSigns[n%len(codeSigns)])
		}
	}
	code := b.String()
	digest, err := p.digest(code)
	var before []byte
	if err == nil {
		before, err = p.notes.Note(codeOfNote + id)
	}
	if err == nil && before != nil {
		err = p.notes.SetNote(codeNote+string(before), nil)
	}
	if err == nil {
		err = errors.Join(p.notes.SetNote(codeNote+digest, []byte(id)), p.notes.SetNote(codeOfNote+id, []byte(digest)))
	}
	if err != nil {
		return "", fmt.Errorf("the code of %s cannot be kept: %w", id, err)
	}
	return code[:5] + "-" + code[5:], nil
}

// hasCode reports whether an id has a code.
func (p people) hasCode(id string) bool {
	digest, err := p.notes.Note(codeOfNote + id)
	return err == nil && digest != nil
}

// rounds make a guess at a code from its digest slow, and still let a class in within half a minute.
const rounds = 20_000

// digest is how a code is kept.
func (p people) digest(code string) (string, error) {
	sum, err := pbkdf2.Key(sha256.New, code, p.secret, rounds, 16)
	return base64.RawURLEncoding.EncodeToString(sum), err
}

// typedCode is a code as it is digested, whatever case and signs between it was typed with; empty where it cannot be one.
func typedCode(typed string) string {
	if len(typed) > 64 {
		return ""
	}
	var b strings.Builder
	for _, r := range strings.ToUpper(typed) {
		switch {
		case strings.ContainsRune(codeSigns, r):
			b.WriteRune(r)
		case !strings.ContainsRune(" -\t\r", r):
			return ""
		}
	}
	if b.Len() != codeLength {
		return ""
	}
	return b.String()
}

// ofCode is the id that a typed code stands for, or empty.
func (p people) ofCode(typed string) (string, error) {
	code := typedCode(typed)
	if code == "" {
		return "", nil
	}
	digest, err := p.digest(code)
	if err != nil {
		return "", err
	}
	id, err := p.notes.Note(codeNote + digest)
	return string(id), err
}

// ofKey is the id that a key is bound to, by its fingerprint; empty where it is to none.
func (p people) ofKey(fingerprint string) (string, error) {
	id, err := p.notes.Note(keyNote + fingerprint)
	return string(id), err
}

// bind binds a key to an id.
func (p people) bind(fingerprint, id string) error {
	return p.notes.SetNote(keyNote+fingerprint, []byte(id))
}
