package variant

import (
	"crypto/sha256"
	"encoding/hex"

	"unpin/problems"
)

// Digest stands for what a problem says, whatever its title, its text, its comments and its layout are: twelve signs that
// differ where another frame, other numbers, other variations or another question stand in the file.
func Digest(p *problems.Problem) string {
	sum := sha256.Sum256([]byte(p.Content()))
	return hex.EncodeToString(sum[:6])
}
