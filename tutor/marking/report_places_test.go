package marking

import (
	"strings"
	"testing"
)

// TestReportOfCopies has three students with beams of three lengths, of which one answered a place more than is asked: the places are
// counted as one value each, and what nobody else has keeps its own name where all else is shared.
func TestReportOfCopies(t *testing.T) {
	t.Parallel()
	marks := strings.Join(Columns, ",") + "\n" +
		"a,beam,,1,\"M(AB, 0)\",0,0,right,,,1,1,\na,beam,,1,\"M(AB, 2)\",4,4,right,,,1,1,\na,beam,,1,\"V(AB, 2 after)\",4,4,right,,,1,1,\n" +
		"b,beam,,1,\"M(AB, 0)\",0,0,right,,,1,1,\nb,beam,,1,\"M(AB, 2.5)\",4,5,wrong,,,0,1,\nb,beam,,1,\"V(AB, 2.5 after)\",4,4,right,,,1,1,\n" +
		"c,beam,,1,\"M(AB, 0)\",0,,missing,,,0,1,\nc,beam,,1,\"M(AB, 3)\",4,,missing,,,0,1,\nc,beam,,1,\"V(AB, 3 after)\",4,4,right,,,1,1,\n" +
		"a,post,,1,\"M(CD, 0)\",0,0,right,,,1,1,\na,post,,1,\"M(CD, 1)\",0,0,right,,,0,0,\nb,post,,1,\"M(CD, 0)\",0,0,right,,,1,1,\n"
	r, err := ReadReport("marks.csv", strings.NewReader(marks), false)
	if err != nil {
		t.Fatal(err)
	}
	text := r.Text()
	for _, line := range []string{
		"beam: each value along the members, in the order of the answers, for copies have other lengths",
		"  M(AB, 0)               67 %      0 %             0 %     33 %",
		"  M(AB, place 2)         33 %      0 %            33 %     33 %",
		"  V(AB, place 1)        100 %      0 %             0 %      0 %",
		"post: each value along the members\n",
		"  M(CD, 1)              100 %      0 %             0 %      0 %",
		"  a in all: 4 of 4\n", "  b in all: 3 of 4\n",
	} {
		if !strings.Contains(text, line) {
			t.Errorf("%q is not in\n%s", line, text)
		}
	}
	if strings.Contains(text, "c in all") {
		t.Errorf("one paper is added up:\n%s", text)
	}
}
