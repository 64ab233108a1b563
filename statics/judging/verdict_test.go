package judging

import (
	"testing"

	"unpin/statics/exact"
)

// The rows of the rules of judging, each against its words.
func TestJudge(t *testing.T) {
	n := exact.MustParse
	sum := []balance{{factor: n("6"), rest: n("-92"), largest: n("72"), slips: func() []exact.Num { return []exact.Num{n("8.6667")} }}}
	rows := []struct {
		typed  string
		places []int
		truth  string
		want   Verdict
	}{
		{"46/3", nil, "46/3", Exact},
		{"15.33", []int{-2}, "46/3", ToFigures},
		{"15.3", []int{-1}, "46/3", ToFigures},
		{"15.4", []int{-1}, "46/3", Rounded}, // 6 × 15.4 is 0.4 off, of 72
		{"15", []int{0}, "46/3", Wrong},      // two figures only, 2 off
		{"16.5", []int{-1}, "46/3", Wrong},   // 7 off
		{"-15.33", []int{-2}, "46/3", OtherSense},
		{"1230", []int{0, 1}, "1234.6", ToFigures},
		{"1240", []int{0, 1}, "1234.6", Wrong},
		{"0", []int{0}, "0", Exact},
	}
	for _, r := range rows {
		v := Typed{Value: n(r.typed), Written: n(r.typed), Unit: n("1"), Places: r.places}
		balances := sum
		if r.truth != "46/3" {
			balances = nil
		}
		if got := judge(v, n(r.truth), balances); got != r.want {
			t.Errorf("%s for %s: %v, want %v", r.typed, r.truth, int(got), int(r.want))
		}
	}
}

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
