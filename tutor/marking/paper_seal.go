package marking

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// sealWord begins the last line of a sealed paper.
const sealWord = "# digest: "

// Seal adds to a paper in lines the digest of what stands in it, so that damage shows. It keeps nobody from writing another.
func Seal(text string) string { return text + sealWord + digestOf(text) + "\n" }

func digestOf(text string) string {
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:8])
}

// checkSeal tells of sealed papers that are not as they were written; several may stand one after the other.
// Those that name no student are kept apart by a name of their own, after the file.
func (a *Answers) checkSeal(name string, lines []string) {
	begins, seals := 0, 0
	for i, line := range lines {
		digest, sealed := strings.CutPrefix(line, sealWord)
		if !sealed {
			continue
		}
		if digestOf(strings.Join(lines[begins:i], "\n")+"\n") != strings.TrimSpace(digest) {
			a.fault(i+1, line, "this paper is not as it was written: it was changed, or damaged on its way")
		}
		seals++
		for _, p := range a.Papers {
			if p.Line > begins && p.Line <= i {
				p.seal = seals
			}
		}
		begins = i + 1
	}
	if seals == 0 {
		return
	}
	if rest := strings.TrimSpace(strings.Join(lines[begins:], "")); rest != "" {
		a.fault(begins+1, lines[begins], "something stands after the end of this paper: it was changed")
	}
	if seals > 1 {
		a.nameApart(name)
	}
}

// nameApart names the sealed papers of a file that name no student.
func (a *Answers) nameApart(file string) {
	file = notation.Visible(filepath.Base(file))
	var names []string
	for _, p := range a.Papers {
		if p.Student == "" && p.seal > 0 {
			p.Student = fmt.Sprintf("%s-%d", strings.TrimSuffix(file, filepath.Ext(file)), p.seal)
			if !slices.Contains(names, p.Student) {
				names = append(names, p.Student)
			}
		}
	}
	if len(names) > 0 {
		a.Notes = append(a.Notes, fmt.Sprintf("%s holds sealed papers that name no student: in their order they are called %s; to have them called otherwise, put each in a file of its own, named after the student",
			file, notation.List(names)))
	}
}

// Unsealed is a sealed paper without its digest, to be sealed otherwise.
func Unsealed(text string) string {
	if at := strings.LastIndex(text, sealWord); at >= 0 {
		return text[:at]
	}
	return text
}
