package marking

import (
	"crypto/sha256"
	"encoding/hex"
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

// checkSeal tells of a sealed paper that is not as it was written.
func (a *Answers) checkSeal(lines []string) {
	for i, line := range lines {
		digest, sealed := strings.CutPrefix(line, sealWord)
		if !sealed {
			continue
		}
		if digestOf(strings.Join(lines[:i], "\n")+"\n") != strings.TrimSpace(digest) {
			a.fault(i+1, line, "this paper is not as it was written: it was changed, or damaged on its way")
		}
		if rest := strings.TrimSpace(strings.Join(lines[i+1:], "")); rest != "" {
			a.fault(i+2, lines[i+1], "something stands after the end of this paper: it was changed")
		}
		return
	}
}

// Unsealed is a sealed paper without its digest, to be sealed otherwise.
func Unsealed(text string) string {
	if at := strings.LastIndex(text, sealWord); at >= 0 {
		return text[:at]
	}
	return text
}
