package notation

import (
	"strings"
)

// A title names a sum before its terms: ΣM_A =, ΣFx:, sum of moments about A:, M =.
var title = Pattern(`^\s*(?:(Σ|[Ss]um )[^=:]*|[MF][_ ]?\(?[\w'’]*\)?\s*)([=:])`)

// withoutTitle is a typed sum without its title, for which as many blanks stand, so that places stay what they are. An M or F
// before an equals sign is a title only where another one follows, since it may be a force; after a title = 0 may be left
// out, and is added at the end.
func withoutTitle(text string) string {
	m := title().FindStringSubmatchIndex(text)
	if m == nil {
		return text
	}
	rest, sure := text[m[1]:], m[2] >= 0 || text[m[4]:m[5]] == ":"
	if blank := strings.Trim(rest, " 0") == ""; blank || !sure && !strings.Contains(rest, "=") {
		return text
	}
	if !strings.Contains(rest, "=") {
		rest += " = 0"
	}
	return strings.Repeat(" ", m[1]) + rest
}
