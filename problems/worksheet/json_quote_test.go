package worksheet

import (
	"bytes"
	"encoding/json"
	"testing"

	"pgregory.net/rapid"
)

// A string is written as the standard library writes it, whatever is in it.
func TestQuote(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.OneOf(rapid.String(), rapid.StringMatching(`[ -~\x00-\xff"\\]{0,8}`),
			rapid.Map(rapid.SliceOfN(rapid.Byte(), 0, 4), func(b []byte) string { return string(b) })).Draw(t, "s")
		var want bytes.Buffer
		e := json.NewEncoder(&want)
		e.SetEscapeHTML(false)
		if err := e.Encode(s); err != nil {
			t.Fatal(err)
		}
		if got := quote(s) + "\n"; got != want.String() {
			t.Errorf("%q is written as %s, want %s", s, got, want.String())
		}
	})
}
