package marking

import (
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"
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
func (a *Answers) checkSeal(lines []string) {
	begins, seals := 0, 0
	for i, line := range lines {
		digest, sealed := strings.CutPrefix(line, sealWord)
		if !sealed {
			continue
		}
		if digestOf(strings.Join(lines[begins:i], "\n")+"\n") != strings.TrimSpace(digest) {
			a.fault(i+1, line, "this paper is not as it was written: it was changed, or damaged on its way")
		}
		begins, seals = i+1, seals+1
	}
	if seals == 0 {
		return
	}
	if rest := strings.TrimSpace(strings.Join(lines[begins:], "")); rest != "" {
		a.fault(begins+1, lines[begins], "something stands after the end of this paper: it was changed")
	}
	if i := slices.IndexFunc(a.Papers, func(p *Paper) bool { return p.Student == "" }); i >= 0 && seals > 1 {
		a.fault(a.Papers[i].Line, lines[a.Papers[i].Line-1], "%d sealed papers stand in this file, and of some it is not said whose they are: give each its own file", seals)
	}
}

// Unsealed is a sealed paper without its digest, to be sealed otherwise.
func Unsealed(text string) string {
	if at := strings.LastIndex(text, sealWord); at >= 0 {
		return text[:at]
	}
	return text
}
