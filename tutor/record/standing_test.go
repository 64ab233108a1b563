package record

import (
	"fmt"
	"math/big"
	"strings"
	"testing"
	"time"
)

// The estimate after answers r (right) and w (wrong), by hand from the equations of Corbett and Anderson with L0 = 0.30, T = 0.15,
// S = 0.10, G = 0.05. Right: 0.27/(0.27 + 0.035) = 0.8852, + 0.15 (1 - 0.8852) = 0.902. Wrong: 0.03/(0.03 + 0.665) = 0.0432, then 0.187;
// right after it: 0.1684/(0.1684 + 0.0407) = 0.805, then 0.834.
func TestTracing(t *testing.T) {
	t.Parallel()
	for answers, want := range map[string]string{"": "0.300", "r": "0.902", "rr": "0.995", "w": "0.187", "wr": "0.834", "wrr": "0.991"} {
		known := atStart
		for _, a := range answers {
			known = after(known, a == 'r', whole)
		}
		if got := fmt.Sprintf("0.%03d", (known+500_000)/1_000_000); got != want {
			t.Errorf("after %q: %s, want %s", answers, got, want)
		}
	}
}

// The same by fractions, for all courses of ten steps.
func TestTracingAgainstFractions(t *testing.T) {
	t.Parallel()
	frac := func(n int) *big.Rat { return big.NewRat(int64(n), whole) }
	one := big.NewRat(1, 1)
	for course := range 1 << 10 {
		known, exactly := atStart, frac(atStart)
		for i := range 10 {
			right := course>>i&1 == 1
			known = after(known, right, whole)
			ifKnown, ifNot := frac(slipped), new(big.Rat).Sub(one, frac(guessed))
			if right {
				ifKnown, ifNot = new(big.Rat).Sub(one, frac(slipped)), frac(guessed)
			}
			a := new(big.Rat).Mul(exactly, ifKnown)
			b := new(big.Rat).Mul(new(big.Rat).Sub(one, exactly), ifNot)
			held := new(big.Rat).Quo(a, new(big.Rat).Add(a, b))
			exactly = new(big.Rat).Add(held, new(big.Rat).Mul(new(big.Rat).Sub(one, held), frac(learned)))
			if exactly.Cmp(frac(surest)) > 0 {
				exactly = frac(surest)
			}
			off := new(big.Rat).Sub(exactly, frac(known))
			if off.Abs(off).Cmp(big.NewRat(1, 1_000_000)) > 0 {
				t.Fatalf("course %b, step %d: %d billionths, by fractions %s", course, i, known, exactly.FloatString(6))
			}
		}
	}
}

// Rows: steps as "day outcome frame", then what is to hold on a day.
func TestStandings(t *testing.T) {
	t.Parallel()
	rows := []struct {
		steps  string
		on     int
		stands bool
		stuck  bool
		due    bool
	}{
		{"0 r a, 0 r b, 0 r c, 0 r d, 0 r e", 0, false, false, false},              // one day only
		{"0 r a, 0 r b, 0 r c, 1 r d, 1 r e", 1, false, false, false},              // two
		{"0 r a, 1 r b, 2 r c, 3 r d", 3, false, false, false},                     // four right only
		{"0 r a, 1 r a, 1 r b, 2 r b, 2 r a", 2, false, false, false},              // two frames only
		{"0 r a, 0 r b, 1 r c, 1 r d, 2 r e", 2, true, false, false},               // all
		{"0 r a, 0 r b, 1 r c, 2 w d, 2 r d, 3 r e", 3, false, false, false},       // a mistake takes a day
		{"0 r a, 0 r b, 1 r c, 2 w d, 2 r d, 3 r e, 4 r f", 4, true, false, false}, // which another one gives back
		{"0 r a, 0 r b, 1 r d, 1 w c, 1 r d, 1 r e, 2 r f", 2, true, false, false}, // the first step of a day counts alone
		{"0 r a, 0 r b, 0 r c", 1, false, false, true},                             // a day later it is due
		{"0 r a, 1 r b, 1 r c", 3, false, false, false},                            // then three days
		{"0 r a, 1 r b, 1 r c", 4, false, false, true},                             //
		{"0 r a, 1 r b, 4 r c", 10, false, false, false},                           // then seven
		{"0 r a, 1 r b, 4 r c", 11, false, false, true},                            //
		{"0 r a, 1 r b, 4 r c, 11 r b, 11 r d", 31, true, false, false},            // then twenty-one
		{"0 r a, 1 r b, 4 r c, 11 r b, 40 r b", 61, true, false, true},
		{"0 r a, 1 r b, 4 r c, 11 r b, 40 r b, 61 w c", 62, true, false, true}, // a mistake brings it back the day after
		{"0 w a, 0 w a, 0 w b, 0 w b, 0 w c, 0 w c, 0 w d", 0, false, false, false},
		{"0 w a, 0 w a, 0 w b, 0 w b, 0 w c, 0 w c, 0 w d, 0 w d", 0, false, true, false},         // eight steps, and it does not stand
		{"0 r a, 0 r a, 0 r a, 0 r a, 0 r a, 0 r a, 0 r a, 0 r a, 0 r a", 0, false, false, false}, // another frame is wanting, and no help
		{"0 w a, 0 w b, 0 r c, 0 r d, 0 w a, 0 w b, 0 w c, 0 w d, 0 w e", 0, false, false, false}, // it was as good as known on the way
		{"0 w a, 0 r b, 0 w a, 0 r b, 0 w a, 0 r b, 0 w a, 0 r d, 0 r c", 0, false, false, false}, // out of it by two right ones
		{"0 r a, 900 r b, 1 r c, 1 r d, 1 r e", 4, true, false, true},                             // the clock ran 899 days ahead for a while
	}
	start := time.Date(2026, 3, 27, 23, 30, 0, 0, time.FixedZone("", 3600))
	for _, r := range rows {
		var all []Record
		for _, step := range strings.Split(r.steps, ", ") {
			var n int
			var came, frame string
			fmt.Sscan(step, &n, &came, &frame)
			all = append(all, Record{At: start.AddDate(0, 0, n), Frame: frame, Skills: []string{"jumps"}, Outcome: map[string]Outcome{"r": StepRight, "w": StepTold}[came]})
		}
		s := Standings(all)["jumps"]
		now := start.AddDate(0, 0, r.on)
		if s.Stands() != r.stands || s.Stuck() != r.stuck || s.Due(now) != r.due {
			t.Errorf("%s: on day %d stands %t, stuck %t, due %t", r.steps, r.on, s.Stands(), s.Stuck(), s.Due(now))
		}
	}
}

// A step that went wrong and tells nothing of what was wanting: the estimates against all cases of what is known of what it asked for, each with
// its chance, by fractions.
func TestTracingOfSeveral(t *testing.T) {
	t.Parallel()
	frac := func(n int) *big.Rat { return big.NewRat(int64(n), whole) }
	mul := func(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }
	not := func(a *big.Rat) *big.Rat { return new(big.Rat).Sub(big.NewRat(1, 1), a) }
	skills := []string{"jumps", "slopes", "components"}
	for n := range 200 {
		before := map[string]Standing{}
		for i, skill := range skills {
			before[skill] = Standing{known: []int{atStart, whole / 50, mastered, surest, whole / 2}[(n>>i+i*n)%5]}
		}
		all, with := new(big.Rat), map[string]*big.Rat{"jumps": {}, "slopes": {}, "components": {}}
		for mask := range 1 << len(skills) {
			chance, right := big.NewRat(1, 1), big.NewRat(1, 1)
			for i, skill := range skills {
				known := frac(before[skill].known)
				if mask>>i&1 == 1 {
					chance, right = mul(chance, known), mul(right, not(frac(slipped)))
				} else {
					chance, right = mul(chance, not(known)), mul(right, frac(guessed))
				}
			}
			chance = mul(chance, not(right))
			all.Add(all, chance)
			for i, skill := range skills {
				if mask>>i&1 == 1 {
					with[skill].Add(with[skill], chance)
				}
			}
		}
		for _, c := range (Record{Skills: skills, Outcome: StepTold}).steps()[0].traced(before) {
			held := new(big.Rat).Quo(with[c.skill], all)
			want := new(big.Rat).Add(held, mul(not(held), frac(learned)))
			got := frac(after(before[c.skill].known, false, c.others))
			if off := new(big.Rat).Sub(want, got); want.Cmp(frac(surest)) < 0 && off.Abs(off).Cmp(big.NewRat(1, 1_000_000)) > 0 {
				t.Fatalf("%d, %s: %s, by all cases %s", n, c.skill, got.FloatString(6), want.FloatString(6))
			}
		}
	}
}

// A step of five skills that goes wrong once makes none of them stuck, nor does it bring back one that stands; eight that go wrong do with all.
func TestSeveralMissedOnce(t *testing.T) {
	t.Parallel()
	five := []string{"pin-pair", "moment-centre", "axis-force-moment", "components", "jumps"}
	var all []Record
	for day := range LeastRight {
		all = append(all, Record{At: time.Date(2026, 3, 2+day, 9, 0, 0, 0, time.UTC), Frame: fmt.Sprint(day), Skills: []string{"jumps"}, Outcome: StepRight})
	}
	all = append(all, Record{At: time.Date(2026, 3, 2+LeastRight, 9, 0, 0, 0, time.UTC), Frame: "x", Skills: five, Outcome: StepTold})
	for _, skill := range five {
		if s := Standings(all)[skill]; s.Stuck() || s.Stands() != (skill == "jumps") {
			t.Errorf("%s: stuck %t, stands %t", skill, s.Stuck(), s.Stands())
		}
	}
	for range MostSteps - 1 {
		all = append(all, all[len(all)-1])
	}
	for _, skill := range five[:4] {
		if !Standings(all)[skill].Stuck() {
			t.Errorf("%s is not stuck", skill)
		}
	}
}

// A step whose mistakes tell of one skill says nothing of the others that it asked for.
func TestMissedSkillAlone(t *testing.T) {
	t.Parallel()
	all := []Record{{Skills: []string{"jumps", "slopes"}, Missed: []string{"slopes"}, Outcome: StepHelped}, {Skills: []string{"jumps"}, Outcome: StepRight}}
	got := Standings(all)
	if got["jumps"].Of != 1 || got["jumps"].Right != 1 || got["slopes"].Of != 1 || got["slopes"].Right != 0 {
		t.Errorf("jumps %+v, slopes %+v", got["jumps"], got["slopes"])
	}
}

// Mistakes are counted where they are sure, the most frequent first; work is listed by problem and level, the latest first.
func TestMistakesAndSessions(t *testing.T) {
	t.Parallel()
	at := func(n int) time.Time { return time.Unix(int64(n)*1000, 0).UTC() }
	all := []Record{
		{At: at(1), Problem: "pier", Level: "values", Outcome: Wrong, Slips: []string{"turn-of-term"}},
		{At: at(2), Problem: "pier", Level: "values", Outcome: Wrong, Slips: []string{"arm-forgotten"}},
		{At: at(3), Problem: "shed", Level: "terms", Outcome: Wrong, Slips: []string{"arm-forgotten", "slant-as-arm"}},
		{At: at(4), Problem: "pier", Level: "values", Outcome: Exact},
		{At: at(4), Problem: "pier", Level: "values", Outcome: StepHelped},
		{At: at(5), Problem: "shed", Level: "terms", Outcome: Wrong, Slips: []string{"arm-forgotten"}},
	}
	var got []string
	for _, m := range Mistakes(all) {
		got = append(got, fmt.Sprint(m.ID, " ", m.Times, " ", m.Last.Unix()))
	}
	for _, s := range Sessions(all) {
		got = append(got, fmt.Sprint(s.Problem, " ", s.Level, " ", s.Answers, " ", s.Steps, " ", s.First.Unix(), " ", s.Last.Unix()))
	}
	want := "arm-forgotten 2 5000; turn-of-term 1 1000; shed terms 2 {0 0} 3000 5000; pier values 3 {0 1} 1000 4000"
	if joined := strings.Join(got, "; "); joined != want {
		t.Errorf("got  %s\nwant %s", joined, want)
	}
}

// What is asked along a member counts by places; eight of them on one member make nobody stuck, eight members do. A mistake at one place is of that
// place's skill, or of the one that it shows to be wanting.
func TestStandingAlong(t *testing.T) {
	t.Parallel()
	at := func(places ...Place) Record {
		return Record{Frame: "a", Kind: Diagrams, Outcome: StepHelped, Along: places}
	}
	right, wrong := Place{Skill: "jumps", Outcome: StepRight}, Place{Skill: "jumps", Outcome: StepHelped}
	other := Place{Skill: "jumps", Outcome: StepTold, Missed: []string{"cut-forces"}}
	all := []Record{at(right, wrong, wrong, wrong, wrong, wrong, wrong, wrong, wrong, other)}
	standings := Standings(all)
	if s := standings["jumps"]; s.Right != 1 || s.Of != 9 || s.Stuck() {
		t.Errorf("%+v", s)
	}
	if s := standings["cut-forces"]; s.Right != 0 || s.Of != 1 {
		t.Errorf("%+v", s)
	}
	for range MostSteps - 1 {
		all = append(all, at(wrong))
	}
	if s := Standings(all)["jumps"]; !s.Stuck() {
		t.Errorf("%+v", s)
	}
}

// A step with one mistake that is known says that what else it asked for is there.
func TestStandingBesideAMistake(t *testing.T) {
	t.Parallel()
	r := Record{Frame: "a", Kind: Moments, Outcome: StepHelped, Skills: []string{"moment-centre", "pin-pair", "solve-with-sense"}, Missed: []string{"pin-pair"}, Right: []string{"moment-centre", "solve-with-sense"}}
	standings := Standings([]Record{r})
	for skill, want := range map[string]Count{"moment-centre": {1, 1}, "solve-with-sense": {1, 1}, "pin-pair": {0, 1}} {
		if s := standings[skill]; s.Right != want.Right || s.Of != want.Of {
			t.Errorf("%s: %d of %d", skill, s.Right, s.Of)
		}
	}
}
