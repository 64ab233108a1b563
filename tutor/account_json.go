package tutor

import (
	"bytes"
	"encoding/json"
	"time"
)

// JSON is an account for programs: one object. Dates are calendar days, 2006-01-02; a negative due_in is overdue; frames and days are those on which a
// skill came right, as far as they count, and wants is what is missing for it to stand.
func (a Account) JSON() []byte {
	type skill struct {
		Name   string `json:"name"`
		What   string `json:"what"`
		Right  int    `json:"right"`
		Of     int    `json:"of"`
		Frames int    `json:"frames"`
		Days   int    `json:"days"`
		State  string `json:"state"`
		Last   string `json:"last"`
		DueIn  int    `json:"due_in"`
		Wants  string `json:"wants"`
	}
	type mistake struct {
		ID    string `json:"id"`
		Says  string `json:"says"`
		Times int    `json:"times"`
		Last  string `json:"last"`
	}
	type session struct {
		Problem string `json:"problem"`
		Level   string `json:"level"`
		Exam    bool   `json:"exam"`
		First   string `json:"first"`
		Last    string `json:"last"`
		Answers int    `json:"answers"`
		Right   int    `json:"right"`
		Of      int    `json:"of"`
	}
	page := struct {
		Skills   []skill   `json:"skills"`
		Unmet    []string  `json:"unmet"`
		Mistakes []mistake `json:"mistakes"`
		Sessions []session `json:"sessions"`
	}{[]skill{}, []string{}, []mistake{}, []session{}}
	for _, s := range a.Skills {
		page.Skills = append(page.Skills, skill{s.Name, s.Doc, s.Right, s.Of, s.Frames(), s.DaysHeld(), s.State, s.Last.Format(time.DateOnly), s.Days, s.Wants()})
	}
	for _, s := range a.Unmet {
		page.Unmet = append(page.Unmet, s.Name)
	}
	for _, m := range a.Mistakes {
		page.Mistakes = append(page.Mistakes, mistake{m.ID, m.Says, m.Times, m.Last.Format(time.DateOnly)})
	}
	for _, s := range a.Sessions {
		page.Sessions = append(page.Sessions, session{s.Problem, s.Level, s.Exam, s.First.Format(time.DateOnly), s.Last.Format(time.DateOnly), s.Answers, s.Steps.Right, s.Steps.Of})
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", " ")
	if err := e.Encode(page); err != nil {
		panic("internal error: " + err.Error()) // strings and whole numbers alone
	}
	return b.Bytes()
}
