package tutor

import (
	"strings"
	"testing"

	"unpin/statics/wording"
)

func TestReadChoice(t *testing.T) {
	t.Parallel()
	rows := []struct{ problem, line, want string }{ // want: body, sum; or a part of the error after !
		{"quay-gantry", "CD M C", "part CD, ΣM about C"},
		{"quay-gantry", "part CD: sum of moments about C = 0", "part CD, ΣM about C"},
		{"quay-gantry", "cd m c", "part CD, ΣM about C"},
		{"quay-gantry", "whole ΣM A", "the whole frame, ΣM about A"},
		{"quay-gantry", "the whole frame, x", "the whole frame, ΣFx"},
		{"quay-gantry", "BC + CD y", "parts BC and CD, ΣFy"},
		{"quay-gantry", "BC and CD, vertical forces", "parts BC and CD, ΣFy"},
		{"quay-gantry", "CD M (2, 20/3)", "part CD, ΣM about (2, 6.6667)"},
		{"quay-gantry", "CD F along [4, 3]", "part CD, ΣF along (4, 3)"},
		{"jetty-deck", "M B", "part ABC, ΣM about B"},
		{"stable-hoist", "ABCE F square to RE", "part ABCE, ΣF perpendicular to RE"},
		{"stable-hoist", "ABCE F (0.6, 0.7999999999999999999999999999999999)", "part ABCE, ΣF perpendicular to RE"},
		{"stable-hoist", "ABCE F (0.6, 0.799999)", "part ABCE, ΣF along (0.6, 0.799999)"},
		{"quay-gantry", "", "!begin with a free body"},
		{"quay-gantry", "M C", "!begin with a free body"},
		{"quay-gantry", "CD", "!after the free body"},
		{"quay-gantry", "CD M Q", "!about a joint or a point"},
		{"quay-gantry", "CD M (2", "!two numbers in brackets"},
		{"quay-gantry", "CD F along [0, 0]", "!no direction"},
		{"quay-gantry", "CD x y", "!not understood"},
	}
	for _, r := range rows {
		l := lesson(t, r.problem, Values)
		s, err := l.about.readChoice(r.line)
		st := l.about.style()
		st.ASCII = false
		got := ""
		if err != nil {
			got = "!" + err.Error()
		} else {
			got = wording.Body(l.about.solution.Assembly, s.Body) + ", " + wording.New(l.about.solution.Assembly, st).SumName(s)
		}
		if got != r.want && (r.want[0] != '!' || !strings.Contains(got, r.want[1:])) {
			t.Errorf("%s, %q: %s, want %s", r.problem, r.line, got, r.want)
		}
	}
}
