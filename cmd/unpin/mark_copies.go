package main

import (
	"context"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// Of papers with hardly a value right so many are held against other copies, each against so many that others have.
const (
	mostLookedAt = 24
	mostHeld     = 60
)

// A misfit is a paper with hardly a value right by the numbers that it is held against.
type misfit struct {
	paper *marking.Paper
	task  *task
	own   bool // the problem's own numbers
}

// checkCopies tells of papers that are likely held against numbers that their students did not have: by the fact that some have
// codes and others not, and by what hardly fits the one numbers and does fit others.
func (m mark) checkCopies(cmd *cobra.Command, desk *desk, papers []*marking.Paper, roster *variant.Roster) {
	c := &copyCheck{desk: desk, ctx: cmd.Context(), groups: map[string]string{}, drawn: map[string]*variant.Handout{}}
	if roster != nil {
		for _, s := range roster.Students {
			c.groups[s.ID] = s.Group
		}
	}
	warnings := c.codeless(papers)
	misfits := c.misfits(papers)
	of := len(misfits)
	fits, told := c.elsewhere(misfits[:min(of, mostLookedAt)])
	warnings = append(warnings, told...)
	switch {
	case len(fits) > 0:
		least := ""
		if of > mostLookedAt {
			least = "at least "
		}
		warnings = append(warnings, fmt.Sprintf("%s%s right by the copies that are drawn for their students, not by the problem's own numbers, by which they are marked: %s. If those copies were handed out, name the list of who has which: --variants FILE.",
			least, wording.Counted(len(fits), "paper")+isAre(len(fits)), idsText(fits)))
	default:
		warnings = append(warnings, c.classes(papers, misfits)...)
	}
	for _, w := range warnings {
		fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s\n", notation.VisibleLines(w))
	}
}

func isAre(n int) string {
	if n == 1 {
		return " is"
	}
	return " are"
}

// A copyCheck holds papers against copies that they may be of.
type copyCheck struct {
	desk    *desk
	ctx     context.Context
	groups  map[string]string // of each student of the roster
	holders []holder
	drawn   map[string]*variant.Handout // by student and attempt
}

// A holder is a copy that somebody has.
type holder struct {
	code, student string
	task          *task
}

// codeless tells who has no code where others have one, and no list says which copy is theirs.
func (c *copyCheck) codeless(papers []*marking.Paper) []string {
	var without []string
	coded := false
	for _, p := range papers {
		t, marker, why := c.desk.of(p)
		switch {
		case why != "":
		case p.Code != "":
			coded = true
			c.holders = append(c.holders, holder{p.Code, p.Student, t})
		case marker == t.marker:
			without = append(without, who(p))
		}
	}
	if !coded || len(without) == 0 {
		return nil
	}
	return []string{"without a code, where others have one, and so marked by the problem's own numbers: " + idsText(without) + "."}
}

// who is a paper's student.
func who(p *marking.Paper) string {
	if p.Student == "" {
		return nameless
	}
	return p.Student
}

// misfits are the papers with hardly a value right.
func (c *copyCheck) misfits(papers []*marking.Paper) []misfit {
	var all []misfit
	for _, p := range papers {
		if t, marker, why := c.desk.of(p); why == "" && p.Fits(marker).Hardly() {
			all = append(all, misfit{p, t, marker == t.marker})
		}
	}
	return all
}

// elsewhere finds where misfits fit: those of the problem's own numbers that fit the copies drawn for their students, by these, and a
// sentence for each other one.
func (c *copyCheck) elsewhere(misfits []misfit) (drawn, told []string) {
	c.listed(misfits)
	for _, x := range misfits {
		if x.own && c.fitsDrawn(x) {
			drawn = append(drawn, who(x.paper))
			continue
		}
		if !x.own && x.paper.Fits(x.task.marker).Mostly() {
			told = append(told, c.described(x)+", but most are by the problem's own numbers: which did the student have?")
		} else if h, ok := c.otherHolder(x); ok {
			told = append(told, fmt.Sprintf("%s, but most are by the copy %s of %s: which did the student have?", c.described(x), h.code, h.student))
		}
	}
	return drawn, told
}

// described says what a misfit is held against.
func (c *copyCheck) described(x misfit) string {
	held := "its own numbers"
	if code := c.desk.codeOf(x.paper, x.task); !x.own {
		held = "the copy " + code
	}
	return fmt.Sprintf("hardly a value of %s is right in %s by %s", who(x.paper), x.task.problem.Name, held)
}

// listed adds those who have copies by the list, where there are misfits to be held against them.
func (c *copyCheck) listed(misfits []misfit) {
	if len(misfits) == 0 {
		return
	}
	for _, s := range c.desk.listed {
		for _, t := range c.desk.tasks {
			if code := c.desk.handed[ownCopy(s.ID, s.Attempt, t.problem.Name)]; code != "" {
				c.holders = append(c.holders, holder{code, s.ID, t})
			}
		}
	}
}

// otherHolder is another student whose copy a misfit fits.
func (c *copyCheck) otherHolder(x misfit) (holder, bool) {
	held := 0
	own := c.desk.codeOf(x.paper, x.task)
	for _, h := range c.holders {
		if h.task != x.task || h.student == x.paper.Student || h.code == own {
			continue
		}
		if held++; held > mostHeld {
			break
		}
		if _, marker, err := c.desk.copyOf(h.code); err == nil && x.paper.Fits(marker).Mostly() {
			return h, true
		}
	}
	return holder{}, false
}

// fitsDrawn reports whether a paper fits the copy that is drawn for its student.
func (c *copyCheck) fitsDrawn(x misfit) bool {
	batch, err := c.desk.batch()
	if err != nil || x.paper.Student == "" {
		return false
	}
	key := ownCopy(x.paper.Student, x.paper.Attempt, "")
	h, there := c.drawn[key]
	if !there {
		set := c.desk.means.set
		class := variant.Class{
			Students: []variant.Student{{ID: x.paper.Student, Attempt: x.paper.Attempt, Group: c.groups[x.paper.Student]}},
			Groups:   set != nil && set.Same == problems.Group,
		}
		if all, err := batch.Handouts(c.ctx, class, nil); err == nil {
			h = &all[0]
		}
		c.drawn[key] = h
	}
	if h == nil {
		return false
	}
	_, marker, err := c.desk.copyOf(h.Copies[slices.Index(c.desk.tasks, x.task)].Code)
	return err == nil && x.paper.Fits(marker).Mostly()
}

// leastOfClass is from how many papers on a class tells something as a whole.
const leastOfClass = 5

// classes tells of problems by whose own numbers most of a class has hardly a value right.
func (c *copyCheck) classes(papers []*marking.Paper, misfits []misfit) []string {
	if len(misfits) < leastOfClass {
		return nil
	}
	of, odd := map[*task]int{}, map[*task]int{}
	for _, p := range papers {
		if t, marker, why := c.desk.of(p); why == "" && marker == t.marker {
			of[t]++
		}
	}
	for _, x := range misfits {
		if x.own {
			odd[x.task]++
		}
	}
	var all []string
	for _, t := range c.desk.tasks {
		if odd[t] >= leastOfClass && 4*odd[t] >= 3*of[t] {
			all = append(all, fmt.Sprintf("of %d papers of %s, marked by its own numbers, %d have hardly a value right. If the students had copies with other numbers, name the list of who has which: --variants FILE.", of[t], t.problem.Name, odd[t]))
		}
	}
	return all
}
