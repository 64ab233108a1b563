package wording_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/wording"
)

// A reading holds what a reason says against the frame, by geometry and by searching all sums, without the terms of a sum.
type reading struct {
	a     *statics.Assembly
	step  statics.Step
	known []bool
	said  map[string]int // how often each kind of claim was met
}

// A claim is a sentence that a reason may hold, and what must be true then of its words.
type claim struct {
	name  string
	form  *regexp.Regexp
	holds func(r *reading, words []string) bool
}

const (
	names  = `([A-Z][\w'.]*(?:, [A-Z][\w'.]*)*(?: and [A-Z][\w'.]*)?)`
	body   = `([Pp]arts? .+?|[Pp]in [A-Z][\w']*|the two-force member .+?|[Tt]he whole frame)`
	centre = `((?:the point )?(?:\([^)]*\)|[A-Z][\w']*))`
	count  = `(only )?(\w+) unknowns( left)?(, which its own sums give)?`
)

func form(text string) *regexp.Regexp { return regexp.MustCompile("^" + text + `\.$`) }

// claims are all sentences there are. One that none of them fits fails the test.
var claims = []claim{
	{"leaves", form(`(.+): (moments about .+|ΣF.*) leaves? only (\S+)`), (*reading).leaves},
	{"last", form(`Only (\S+) is left on ` + body + `, and (moments about .+ give|ΣF.* gives) it`), (*reading).last},
	{"last couple", form(`Only (\S+) is left on ` + body + `, and about (\S+) the forces there have no moment`), (*reading).lastCouple},
	{"one part", form(`The frame is one part, held by (.+)`), (*reading).onePart},
	{"two-force", form(`Part (\S+) is a two-force member: it carries no load and is held by pins at (\S+) and (\S+) only, so that the forces there act along the line from (\S+) to (\S+)`), (*reading).twoForce},
	{"held", form(`Part (\S+) (?:(carries .+?) and )?is held by (.+): ` + count), (*reading).held},
	{"with", form(`With ` + names + ` known, ` + body + ` has ` + count), (*reading).with},
	{"with much", form(`With (the forces known so far), ` + body + ` has ` + count), (*reading).with},
	{"none alone", form(`No (part|part or pin) alone has a sum with one unknown`), (*reading).noneAlone},
	{"none", form(`No sum of (a single part|a single part or pin) or of the whole has only one unknown`), (*reading).noneAtAll},
	{"searched", form(`No sum of (.+) has only one unknown`), (*reading).searched},
	{"inside", form(`Take ` + body + `(?: together)?: the forces (?:at ` + names + `|from part to part) are inside the cut`), (*reading).inside},
	{"together", form(`(?:Both of these|Each of these \w+|These \w+) holds? only ` + names + `, so they are solved together`), (*reading).together},
	{"kept", form(`Only ` + names + ` are left in (.+), so that one will give the other: the sum is kept until one of them is known`), (*reading).kept},
	{"relation", form(`With ` + names + ` known, the sum kept earlier gives (\S+)`), (*reading).relation},
	{"check", form(`No force came from this sum, so it checks the work: it must come to 0`), (*reading).check},
	{"catches", form(`This catches a mistake in steps? .+`), (*reading).check},
}

// read reads a reason sentence by sentence.
func (r *reading) read(text string) error {
	for sentence := range strings.SplitSeq(text, ". ") {
		sentence = strings.TrimSuffix(sentence, ".") + "."
		n := slices.IndexFunc(claims, func(c claim) bool { return c.form.MatchString(sentence) })
		if n < 0 {
			return fmt.Errorf("what is that? %q", sentence)
		}
		r.said[claims[n].name]++
		if !claims[n].holds(r, claims[n].form.FindStringSubmatch(sentence)[1:]) {
			return fmt.Errorf("not true (%s): %q", claims[n].name, sentence)
		}
	}
	return nil
}

func list(text string) []string {
	return slices.DeleteFunc(strings.Split(strings.ReplaceAll(text, " and ", ", "), ", "), func(s string) bool { return s == "" })
}

func (r *reading) force(name string) int {
	return slices.IndexFunc(r.a.Forces, func(f statics.Force) bool { return f.Name == name })
}

func (r *reading) forces(text string) []int {
	var all []int
	for _, name := range list(text) {
		all = append(all, r.force(name))
	}
	slices.Sort(all)
	return all
}

// isBody reports whether words name a free body.
func (r *reading) isBody(words string, b statics.FreeBody) bool {
	words = strings.Replace(words, "the two-force member", "part", 1)
	return strings.EqualFold(words, wording.Body(r.a, b))
}

func (r *reading) sum() *statics.Sum { return &r.step.Sums[0] }

// left lists the unknowns that act on a body from outside.
func (r *reading) left(b statics.FreeBody) []int { return r.acting(b, false) }

func (r *reading) acting(b statics.FreeBody, known bool) []int {
	var all []int
	for i, f := range r.a.Forces {
		if b.Has(f.On) != (f.By != statics.None && b.Has(f.By)) && r.known[i] == known {
			all = append(all, i)
		}
	}
	return all
}

// at is where a force acts on a body.
func (r *reading) at(i int, b statics.FreeBody) statics.Point {
	f := r.a.Forces[i]
	if f.Kind == statics.MemberPull && !b.Has(f.On) {
		return r.a.Frame.Joints[f.Far].At
	}
	return r.a.Frame.Joints[f.Joint].At
}

// absent reports whether a force has no part in a sum.
func (r *reading) absent(i int, s *statics.Sum) bool {
	f := r.a.Forces[i]
	switch {
	case f.Couple:
		return !s.Moment
	case s.Moment:
		return s.About.To(r.at(i, s.Body)).Cross(f.Along).IsZero()
	}
	return s.Along.Dot(f.Along).IsZero()
}

func (r *reading) isSum(words string, s *statics.Sum) bool {
	switch about, moment := strings.CutPrefix(words, "moments about "); {
	case moment != s.Moment:
		return false
	case moment:
		return r.isCentre(about, s)
	}
	return words == wording.New(r.a, style).SumName(*s)
}

func (r *reading) isCentre(words string, s *statics.Sum) bool {
	if strings.HasPrefix(words, "the point ") {
		return s.Centre == statics.None && words == "the point "+wording.New(r.a, style).Point(s.About)
	}
	j := slices.IndexFunc(r.a.Frame.Joints, func(j statics.Joint) bool { return j.Name == words })
	return j >= 0 && r.a.Frame.Joints[j].At.Equal(s.About)
}

// out are the ways in which forces are kept out of a sum.
var out = []claim{
	{"acts at", regexp.MustCompile(`^` + names + ` acts? at ` + centre + `$`), func(r *reading, w []string) bool {
		return r.isCentre(w[1], r.sum()) && r.all(w[0], func(i int) bool { return r.at(i, r.sum().Body).Equal(r.sum().About) })
	}},
	{"passes", regexp.MustCompile(`^the lines? of ` + names + ` pass(?:es)? through ` + centre + `$`), func(r *reading, w []string) bool {
		return r.isCentre(w[1], r.sum()) && r.all(w[0], func(i int) bool { return r.absent(i, r.sum()) })
	}},
	{"cross", regexp.MustCompile(`^the lines of ` + names + ` cross at ` + centre + `$`), func(r *reading, w []string) bool {
		two := r.forces(w[0])
		return r.isCentre(w[1], r.sum()) && len(two) == 2 && !r.a.Forces[two[0]].Along.Cross(r.a.Forces[two[1]].Along).IsZero()
	}},
	{"vertical", regexp.MustCompile(`^` + names + ` (?:is|are) vertical$`), func(r *reading, w []string) bool {
		return r.all(w[0], func(i int) bool { return !r.a.Forces[i].Couple && r.a.Forces[i].Along.X.IsZero() })
	}},
	{"horizontal", regexp.MustCompile(`^` + names + ` (?:is|are) horizontal$`), func(r *reading, w []string) bool {
		return r.all(w[0], func(i int) bool { return !r.a.Forces[i].Couple && r.a.Forces[i].Along.Y.IsZero() })
	}},
	{"perpendicular", regexp.MustCompile(`^` + names + ` acts? perpendicular to the direction of the sum$`), func(r *reading, w []string) bool {
		return r.all(w[0], func(i int) bool { return r.a.Forces[i].Along.Dot(r.sum().Along).IsZero() })
	}},
	{"couple", regexp.MustCompile(`^` + names + ` (?:is a couple|are couples)$`), func(r *reading, w []string) bool {
		return r.all(w[0], func(i int) bool { return r.a.Forces[i].Couple })
	}},
}

func (r *reading) all(text string, holds func(int) bool) bool {
	return !slices.ContainsFunc(r.forces(text), func(i int) bool { return i < 0 || !holds(i) })
}

// leaves: all unknowns but one are named, each is kept out as said, and the one is what the step gives.
func (r *reading) leaves(w []string) bool {
	s := r.sum()
	one := r.force(w[2])
	if !r.isSum(w[1], s) || len(r.step.Gives) != 1 || r.step.Gives[0] != one || r.absent(one, s) {
		return false
	}
	center := strings.TrimPrefix(wordsOfCentre.FindString(w[0]), " at ")
	why := strings.ReplaceAll(w[0], "through it", "through "+center)
	why = strings.ReplaceAll(why, ", and the line", "; the line")
	why = coupleBreak.ReplaceAllString(why, "$1; $2")
	var named []int
	for _, clause := range strings.Split(why, "; ") {
		clause = strings.Replace(clause, "The line", "the line", 1)
		n := slices.IndexFunc(out, func(c claim) bool { return c.form.MatchString(clause) })
		if n < 0 {
			return false
		}
		words := out[n].form.FindStringSubmatch(clause)[1:]
		r.said[out[n].name]++
		if !out[n].holds(r, words) {
			return false
		}
		named = append(named, r.forces(words[0])...)
	}
	named = append(named, one)
	slices.Sort(named)
	return slices.Equal(named, r.left(s.Body))
}

var (
	wordsOfCentre = regexp.MustCompile(` at ` + centre)
	coupleBreak   = regexp.MustCompile(`(vertical|horizontal|sum) and (\S+(?:(?:, | and )\S+)* (?:is a|are) couple)`)
)

func (r *reading) last(w []string) bool {
	i := r.force(w[0])
	sum := strings.TrimSuffix(strings.TrimSuffix(w[2], " gives"), " give")
	return r.isBody(w[1], r.sum().Body) && slices.Equal(r.left(r.sum().Body), []int{i}) && r.isSum(sum, r.sum()) && !r.absent(i, r.sum())
}

func (r *reading) lastCouple(w []string) bool {
	i := r.force(w[0])
	return r.isBody(w[1], r.sum().Body) && slices.Equal(r.left(r.sum().Body), []int{i}) && r.isCentre(w[2], r.sum()) && r.a.Forces[i].Couple
}

// counted: so many are left; only so many where they are fewer than the sums; and given by these where they are as many and
// the sums independent.
func (r *reading) counted(b statics.FreeBody, w []string) bool {
	words := [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
	many, sums := slices.Index(words[:], w[1]), 3
	if many < 0 {
		many, _ = strconv.Atoi(w[1])
	}
	if r.a.IsPin(b[0]) {
		sums = 2
	}
	return many == len(r.left(b)) && (w[0] != "") == (many < sums) && (w[3] != "") == (many == sums) && (many != sums || r.given(b))
}

// given reports whether the sums of a body with so many unknowns as sums have just one solution.
func (r *reading) given(b statics.FreeBody) bool {
	sums := []statics.Sum{r.a.ForceSum(b, statics.Vector{X: exact.Int(1)}), r.a.ForceSum(b, statics.Vector{Y: exact.Int(1)})}
	if !r.a.IsPin(b[0]) {
		sums = append(sums, r.a.MomentSum(b, statics.Point{}))
	}
	factors := make([][]exact.Num, len(sums))
	for n, s := range sums {
		for _, i := range r.left(b) {
			factors[n] = append(factors[n], s.Factor(i))
		}
	}
	_, ok := statics.SolveEquations(factors, make([]exact.Num, len(sums)))
	return ok
}

func (r *reading) onePart(w []string) bool {
	return r.a.Bodies() == 1 && r.heldBy(0, w[0])
}

func (r *reading) held(w []string) bool {
	b := r.sum().Body
	return wording.Body(r.a, b) == "part "+w[0] && r.carries(b[0], w[1]) && r.heldBy(b[0], w[2]) && r.counted(b, w[3:]) && len(r.acting(b, true)) == 0
}

// carries: what a part carries of the loads that come to something.
func (r *reading) carries(b int, what string) bool {
	on, off := map[int]bool{}, map[int]bool{}
	for _, x := range r.a.Actions {
		if entry := r.a.Frame.Loads[x.Load].Entry; x.Body == b {
			on[entry] = true
		} else {
			off[entry] = true
		}
	}
	if what != "" {
		r.said[what]++
	}
	switch what {
	case "carries the only load":
		return len(on) == 1 && len(off) == 0
	case "carries all the loads":
		return len(on) > 1 && len(off) == 0
	case "carries no load":
		return len(on) == 0
	}
	return what == ""
}

// heldBy: the unknowns on a body come from just these.
func (r *reading) heldBy(b int, text string) bool {
	want := map[string]bool{}
	for _, i := range append(r.acting(statics.FreeBody{b}, false), r.acting(statics.FreeBody{b}, true)...) {
		f, kind := r.a.Forces[i], ""
		j := r.a.JointAt(r.at(i, statics.FreeBody{b}))
		for _, s := range r.a.Frame.Supports {
			if f.Kind == statics.Reaction && s.Joint == f.Joint {
				kind = [...]string{"pinned support", "fixed support", "roller", "guide"}[s.Kind]
			}
		}
		for _, c := range r.a.Frame.Connections {
			if kind == "" && c.Joint == f.Joint {
				kind = [...]string{"pin", "slot", "sleeve"}[c.Kind]
			}
		}
		if f.Kind == statics.MemberPull {
			kind = "two-force member"
		}
		want[kind+" at "+r.a.Frame.Joints[j].Name] = true
	}
	got := map[string]bool{}
	for _, group := range regexp.MustCompile(`(?:^|, | and )the `).Split(text, -1)[1:] {
		kind, joints, _ := strings.Cut(group, " at ")
		for _, j := range list(joints) {
			got[strings.TrimSuffix(kind, "s")+" at "+j] = true
		}
		if strings.HasSuffix(kind, "s") != (len(list(joints)) > 1) {
			return false
		}
	}
	return fmt.Sprint(got) == fmt.Sprint(want)
}

func (r *reading) twoForce(w []string) bool {
	n := slices.IndexFunc(r.step.Sums, func(s statics.Sum) bool { return wording.Body(r.a, s.Body) == "part "+w[0] })
	if n < 0 {
		return false
	}
	b := r.step.Sums[n].Body
	if len(r.acting(b, true)) > 0 || !r.carries(b[0], "carries no load") || w[1] != w[3] || w[2] != w[4] {
		return false
	}
	return r.heldBy(b[0], "the pins at "+w[1]+" and "+w[2]) || r.heldBy(b[0], "the pinned support at "+w[1]+" and the pin at "+w[2]) ||
		r.heldBy(b[0], "the pinned support at "+w[2]+" and the pin at "+w[1])
}

func (r *reading) with(w []string) bool {
	b := r.sum().Body
	known := r.acting(b, true)
	if w[0] == "the forces known so far" {
		if len(known) == 0 {
			return false
		}
	} else if !slices.Equal(known, r.forces(w[0])) {
		return false
	}
	if strings.Contains(w[1], "two-force") && (!r.carries(b[0], "carries no load") || len(r.left(b))+len(known) != 4) {
		return false
	}
	return r.isBody(w[1], b) && r.counted(b, w[2:])
}

func (r *reading) noneAlone(w []string) bool {
	if (w[0] == "part") != (len(r.a.Pins) == 0) {
		return false
	}
	for b := range r.a.Bodies() {
		if r.someSum(statics.FreeBody{b}) {
			return false
		}
	}
	return true
}

func (r *reading) noneAtAll(w []string) bool {
	return r.noneAlone([]string{strings.TrimPrefix(w[0], "a single ")}) && !r.someSum(r.a.Whole())
}

// searched: every body, the whole, and every connected group of the size that is named.
func (r *reading) searched(w []string) bool {
	upTo := r.a.Bodies()
	switch {
	case strings.HasSuffix(w[0], "two or three parts together"):
		upTo = 3
	case strings.HasSuffix(w[0], "two parts together"):
		upTo = 2
	}
	n := r.a.Bodies()
	if n > 12 {
		upTo = min(upTo, 2)
	}
	for set := 1; set < 1<<n; set++ {
		var b statics.FreeBody
		for i := range n {
			if set>>i&1 == 1 {
				b = append(b, i)
			}
		}
		if (len(b) <= upTo || len(b) == n) && r.someSum(b) {
			return false
		}
	}
	return true
}

// someSum tries every centre at a joint or where two unknowns' lines cross and every direction along or across one: has a
// sum of the body just one unknown?
func (r *reading) someSum(b statics.FreeBody) bool {
	left := r.left(b)
	x, y := statics.Vector{X: exact.Int(1)}, statics.Vector{Y: exact.Int(1)}
	tries := []statics.Sum{{Body: b, Along: x}, {Body: b, Along: y}}
	if len(b) > 1 || !r.a.IsPin(b[0]) {
		for _, j := range r.a.Frame.Joints {
			tries = append(tries, statics.Sum{Body: b, Moment: true, About: j.At})
		}
	}
	for n, i := range left {
		f := r.a.Forces[i]
		if f.Couple {
			continue
		}
		tries = append(tries, statics.Sum{Body: b, Along: f.Along.Left()})
		for _, k := range left[:n] {
			g := r.a.Forces[k]
			det := f.Along.Cross(g.Along)
			if det.IsZero() || len(b) == 1 && r.a.IsPin(b[0]) {
				continue
			}
			t, err := r.at(i, b).To(r.at(k, b)).Cross(g.Along).Quo(det)
			if err != nil {
				continue
			}
			tries = append(tries, statics.Sum{Body: b, Moment: true, About: r.at(i, b).Plus(f.Along.Times(t))})
		}
	}
	return slices.ContainsFunc(tries, func(s statics.Sum) bool {
		n := 0
		for _, i := range left {
			if !r.absent(i, &s) {
				n++
			}
		}
		return n == 1
	})
}

// inside: just at these joints both faces are inside the cut.
func (r *reading) inside(w []string) bool {
	b := r.sum().Body
	var joints []string
	for _, f := range r.a.Forces {
		if f.By != statics.None && b.Has(f.On) && b.Has(f.By) {
			joints = append(joints, r.a.Frame.Joints[f.Joint].Name)
		}
	}
	slices.Sort(joints)
	joints = slices.Compact(joints)
	said := list(w[1])
	slices.Sort(said)
	return r.isBody(w[0], b) && (slices.Equal(joints, said) || len(said) == 0 && len(joints) > 4)
}

// together: the sums hold just these unknowns, which are what the step gives.
func (r *reading) together(w []string) bool {
	var held []int
	for n := range r.step.Sums {
		for _, i := range r.left(r.step.Sums[n].Body) {
			if !r.absent(i, &r.step.Sums[n]) {
				held = append(held, i)
			}
		}
	}
	slices.Sort(held)
	held = slices.Compact(held)
	return slices.Equal(held, r.forces(w[0])) && slices.Equal(held, r.step.Gives) && len(held) == len(r.step.Sums)
}

func (r *reading) kept(w []string) bool {
	two := r.forces(w[0])
	var held []int
	for _, i := range r.left(r.sum().Body) {
		if !r.absent(i, r.sum()) {
			held = append(held, i)
		}
	}
	return len(two) == 2 && slices.Equal(held, two) && r.isSum(w[1], r.sum())
}

func (r *reading) relation(w []string) bool {
	one := r.force(w[1])
	return r.all(w[0], func(i int) bool { return r.known[i] && !r.absent(i, r.sum()) }) && slices.Equal(r.step.Gives, []int{one}) && !r.absent(one, r.sum())
}

// check: what a closing check catches is held against mistakes in package statics (TestChecks).
func (r *reading) check([]string) bool { return r.step.Check && len(r.step.Gives) == 0 }
