package worksheet

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/statics/notation"
	"unpin/statics/slip"
)

// answered is a beam of 5 m on a pin A and a roller B with 12 kN at 2 m, in conventions: RB = 12·2/5 = 4.8, Ay = 7.2, and left of
// the load V = 7.2, which is −7.2 where a shear that turns a piece counter-clockwise is positive.
func answered(t *testing.T, ask string) Task {
	t.Helper()
	p, err := problems.Read("beam", []byte("title: Beam\nunits: kN m\njoints: {A: [0, 0], B: [5, 0]}\nmembers: [AB]\nsupports: {A: pin, B: {roller: up}}\n"+
		"loads: [{point: 12, to: down, on: AB, at: 2}]\nask: {"+ask+"}\n"))
	if err != nil {
		t.Fatal(err)
	}
	task, err := problems.Alone(p)
	if err != nil {
		t.Fatal(err)
	}
	items, err := task.Asked([]string{"reactions", "V(AB, 1)", "M(AB, 2)"})
	if err != nil {
		t.Fatal(err)
	}
	return Task{Solved: task.Solved, Items: items, Number: 1, Code: "K7M2PX4D"}
}

// Answers have the signs and figures of the sheet, and so have the wrong values beside them; a CSV has decimal points whatever is
// printed. The wrong values of RB by hand: without the load 0; halves of it 6; the load's turn taken the other way −4.8, which is
// the right size and not told; its arm from the other end 12·3/5 = 7.2.
func TestAnswersByHand(t *testing.T) {
	t.Parallel()
	for ask, want := range map[string][]string{
		"figures: 3":     {"Ax=0 ", "RB=4.8 up", "Ay=7.2 up", "V(AB, 1)=7.2 ", "M(AB, 2)=14.4 bottom"},
		"shear: ccw":     {"Ax=0 ", "RB=4.8 up", "Ay=7.2 up", "V(AB, 1)=−7.2 ", "M(AB, 2)=14.4 bottom"},
		"decimal: comma": {"Ax=0 ", "RB=4,8 up", "Ay=7,2 up", "V(AB, 1)=7,2 ", "M(AB, 2)=14,4 bottom"},
	} {
		var got []string
		all := Answers(answered(t, ask))
		for _, a := range all {
			got = append(got, a.Name+"="+a.Right+" "+a.Acts)
			if len(a.Wrong) > MostWrong {
				t.Errorf("%s has %d wrong values", a.Name, len(a.Wrong))
			}
			for _, w := range a.Wrong {
				if w.Value == a.Right || len(w.Slips) == 0 {
					t.Errorf("%s: %s beside the right %s, by %v", a.Name, w.Value, a.Right, w.Slips)
				}
			}
		}
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", ask, got, want)
		}
		for _, row := range (CopyAnswers{Student: "s1", Problem: "beam", Code: "K7M2PX4D", Answers: all}).Rows() {
			if len(row) != len(AnswersHead) || strings.ContainsAny(row[5]+row[7], ",−") {
				t.Errorf("the row %q, under %q", row, AnswersHead)
			}
		}
	}
	rb := Answers(answered(t, "figures: 3"))[1]
	wrong := map[string]bool{}
	for _, w := range rb.Wrong {
		wrong[w.Value] = true
	}
	if rb.Name != "RB" || !wrong["0"] || !wrong["6"] {
		t.Errorf("wrong values of %s: %v; want 0 and 6 among them", rb.Name, rb.Wrong)
	}
}

// Copies with the same numbers stand together in the printed table, every mistake has a letter that is explained, and the same table
// gives the same bytes.
func TestAnswersPage(t *testing.T) {
	t.Parallel()
	task := answered(t, "figures: 3")
	own := Answers(task)
	other := slices.Clone(own)
	other[0].Right = "1"
	part := AnswersPart{Solved: task.Solved, Number: 2, Points: "10", Copies: []CopyAnswers{
		{Student: "s1", Code: "AAAAAAAA", Answers: own}, {Student: "s2", Code: "BBBBBBBB", Answers: other}, {Student: "s3", Code: "CCCCCCCC", Answers: own}}}
	var first, second, text bytes.Buffer
	for _, to := range []*bytes.Buffer{&first, &second} {
		if err := AnswersPDF(to, Heading{Title: "Week 5"}, []AnswersPart{part}, A4); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("the same table gives two documents")
	}
	if err := AnswersMarkdown(&text, Heading{Title: "Week 5"}, []AnswersPart{part}); err != nil {
		t.Fatal(err)
	}
	page := text.String()
	if a, b, c := strings.Index(page, "AAAAAAAA"), strings.Index(page, "BBBBBBBB"), strings.Index(page, "CCCCCCCC"); a < 0 || c < a || b < c {
		t.Errorf("codes stand at %d, %d and %d", a, b, c)
	}
	for _, want := range []string{"Problem 2, 10 points", "licensed engineer", "**a**"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q on\n%s", want, page)
		}
	}
	for _, a := range own {
		for _, w := range a.Wrong {
			for _, id := range w.Slips {
				if name := slip.ByID(strings.Split(id, "+")[0]).Kind(); !strings.Contains(page, name+":") && !strings.Contains(page, name+" and ") {
					t.Errorf("the mistake %s is not explained", id)
				}
			}
		}
	}
}

// Every slip of the catalogue can be explained on a table, and letters go on after z.
func TestMistakeTexts(t *testing.T) {
	t.Parallel()
	for _, s := range slip.Catalogue() {
		if text := mistakeText(s.ID); !strings.Contains(text, s.Principle()) || notation.VisibleLines(text) != text {
			t.Errorf("%s: %s", s.ID, text)
		}
	}
	for n, want := range map[int]string{0: "a", 25: "z", 26: "aa", 51: "az", 52: "ba", 701: "zz", 702: "aaa"} {
		if got := letterOf(n); got != want {
			t.Errorf("letter %d is %s, want %s", n, got, want)
		}
	}
}
