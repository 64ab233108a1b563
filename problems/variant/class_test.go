package variant

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
)

// classSet is a set of three problems that were handed out.
func classSet(t testing.TB) (*problems.Set, Batch) {
	t.Helper()
	const text = "id: w5\ntitle: Week 5\nseed: secret\nproblems: [{problem: jetty-deck.yaml}, {problem: gravel-platform.yaml, find: [reactions]}, {problem: mill-bridge.yaml}]\n"
	s, err := problems.ReadSet("w5.yaml", []byte(text), problems.Beside("testdata/handed"))
	if err != nil {
		t.Fatal(err)
	}
	b, err := OfSet(s)
	if err != nil {
		t.Fatal(err)
	}
	return s, b
}

// class is students in groups, some without.
func class(n int) Class {
	var c Class
	for i := range n {
		s := Student{ID: fmt.Sprintf("s%02d", i), Attempt: 1}
		if i%4 > 0 {
			s.Group = fmt.Sprint("g", i/4)
		}
		c.Students = append(c.Students, s)
	}
	return c
}

// Who comes late, changes the order of the list or stays away changes nobody's copies; those of one place do not follow from those
// of another.
func TestHandoutsStandAlone(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	all, err := b.Handouts(t.Context(), class(12), nil)
	if err != nil {
		t.Fatal(err)
	}
	few := class(12)
	few.Students = []Student{few.Students[7], few.Students[3]}
	some, err := b.Handouts(t.Context(), few, nil)
	if err != nil {
		t.Fatal(err)
	}
	for i, at := range []int{7, 3} {
		for k, own := range some[i].Copies {
			if own.Code != all[at].Copies[k].Code || own.Draw != all[at].Copies[k].Draw {
				t.Errorf("%s, problem %d: %s, in the class of twelve %s", own.Student, k+1, own.Code, all[at].Copies[k].Code)
			}
			if place, draw, err := b.Decode(own.Code); err != nil || place != k || draw != own.Draw {
				t.Errorf("%s is read as place %d, draw %d: %v", own.Code, place, draw, err)
			}
		}
	}
}

// A group has one copy of each problem, and nobody else has it by that; who is in no group has numbers of their own.
func TestGroups(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	c := class(8)
	c.Groups = true
	all, err := b.Handouts(t.Context(), c, nil)
	if err != nil {
		t.Fatal(err)
	}
	for i, h := range all {
		for k, other := range all[:i] {
			same := h.Student.Group != "" && h.Student.Group == other.Student.Group
			if same != (h.Copies[2].Code == other.Copies[2].Code) {
				t.Errorf("students %d and %d: group %q and %q, codes %s and %s", i, k, h.Student.Group, other.Student.Group, h.Copies[2].Code, other.Copies[2].Code)
			}
		}
		if h.Copies[0].Student != h.Student.ID {
			t.Errorf("the copy of %s is of %s", h.Student.ID, h.Copies[0].Student)
		}
	}
	late := Class{Students: []Student{{ID: "x", Group: "g1", Attempt: 1}}, Groups: true}
	one, err := b.Handouts(t.Context(), late, nil)
	if err != nil || one[0].Copies[0].Code != all[5].Copies[0].Code {
		t.Errorf("who joins a group late has %v, the group %s (%v)", one, all[5].Copies[0].Code, err)
	}
}

// Copies of no one in particular are all distinct, problem by problem.
func TestNobody(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	c := Nobody(15)
	calls := 0
	all, err := b.Handouts(t.Context(), c, func(_, of int) {
		if calls++; of != 45 {
			t.Errorf("%d of 45", of)
		}
	})
	if err != nil || calls != 45 || b.Equal(c, all) != 0 {
		t.Fatalf("%d calls, %v", calls, err)
	}
	for i := range b {
		seen := map[string]bool{}
		for _, h := range all {
			numbers := strings.Join(b[i].Numbers(h.Copies[i].Draw), ", ")
			if seen[numbers] {
				t.Errorf("problem %d: the numbers %s come twice", i+1, numbers)
			}
			seen[numbers] = true
		}
	}
}

// What is listed is read back as it was handed out.
func TestListReadBack(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	c := class(5)
	c.Students[2].ID = "=1+1"
	c.Students = append(c.Students, Student{ID: "s00", Attempt: 2})
	all, err := b.Handouts(t.Context(), c, nil)
	if err != nil {
		t.Fatal(err)
	}
	text := b.List(all)
	for i, reader := range []string{string(text), "\ufeff" + strings.ReplaceAll(string(text), "\n", "\r\n")} {
		listed, err := ReadList("variants.csv", strings.NewReader(reader))
		if err != nil {
			t.Fatal(err)
		}
		back, err := b.Handed("variants.csv", listed)
		if err != nil || len(back) != len(all) {
			t.Fatalf("%d: %d handouts of %d: %v", i, len(back), len(all), err)
		}
		for k, h := range back {
			if h.Student.ID != all[k].Student.ID || h.Student.Attempt != all[k].Student.Attempt {
				t.Errorf("%v is read back as %v", all[k].Student, h.Student)
			}
			for place, own := range h.Copies {
				if want := all[k].Copies[place]; own.Code != want.Code || own.Draw != want.Draw {
					t.Errorf("%s: %s is read back as %s", h.Student.ID, want.Code, own.Code)
				}
			}
		}
	}
}

// TestLists holds what is said of lists that cannot be used against the texts beside them.
func TestLists(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	files, err := filepath.Glob("testdata/list/*.csv")
	if err != nil || len(files) < 4 {
		t.Fatalf("%d lists, %v", len(files), err)
	}
	for _, path := range files {
		file, err := os.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		name := filepath.Base(path)
		listed, err := ReadList(name, file)
		file.Close()
		if err == nil {
			_, err = b.Handed(name, listed)
		}
		compare(t, strings.TrimSuffix(path, ".csv")+".txt", fmt.Sprintln(err))
	}
}

// FuzzReadList reads lists of any content: a list or a fault, no panic.
func FuzzReadList(f *testing.F) {
	f.Add("student,attempt,problem,code,digest\ns1,1,jetty-deck,22222222,0123456789ab\n")
	f.Add("\xef\xbb\xbfstudent;code;digest\r\n\"s\"\"1\";x;\r\n")
	f.Fuzz(func(t *testing.T, text string) {
		list, err := ReadList("variants.csv", strings.NewReader(text))
		if (list == nil) == (err == nil) {
			t.Errorf("list %v, fault %v", list, err)
		}
	})
}

// TestGoldenSets holds the first draws and the codes of a set's copies, and the numbers that follow from codes, against
// testdata/sets.txt. What was handed out rests on it, so no -update writes that file: a line of it never changes.
func TestGoldenSets(t *testing.T) {
	t.Parallel()
	_, b := classSet(t)
	file, err := os.Open("testdata/sets.txt")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	lines, held := bufio.NewScanner(file), 0
	for lines.Scan() {
		asked, want, found := strings.Cut(lines.Text(), " -> ")
		if !found {
			continue
		}
		held++
		if got := setLine(t, b, strings.Fields(asked)); got != want {
			t.Errorf("%s -> %s, which was %s", asked, got, want)
		}
	}
	if held < 12 {
		t.Errorf("only %d lines are held", held)
	}
}

// setLine is the code of the first draw for place, student and attempt, and the numbers that follow from it; or for a code alone
// its place and numbers.
func setLine(t *testing.T, b Batch, asked []string) string {
	t.Helper()
	if len(asked) == 1 {
		at, draw, err := b.Decode(asked[0])
		if err != nil {
			t.Fatal(err)
		}
		return fmt.Sprint(at+1) + " " + strings.Join(b[at].Numbers(draw), ", ")
	}
	place := slices.Index([]string{"1", "2", "3"}, asked[0])
	l := b[place]
	d := l.Source.First(asked[1], len(asked[2]))
	return l.Source.Code(d) + " " + strings.Join(l.Numbers(d), ", ")
}
