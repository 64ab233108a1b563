package judging

import "testing"

// A code leads back to its verdict, and no two verdicts have the same.
func TestCodes(t *testing.T) {
	for v := Exact; v <= Wrong; v++ {
		if got, ok := VerdictOf(v.Code()); !ok || got != v {
			t.Errorf("%q is the code of %d and of %d", v.Code(), v, got)
		}
	}
	if _, ok := VerdictOf("perfect"); ok {
		t.Error("perfect is no code")
	}
}
