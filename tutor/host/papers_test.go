package host

import (
	"crypto/ed25519"
	"strings"
	"testing"

	"golang.org/x/crypto/ssh"

	"unpin/tutor/marking"
)

// Any byte of signed papers that is changed, taken out or added shows; so does another key.
func TestSignedPapers(t *testing.T) {
	t.Parallel()
	seed := make([]byte, ed25519.SeedSize)
	key := ed25519.NewKeyFromSeed(seed)
	public := key.Public().(ed25519.PublicKey)
	text := sign("student: s001\nproblem: a\nCy = 9.5\n", key) + sign("student: s002\nproblem: a\n", key)
	if n, err := Verify(text, public); n != 2 || err != nil {
		t.Fatal(n, err)
	}
	for i := range text {
		for _, other := range []string{
			text[:i] + string(text[i]^1) + text[i+1:], text[:i] + string(text[i]^0x20) + text[i+1:], text[:i] + text[i+1:], text[:i] + " " + text[i:], text[:i] + "\n" + text[i:],
		} {
			if other == text {
				continue
			}
			if _, err := Verify(other, public); err == nil {
				t.Fatalf("a change at byte %d does not show:\n%s", i, other)
			}
		}
		if i > 0 && i != strings.Index(text, "student: s002") {
			if _, err := Verify(text[:i], public); err == nil {
				t.Fatalf("cut at byte %d does not show", i)
			}
		}
	}
	seed[0] = 1
	if _, err := Verify(text, ed25519.NewKeyFromSeed(seed).Public().(ed25519.PublicKey)); err == nil {
		t.Error("another key verifies")
	}
}

// What was handed in is there for its learner and for instructors alone: signed, as mark reads it, and with the marks that report reads.
func TestResults(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	key := newKey(t)
	c := openedWith(t, t.TempDir(), []Set{anExam(t)}, now.now, ssh.FingerprintSHA256(key.PublicKey()))
	c.orders3(t, now, order{Do: openSet})
	both := func(how ssh.AuthMethod, words, typed string) (told, errs string, got int) {
		v := begin(t, c.in(t, how), false, words)
		v.types(typed)
		got = v.ends()
		return v.told.String(), v.errs.String(), got
	}
	word := func(how ssh.AuthMethod, words, typed string) (string, int) {
		told, errs, got := both(how, words, typed)
		return told + errs, got
	}
	learner, other, instructor := code(c.codes["s001"]), code(c.codes["s002"]), ssh.PublicKeys(key)
	if text, got := word(learner, "paper w3", ""); got != 1 || !strings.Contains(text, "handed nothing in") {
		t.Errorf("%d\n%s", got, text)
	}
	word(learner, "plain w3", "begin\n1\n0\n1234\n5\nhand in\nhand in\n")
	begun := begin(t, c.in(t, other), false, "plain w3")
	begun.types("begin\n")
	begun.sees("? problem")
	papers, missing, got := both(instructor, "answers w3", "")
	if got != 0 || !strings.Contains(papers, "student: s001\n") || !strings.Contains(papers, "RB = 1234\n") || strings.Contains(papers, "s002") || !strings.Contains(missing, "s003") || !strings.Contains(missing, "still writing, and not among these: s002") {
		t.Errorf("%d\n%s\n%s", got, papers, missing)
	}
	public, err := PaperKey(c.o.Data)
	if err != nil {
		t.Fatal(err)
	}
	if n, err := Verify(papers, public); n != 1 || err != nil {
		t.Errorf("%d papers: %v", n, err)
	}
	read, err := marking.ReadAnswers("papers", strings.NewReader(papers))
	if err != nil || len(read.Faults) > 0 || len(read.Papers) != 2 || read.Papers[0].Code == "" || read.Papers[0].Problem != "jetty-deck" {
		t.Errorf("%+v %v", read, err)
	}
	if own, _, got := both(learner, "paper w3", ""); got != 0 || own != papers {
		t.Errorf("%d\n%s", got, own)
	}
	begun.types("hand in\nhand in\n")
	begun.ends()
	marks, _, _ := both(instructor, "marks w3", "")
	report, err := marking.ReadReport("marks.csv", strings.NewReader(marks), false)
	if err != nil || report.Papers != 4 || !strings.Contains(marks, "s001,jetty-deck,"+read.Papers[0].Code+",1,RB,") {
		t.Errorf("%v\n%s", err, marks)
	}
	for _, words := range []string{"answers w3 --csv", "marks w3 --json", "marks w3 --text"} {
		if text, got := word(instructor, words, ""); got != 0 || !strings.Contains(text, "1234") && !strings.Contains(text, "s001") {
			t.Errorf("%s: %d\n%s", words, got, text)
		}
	}
	for _, words := range []string{"answers w3", "marks w3", "answers w3 --csv", "paper s001", "paper w3 s001", "paper ../w3"} {
		if text, got := word(other, words, ""); got == 0 || strings.Contains(text, "1234") {
			t.Errorf("a learner's %s: %d\n%s", words, got, text)
		}
	}
	for _, words := range []string{"answers", "answers nowhere", "marks w3 --xml", "sh", "answers w3 --csv x", "plain"} {
		if _, got := word(instructor, words, ""); got != 2 {
			t.Errorf("an instructor's %s ends with %d", words, got)
		}
	}
}

// The marks that a host tells hold the working of an exam as well, as the same papers have elsewhere.
func TestResultsOfWorking(t *testing.T) {
	t.Parallel()
	now := &setClock{at: clock(t, "10:00")}
	key := newKey(t)
	c := openedWith(t, t.TempDir(), []Set{setOf(t, "w3", "minutes: 30", "level: blank", "opens: 2026-12-05T10:00+01:00")}, now.now, ssh.FingerprintSHA256(key.PublicKey()))
	c.orders3(t, now, order{Do: openSet})
	word := func(how ssh.AuthMethod, words, typed string) string {
		v := begin(t, c.in(t, how), false, words)
		v.types(typed)
		v.ends()
		return v.out.String()
	}
	word(code(c.codes["s001"]), "plain w3", "begin\n1\nABC x\nAx = 0\n0\nhand in\nhand in\n")
	marks := word(ssh.PublicKeys(key), "marks w3", "")
	for _, want := range []string{",1,body for Ax,,ABC x,right,", ",1,method for Ax,,Ax = 0,right,", ",1,terms for RB,,,missing,", ",1,check,,,missing,"} {
		if !strings.Contains(marks, want) {
			t.Errorf("no %s in\n%s", want, marks)
		}
	}
}
