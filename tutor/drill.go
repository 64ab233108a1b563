package tutor

import (
	"slices"
	"strings"
	"time"

	"unpin/statics/figure"
	"unpin/statics/judging"
	"unpin/tutor/record"
)

// A Drill is a short exercise beside the lesson: a mistake to find in a worked solution, or a sketch before the sums. It asks a few
// questions, most of them with a closed choice of answers. Like a lesson it is a state machine without a terminal, and not safe for
// use by several goroutines at once.
type Drill struct {
	// Heed, if set, is told of everything the student does; a store keeps it.
	Heed func(Event)
	// Clock, if set, tells the time at which a line was typed, so that guessing in haste is noticed.
	Clock func() time.Time

	about  *matter
	form   Form
	task   string            // what is to be done
	page   func() []PageLine // what there is to read
	asks   []drillAsk
	stands []drillAnswer // how far the student is, ask by ask
	at     int
	ending func() []string     // what is said at the end
	scene  func() figure.Scene // what stands beside it
	skills []string            // that it counts for, once it is done; none where it counts for none
}

// A PageLine is a line to read. One that can be asked for has a number, from 1.
type PageLine struct {
	Number int // 0 for a heading
	Text   string
	Lit    bool // it is where the mistake was found to be
}

// A drillAsk is one question of a drill.
type drillAsk struct {
	name, unit string          // what is asked: "line", "1 to 14"
	says       func() []string // what stands before it: the question, and the choices if there are any, by number
	read       func(line string) (drillRuling, error)
	hints      func() []string
	told       func() string // what tell says
	commits    bool          // the answer is noted, and judged at the end
}

// A drillRuling is what an answer comes to.
type drillRuling struct {
	verdict judging.Verdict
	says    string
	slips   []string
}

// A drillAnswer is how far the student is with one question of a drill.
type drillAnswer struct {
	typed   string
	verdict judging.Verdict
	says    string
	tries   int
	hints   int
	told    bool
	wrong   []time.Time
}

// unaided reports whether it was right at the first try and without help.
func (a drillAnswer) unaided() bool {
	return a.tries == 1 && a.hints == 0 && !a.told && a.verdict.Right()
}

// Form is which kind of exercise it is.
func (d *Drill) Form() Form { return d.form }

// Title is the title of the problem that it is about.
func (d *Drill) Title() string { return d.about.problem.Title }

// Task says what is to be done.
func (d *Drill) Task() string { return d.task }

// Page is what there is to read, as it stands now.
func (d *Drill) Page() []PageLine { return d.page() }

// Scene is the figure that stands beside it now: the frame as given, and at the end what answers the questions.
func (d *Drill) Scene() figure.Scene { return d.scene() }

// UseSigns has sums, numbers and units written with the signs of the trade, where they are otherwise in ASCII.
func (d *Drill) UseSigns() { d.about.signs = true }

// Now is the question in hand: what is said before it, and its name with what may be typed. It is false at the end.
func (d *Drill) Now() (says []string, name, unit string, asking bool) {
	if d.at >= len(d.asks) {
		return nil, "", "", false
	}
	q := d.asks[d.at]
	return q.says(), q.name, q.unit, true
}

// Asks are all questions as they stand now, each with what is said before it.
func (d *Drill) Asks() [][]string {
	var all [][]string
	for _, q := range d.asks {
		all = append(all, q.says())
	}
	return all
}

// Position is the number of the question in hand, from zero, and how many there are.
func (d *Drill) Position() (at, of int) { return d.at, len(d.asks) }

// CanHint reports whether there is a hint to ask for.
func (d *Drill) CanHint() bool { return d.at < len(d.asks) && len(d.asks[d.at].hints()) > 0 }

// Ending is what is said once all is asked.
func (d *Drill) Ending() []string {
	if d.at < len(d.asks) {
		return nil
	}
	return d.ending()
}

// Type takes one line: a command, or an answer to the question in hand.
func (d *Drill) Type(line string) Reply {
	word := strings.ToLower(strings.TrimSpace(line))
	asking := d.at < len(d.asks)
	switch {
	case word == "quit":
		d.heed(line, record.Left, nil)
		return Reply{Kind: Leaving}
	case word == "help":
		return Reply{Kind: Listed, Lines: drillHelp}
	case word == "sheet":
		return Reply{Kind: Listed, Lines: pageTexts(d.Page())}
	case !asking:
		return Reply{Kind: Unread, Lines: []string{"All is done."}}
	case word == "hint":
		return d.hint()
	case word == "tell":
		return d.tell()
	case word == "back":
		return d.back()
	case word == "":
		return Reply{Kind: Unread, Lines: []string{"Type an answer, or help."}}
	}
	return d.answer(line)
}

// drillHelp lists what can be typed.
var drillHelp = []string{
	"Type the number of a choice, or where a value is asked for, the value.",
	"hint: points to the place, step by step.",
	"tell: says the answer and goes on.",
	"back: returns to the answer before, where it is only noted.",
	"sheet: shows once more what there is to read.",
	"quit: stops.",
}

// pageTexts are the lines of a page with their numbers.
func pageTexts(page []PageLine) []string {
	var all []string
	for _, l := range page {
		all = append(all, l.String())
	}
	return all
}

// hint gives the next hint.
func (d *Drill) hint() Reply {
	all, a := d.asks[d.at].hints(), &d.stands[d.at]
	if len(all) == 0 {
		return Reply{Kind: Unread, Lines: []string{"There is no hint here: say what you expect."}}
	}
	says := all[min(a.hints, len(all)-1)]
	a.hints++
	d.heed("hint", record.Hinted, nil)
	return Reply{Kind: Hinted, Lines: []string{"hint: " + says}}
}

// tell says the answer and goes on.
func (d *Drill) tell() Reply {
	says := "told: " + d.asks[d.at].told()
	d.stands[d.at].told = true
	d.heed("tell", record.Told, nil)
	d.goOn()
	return Reply{Kind: Told, Lines: []string{says}}
}

// back returns to the question before, if its answer is only noted.
func (d *Drill) back() Reply {
	if d.at == 0 || !d.asks[d.at-1].commits {
		return Reply{Kind: Unread, Lines: []string{"There is nothing to go back to here."}}
	}
	d.heed("back", record.Back, nil)
	d.at--
	return Reply{Kind: WentBack, Lines: []string{"Back to " + d.asks[d.at].name + "."}}
}

// Offers reports whether one of the answers to choose from begins with a word.
func (d *Drill) Offers(word string) bool {
	if d.at >= len(d.asks) {
		return false
	}
	_, err := d.asks[d.at].read(word)
	return err == nil
}

// answer judges what was typed, and goes on where it stands.
func (d *Drill) answer(line string) Reply {
	q, a := d.asks[d.at], &d.stands[d.at]
	r, err := q.read(line)
	if err != nil {
		return unread(err)
	}
	a.tries++
	a.typed, a.verdict, a.says = strings.TrimSpace(line), r.verdict, r.says
	reply := Reply{Kind: Judged, Verdict: r.verdict, Slips: r.slips, Lines: []string{r.verdict.String() + ": " + r.says}}
	outcome := record.Outcome(r.verdict.Code())
	if q.commits {
		reply = Reply{Kind: Noted, Lines: []string{"noted"}}
	}
	d.heed(line, outcome, r.slips)
	if r.verdict.Right() || q.commits {
		d.goOn()
	} else if d.Clock != nil && tooFast(&a.wrong, d.Clock()) {
		reply.Pause = breath
		if all := q.hints(); len(all) > 0 {
			n := min(a.hints, len(all)-1, 1)
			reply.Lines = append(reply.Lines, "hint: "+all[n])
			a.hints = max(a.hints, n+1)
		}
	}
	return reply
}

// goOn goes on to the next question; after the last it is kept how the drill came out.
func (d *Drill) goOn() {
	if d.at++; d.at < len(d.asks) || len(d.skills) == 0 || d.Heed == nil {
		return
	}
	d.Heed(Event{Number: d.at - 1, Outcome: d.came(), Skills: d.skills})
}

// came is how the drill came out.
func (d *Drill) came() record.Outcome {
	switch {
	case slices.ContainsFunc(d.stands, func(a drillAnswer) bool { return a.told }):
		return record.StepTold
	case slices.ContainsFunc(d.stands, func(a drillAnswer) bool { return !a.unaided() }):
		return record.StepHelped
	}
	return record.StepRight
}

// heed tells of what was done at the question in hand.
func (d *Drill) heed(typed string, outcome record.Outcome, slips []string) {
	if d.Heed == nil || d.at >= len(d.asks) {
		return
	}
	name := d.asks[d.at].name
	d.Heed(Event{Number: d.at, Question: name, Key: name, Typed: strings.TrimSpace(typed), Outcome: outcome, Slips: slips})
}

// Keep has what is done kept from now on. What goes wrong in keeping is told once to complain, and the drill goes on without.
func (d *Drill) Keep(s *record.Store, now func() time.Time, complain func(error)) {
	k := newKeeper(s, now, complain)
	base := record.Record{Run: k.run, Problem: d.about.problem.Name, Frame: record.Fingerprint(d.about.problem), Level: d.form.code()}
	d.Heed = func(e Event) { k.write(base, e) }
}

// begun is the drill with its questions, before the first.
func (d *Drill) begun() *Drill {
	d.stands = make([]drillAnswer, len(d.asks))
	return d
}
