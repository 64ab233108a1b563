package worksheet

import (
	"fmt"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/wording"
)

// InspectBrief is what Inspect says in one line: "jetty-deck: determinate, grade 1, 4 steps, tidy".
func InspectBrief(p *problems.Problem, s *statics.Solution) string {
	d := inspection{newDocument(p, s, false)}
	if s.Count.Determinacy() != statics.Determinate {
		return fmt.Sprintf("%s: %s\n", d.p.Name, s.Count.Determinacy())
	}
	facts := []string{"determinate", fmt.Sprintf("grade %d", d.solved().Difficulty().Grade), wording.Counted(len(d.Plan), "step")}
	if untidy := d.solved().Shortcomings(); len(untidy) > 0 {
		facts = append(facts, "untidy: "+d.signs(untidy[0].Detail))
		if more := len(untidy) - 1; more > 0 {
			facts = append(facts, fmt.Sprintf("and %d more", more))
		}
	} else {
		facts = append(facts, "tidy")
	}
	hidden := 0
	all, _ := d.hidden()
	for _, h := range all {
		hidden += len(h.Slips)
	}
	if hidden > 0 {
		facts = append(facts, "hides "+wording.Counted(hidden, "mistake"))
	}
	if n := len(p.Warnings); n > 0 {
		facts = append(facts, wording.Counted(n, "warning"))
	}
	return d.p.Name + ": " + strings.Join(facts, ", ") + "\n"
}
