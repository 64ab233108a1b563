package notation

import (
	"regexp"
	"sync"
)

// Pattern is a regular expression that is compiled when it is first used: most commands use few of them, and all would wait for them.
func Pattern(text string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(text) })
}
