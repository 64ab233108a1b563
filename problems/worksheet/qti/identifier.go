package qti

import (
	"strconv"
	"strings"
)

// identifier is a text as a name that XML, files and platforms take: letters without marks, digits, points, strokes, a
// letter first (what of NCName, of Namespaces in XML, the names of files may have on all systems).
func identifier(text string) string {
	name := strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '.', r == '-':
			return r
		}
		return '_'
	}, text)
	for strings.Contains(name, "__") {
		name = strings.ReplaceAll(name, "__", "_")
	}
	name = strings.Trim(name, "_.")
	if name == "" || !isLetter(name[0]) {
		name = "n" + name
	}
	return name
}

func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

// unique is an identifier that is not used yet, and notes it. Names of files that differ by capitals alone are the same to
// some systems.
func unique(used map[string]bool, id string) string {
	name := id
	for n := 2; used[strings.ToLower(name)]; n++ {
		name = id + "_" + strconv.Itoa(n)
	}
	used[strings.ToLower(name)] = true
	return name
}
