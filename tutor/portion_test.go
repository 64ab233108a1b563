package tutor

import (
	"bytes"
	"cmp"
	"fmt"
	"strings"
	"testing"
	"time"

	"unpin/problems"
	"unpin/tutor/record"
)

// history is what a lesson left on some days: "day problem, ..." with the skills that went wrong after a slash.
func history(t *testing.T, done string) []record.Record {
	var all []record.Record
	for _, item := range strings.Split(done, ", ") {
		if item == "" {
			continue
		}
		var day int
		var name string
		fmt.Sscan(item, &day, &name)
		name, wanting, _ := strings.Cut(name, "/")
		all = append(all, worked(t, name, day, func(skill string) bool { return skill == wanting })...)
	}
	return all
}

// What portions are made of, in testdata/portions.txt. None takes much more than ten minutes, and no frame comes twice.
func TestPortions(t *testing.T) {
	t.Parallel()
	rows := []struct {
		done string
		on   int
	}{
		{"", 0},
		{"0 jetty-deck", 1},
		{"0 jetty-deck, 0 mill-bridge/pin-pair", 1},
		{"0 mill-bridge, 1 quay-gantry, 4 mill-bridge, 5 sawmill-portal", 6},
		{"0 mill-bridge, 1 quay-gantry, 4 riding-hall, 5 sawmill-portal/pin-pair, 6 quay-gantry/moment-centre", 7},
		{"0 mill-bridge/cut-forces, 0 riding-hall/cut-forces, 0 jetty-deck/cut-forces", 0},
	}
	var b strings.Builder
	for _, r := range rows {
		all := history(t, r.done)
		offers := Portion(all, today0.AddDate(0, 0, r.on), atHand())
		fmt.Fprintf(&b, "day %d, after %s: about %d minutes\n", r.on, cmp.Or(r.done, "nothing"), Minutes(offers))
		met := map[*problems.Problem]bool{}
		for i, o := range offers {
			fmt.Fprintf(&b, "    %s  (%s, %s)\n", PortionLines(offers)[i], o.Level, o.Skill.Name)
			if met[o.Problem] {
				t.Errorf("after %s: %s comes twice", r.done, o.Problem.Name)
			}
			met[o.Problem] = true
		}
		if n := Minutes(offers); n < 4 || n > 11 {
			t.Errorf("after %s: %d minutes", r.done, n)
		}
	}
	golden(t, "portions.txt", []byte(b.String()))
}

// A portion is worked line by line to its end by what tell says: every piece is told of, asked, and kept with the skill it is for.
func TestPortionLineByLine(t *testing.T) {
	t.Parallel()
	now := today0.AddDate(0, 0, 7)
	offers := Portion(history(t, "0 mill-bridge, 1 quay-gantry, 4 riding-hall, 5 sawmill-portal/pin-pair, 6 quay-gantry/moment-centre"), now, atHand())
	store := record.At(t.TempDir() + "/practice.jsonl")
	var out bytes.Buffer
	begin := func(o Offer) (Piece, error) {
		at, err := o.Begin(now)
		keep := func(err error) { t.Error(err) }
		if at.Drill != nil {
			at.Drill.Keep(store, func() time.Time { return now }, keep)
		} else if err == nil {
			at.Lesson.Keep(store, func() time.Time { return now }, keep)
		}
		return at, err
	}
	if err := PlainPortion(offers, begin, strings.NewReader(strings.Repeat("tell\n", 200)), &out); err != nil {
		t.Fatal(err)
	}
	for i, o := range offers {
		if want := fmt.Sprintf("Piece %d: %s.\n", i+1, o.Form); !strings.Contains(out.String(), want) {
			t.Errorf("%q is not said", want)
		}
	}
	if !strings.HasSuffix(out.String(), "That is all for today.\n") {
		t.Errorf("it does not come to its end:\n%s", out.String())
	}
	kept, _, err := store.Records()
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range offers {
		if o.Form != SketchFirst && o.Form != FindMistake && !practised(kept, o) {
			t.Errorf("%s, %s is not kept", o.Form, o.Skill.Name)
		}
	}
}

// practised reports whether a record tells of what an offer is for.
func practised(all []record.Record, o Offer) bool {
	for _, r := range all {
		for _, skill := range r.Skills {
			if r.Problem == o.Problem.Name && skill == o.Skill.Name {
				return true
			}
		}
	}
	return false
}

// Who is stuck with a skill gets a step like it worked, from another problem, then one to do, then one more on another frame; with the list of
// whole problems it comes first too. Two that come right end it.
func TestStuckIsHelped(t *testing.T) {
	t.Parallel()
	const skill = "cut-forces"
	done, now := history(t, "0 mill-bridge/cut-forces, 0 riding-hall/cut-forces, 0 jetty-deck/cut-forces"), today0.AddDate(0, 0, 1)
	if !record.Standings(done)[skill].Stuck() {
		t.Fatal("nothing is stuck")
	}
	if o := Today(done, now, atHand())[0]; !o.Worked || o.Skill.Name != skill {
		t.Errorf("the list begins with %s for %s", o.Form, o.Skill.Name)
	}
	offers := Portion(done, now, atHand())
	if len(offers) < 2 || !offers[0].Worked || offers[1].Worked || offers[0].Skill != offers[1].Skill || offers[0].Problem == offers[1].Problem {
		t.Fatalf("%v", PortionLines(offers))
	}
	for i, o := range offers[:2] {
		at, err := o.Begin(now)
		if err != nil {
			t.Fatal(err)
		}
		example := WorkedOf(at.Lesson)
		if (i == 0) != (len(example) > 3) || i == 0 && (!strings.HasPrefix(example[0], "Worked, from another problem: ") || strings.Contains(example[0], o.Problem.Title)) {
			t.Errorf("piece %d begins with %v", i+1, example)
		}
		done = append(done, record.Record{At: now, Problem: o.Problem.Name, Frame: o.Problem.Name, Skills: o.Skills, Outcome: record.StepRight})
	}
	if record.Standings(done)[skill].Stuck() {
		t.Error("two right ones do not end it")
	}
	var out bytes.Buffer
	begin := func(o Offer) (Piece, error) { return o.Begin(now) }
	if err := PlainPortion(offers, begin, strings.NewReader(""), &out); err != nil || !strings.Contains(out.String(), "Worked, from another problem") {
		t.Errorf("by line the worked step is missing: %v\n%s", err, out.String())
	}
}

// What is told in a piece comes once more, with other numbers, before the next: of a step as of a member.
func TestToldInAPieceComesAgain(t *testing.T) {
	t.Parallel()
	now := today0.AddDate(0, 0, 1)
	forms := map[Form]int{}
	for _, o := range append(Portion(history(t, "0 jetty-deck"), now, atHand()), Portion(history(t, "0 mill-bridge/pin-pair, 0 riding-hall"), now, atHand())...) {
		at, err := o.Begin(now)
		if err != nil {
			t.Fatal(err)
		}
		if at.Lesson == nil || o.Form == WholeProblem {
			continue
		}
		for _, asking := at.Lesson.Now(); asking; _, asking = at.Lesson.Now() {
			at.Lesson.Type("tell")
		}
		if again := at.Lesson.Again(); len(again) == 0 {
			t.Errorf("%s, %s: nothing comes again", o.Form, o.Problem.Name)
		} else if at, of := again[0].Position(); at != 0 || of != 1 {
			t.Errorf("%s, %s: it is question %d of %d", o.Form, o.Problem.Name, at+1, of)
		}
		forms[o.Form]++
	}
	if forms[OneStep] == 0 || forms[OneMember] == 0 {
		t.Errorf("tried %v", forms)
	}
}
