package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// tally counts what became of every line typed.
type tally struct {
	frames   int
	count    map[[2]string]int
	tries    []*tried
	refused  []*tried
	honests  int
	accepted []*tried       // N, V and M beyond what rounding reaches
	strange  map[string]int // what this check could not work
}

func newTally() *tally { return &tally{count: map[[2]string]int{}, strange: map[string]int{}} }

func (t *tally) typed(level, kind string) int { return t.count[[2]string{level, kind}] }

func (t *tally) note(tr *tried) {
	t.count[[2]string{tr.level, tr.kind}]++
	t.tries = append(t.tries, tr)
}

func (t *tally) honest(ok bool, tr *tried) {
	t.honests++
	if !ok {
		t.refused = append(t.refused, tr)
	}
}

func (t *tally) lost(what string) { t.strange[what]++ }

// outside notes that the line typed last, beyond what rounding reaches, was accepted.
func (t *tally) outside() { t.accepted = append(t.accepted, t.tries[len(t.tries)-1]) }

// unmet tells replies that may have been other ones in a lesson without the lines before.
func (t *tally) unmet(tr *tried) bool {
	o := judge(tr)
	return o == falseStory || o == otherTerm || o == alike || o == broad && repeated.MatchString(tr.reply)
}

var repeated = words(`another look`, `[Tt]ype hint`)

// again is a command that makes a try once more.
func (tr *tried) again() string {
	lines := ""
	for _, l := range append(tr.accepted, tr.typed) {
		lines += " '" + l + "'"
	}
	return fmt.Sprintf("printf '%%s\\n'%s | unpin practise --plain --level %s %s | grep -v '^?' | tail -4", lines, tr.level, tr.file)
}

func (tr *tried) text() string {
	return fmt.Sprintf("%s: %s\n%s ? %s\n> %s\n%s\n$ %s\n", tr.level, tr.kind, filepath.Base(tr.file), tr.question, tr.typed, tr.reply, tr.again())
}

// write keeps examples of what was not met, a file for each outcome, at most four of each kind and level.
func (t *tally) write(out string) error {
	texts, kept := map[string]string{"random": "", "refused": "", "outside": "", "not-worked": ""}, map[string]int{}
	for _, o := range outcomes {
		texts[strings.ReplaceAll(o, " ", "-")] = ""
	}
	for _, tr := range t.tries {
		o := judge(tr)
		if tr.kind == "random number" && (o == falseStory || o == otherTerm) {
			texts["random"] += tr.text() + "\n"
		}
		if tr.kind == "random number" || tr.kind == "beyond rounding" || o == named || o == questioned {
			continue
		}
		key := strings.Join([]string{outcomes[o], tr.level, tr.kind, tr.side}, " ")
		if kept[key]++; kept[key] <= 4 {
			texts[strings.ReplaceAll(outcomes[o], " ", "-")] += tr.text() + "\n"
		}
	}
	for _, tr := range t.refused {
		texts["refused"] += tr.text() + "\n"
	}
	for _, tr := range t.accepted {
		texts["outside"] += tr.text() + "\n"
	}
	for _, what := range sorted(t.strange) {
		texts["not-worked"] += fmt.Sprintf("%d × %s\n", t.strange[what], what)
	}
	var replies strings.Builder
	for _, tr := range t.tries {
		fmt.Fprintln(&replies, strings.Join([]string{outcomes[judge(tr)], tr.level, tr.kind, tr.question, tr.typed, tr.reply, filepath.Base(tr.file)}, "\t"))
	}
	texts["replies"] = replies.String()
	for name, text := range texts { // an empty file takes the place of one from an earlier run
		if err := os.WriteFile(filepath.Join(out, name+".txt"), []byte(text), 0o644); err != nil {
			return err
		}
	}
	return nil
}
