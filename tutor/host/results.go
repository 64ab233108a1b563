package host

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/charmbracelet/ssh"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/tutor"
	"unpin/tutor/marking"
)

// instructorWords are those that an instructor may write after the address.
const instructorWords = `An instructor's key shows the board on a terminal. These words may follow the address:
  answers SET         the papers of an exam that were handed in, signed, as unpin mark reads them
  answers SET --csv   the same values as a table
  marks SET           their marks as a table, as unpin report reads it; --json and --text write them so
  health              how the host is`

// instructed does what an instructor's words say, and returns the exit code.
func (h exams) instructed(s ssh.Session, words []string) int {
	form := ""
	if len(words) == 3 {
		form = words[2]
	}
	write := map[string]func(io.Writer, *set) error{
		"answers ": h.answers, "answers --csv": h.table, "marks ": h.marksCSV, "marks --json": h.marksJSON, "marks --text": h.marksText,
	}[words[0]+" "+form]
	if len(words) < 2 || len(words) > 3 || write == nil {
		say(s.Stderr(), instructorWords)
		return 2
	}
	exam := h.examNamed(words[1])
	if exam == nil {
		say(s.Stderr(), "There is no exam "+words[1]+" here; a set is one if its file has minutes.")
		return 2
	}
	var out bytes.Buffer
	err := write(&out, exam)
	if err != nil {
		say(s.Stderr(), err.Error())
		return 1
	}
	h.o.Log.Info("an instructor has results", "words", strings.Join(words, " "), "key", fingerprint(s.PublicKey()))
	out.WriteTo(s)
	h.sayMissing(s.Stderr(), exam)
	return 0
}

// each goes over the papers that were handed in, by the order of ids.
func (h exams) each(s *set, do func(id, paper string, sitting *tutor.Sitting) error) error {
	for _, id := range h.roll() {
		text, sitting, err := h.paper(s, id)
		if err == nil && text != "" {
			err = do(id, text, sitting)
		}
		if err != nil {
			return fmt.Errorf("the paper of %s: %w", id, err)
		}
	}
	return nil
}

// roll lists the ids of the roster in order.
func (h exams) roll() []string {
	var all []string
	for id := range h.door.students {
		all = append(all, id)
	}
	slices.SortFunc(all, cmp.Compare[string])
	return all
}

// sayMissing says who has not handed in.
func (h exams) sayMissing(to io.Writer, s *set) {
	var not, still []string
	for _, id := range h.roll() {
		switch at, _, err := h.stageOf(s, id); {
		case err != nil:
		case at == unbegun:
			not = append(not, id)
		case at == writing:
			still = append(still, id)
		}
	}
	for _, one := range []struct {
		what string
		ids  []string
	}{{"not begun", not}, {"still writing, and not among these", still}} {
		if len(one.ids) > 0 {
			say(to, one.what+": "+strings.Join(one.ids, ", "))
		}
	}
}

// answers writes signed papers.
func (h exams) answers(to io.Writer, s *set) error {
	return h.each(s, func(_, text string, _ *tutor.Sitting) error {
		_, err := io.WriteString(to, text)
		return err
	})
}

// table writes the values of papers.
func (h exams) table(to io.Writer, s *set) error {
	rows := [][]string{{"student", "problem", "code", "attempt", "quantity", "value"}}
	err := h.each(s, func(id, text string, _ *tutor.Sitting) error {
		all, err := marking.ReadAnswers(id, strings.NewReader(text))
		if err != nil {
			return err
		}
		for _, p := range all.Papers {
			for _, e := range p.Entries {
				rows = append(rows, []string{id, p.Problem, p.Code, fmt.Sprint(p.Attempt), e.Quantity, e.Value})
			}
		}
		return nil
	})
	if err == nil {
		_, err = to.Write(variant.WriteCSV(rows))
	}
	return err
}

// marked marks all papers by the scheme of the set.
func (h exams) marked(s *set, take func(*marking.Result) error) error {
	return h.each(s, func(id, text string, sitting *tutor.Sitting) error {
		all, err := marking.ReadAnswers(id, strings.NewReader(text))
		if err != nil {
			return err
		}
		for _, t := range sitting.Tasks {
			at := slices.IndexFunc(all.Papers, func(p *marking.Paper) bool { return p.Problem == t.Name })
			if at < 0 {
				continue
			}
			m, err := marking.New(t.Solved, t.Find)
			if err != nil {
				return err
			}
			if err := take(tutor.MarkPaper(m, all.Papers[at], s.Scheme, t.Points, true)); err != nil {
				return err
			}
		}
		return nil
	})
}

// marksCSV writes marks as a table.
func (h exams) marksCSV(to io.Writer, s *set) error {
	to.Write(marking.Head())
	return h.marked(s, func(r *marking.Result) error {
		_, err := to.Write(r.CSV())
		return err
	})
}

// marksJSON writes marks as a list of objects.
func (h exams) marksJSON(to io.Writer, s *set) error {
	all := []json.RawMessage{}
	err := h.marked(s, func(r *marking.Result) error {
		one, err := r.JSON((*problems.Scheme)(s.Scheme).Digest())
		all = append(all, one)
		return err
	})
	text, bad := json.MarshalIndent(all, "", "  ")
	if err = errors.Join(err, bad); err == nil {
		_, err = to.Write(append(text, '\n'))
	}
	return err
}

// marksText writes a line for each paper, then what they came to.
func (h exams) marksText(to io.Writer, s *set) error {
	var list marking.ClassList
	err := h.marked(s, func(r *marking.Result) error {
		list.Add(r)
		return nil
	})
	if err == nil {
		_, err = io.WriteString(to, strings.TrimSuffix(list.Text(), "\n")+"\n")
	}
	return err
}
