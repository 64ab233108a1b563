package host

import (
	"crypto/ed25519"
	"crypto/rand"
	"encoding/hex"
	"errors"
	"fmt"
	"strings"

	"unpin/tutor"
	"unpin/tutor/marking"
	"unpin/tutor/record"
	"unpin/tutor/record/database"
)

// Papers are signed with a key of the class (Ed25519, RFC 8032), which all its hosts have from its store: so nobody without the store
// writes one, and any change shows.

// paperKeyNote keeps the seed of the key.
const paperKeyNote = "paper key"

// signedWord begins the last line of a signed paper, before the signature of all lines before it in hexadecimal digits.
const signedWord = "# signed: "

// signedFor parts these signatures from any others that a key might make.
const signedFor = "unpin paper 1\n"

// paperKey reads the key of the class, or makes it.
func paperKey(notes record.Log) (ed25519.PrivateKey, error) {
	seed, err := notes.Note(paperKeyNote)
	if err == nil && seed == nil {
		seed = make([]byte, ed25519.SeedSize)
		rand.Read(seed)
		if err = notes.SetNote(paperKeyNote, seed); err == nil {
			seed, err = notes.Note(paperKeyNote) // of two hosts that make one at once, the later one's
		}
	}
	if err == nil && len(seed) != ed25519.SeedSize {
		err = errors.New("it is not a key")
	}
	if err != nil {
		return nil, fmt.Errorf("the key for papers cannot be read: %w", err)
	}
	return ed25519.NewKeyFromSeed(seed), nil
}

// sign ends a paper with its signature.
func sign(text string, key ed25519.PrivateKey) string {
	return text + signedWord + hex.EncodeToString(ed25519.Sign(key, []byte(signedFor+text))) + "\n"
}

// PaperKey is the key by which papers of a class are verified.
func PaperKey(data *database.DB) (ed25519.PublicKey, error) {
	key, err := paperKey(data.Log(peopleName))
	if err != nil {
		return nil, err
	}
	return key.Public().(ed25519.PublicKey), nil
}

// Verify counts the papers of a text, and says which lines are not as they were signed; every byte of the text counts.
func Verify(text string, key ed25519.PublicKey) (papers int, err error) {
	begins, line := 0, 1 // of the paper in hand: its first byte and its first line
	for at, n := 0, 1; at < len(text); n++ {
		end := strings.IndexByte(text[at:], '\n')
		if end < 0 {
			break
		}
		digits, signed := strings.CutPrefix(text[at:at+end], signedWord)
		if signed {
			signature, bad := hex.DecodeString(digits)
			if bad != nil || hex.EncodeToString(signature) != digits || !ed25519.Verify(key, []byte(signedFor+text[begins:at]), signature) {
				err = errors.Join(err, fmt.Errorf("lines %d to %d are not as the class's host signed them", line, n))
			}
			papers++
			begins, line = at+end+1, n+1
		}
		at += end + 1
	}
	if begins < len(text) || papers == 0 {
		err = errors.Join(err, fmt.Errorf("what stands from line %d on is not signed", line))
	}
	return papers, err
}

// paper is what a learner has handed in, signed; empty where there is nothing yet.
func (h exams) paper(s *set, id string) (text string, sitting *tutor.Sitting, err error) {
	at, _, err := h.stageOf(s, id)
	if err != nil || at != handedIn {
		return "", nil, err
	}
	if sitting, err = h.sit(s, id, nil, h.complain(id)); err != nil {
		return "", nil, err
	}
	text, over := tutor.PaperOfSitting(sitting)
	if !over {
		return "", nil, nil
	}
	key, err := paperKey(h.keep.Direct(peopleName))
	return sign(marking.Unsealed(text), key), sitting, err
}
