package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/statics"
	"unpin/statics/notation"
	"unpin/tutor"
	"unpin/tutor/screen"
)

// hidden is what would steer a terminal or mislead a reader: a title for the window, colours, a control beyond ASCII as a
// character and as a bare byte, letters turned round, a blank of no width.
const hidden = "\x1b]0;x\a\x1b[31m\u009b31m\x9b\u202e\u2066\u200b\ufeff\x7f\u2028"

// escaped is the same but for the bare byte in the escapes of JSON, which YAML reads in double quotes too.
const escaped = `\u001b]0;x\u0007\u001b[31m\u009b31m\u202e\u2066\u200b\ufeff\u007f\u2028`

// soundFile is a problem without fault.
const soundFile = "title: T\nunits: kN m\njoints: {A: [0, 0], B: [4, 0]}\nmembers: [AB]\nsupports: {A: fixed}\nloads: [{point: 5, to: down, joint: B}]\n"

// checkSeen reports hidden characters, and bytes that are no UTF-8, in an output.
func checkSeen(t *testing.T, what, text string) {
	t.Helper()
	if notation.VisibleLines(text) != text {
		t.Errorf("%q has hidden characters:\n%q", what, text)
	}
}

// TestNothingHiddenByCommands feeds the commands with file names, words, answers and files that hold hidden characters,
// and looks for these in all that they write. A PDF is no text: what is written in one is looked at below.
func TestNothingHiddenByCommands(t *testing.T) {
	t.Setenv("XDG_STATE_HOME", t.TempDir())
	folder := t.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(folder, name)
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		return path
	}
	name := strings.ReplaceAll(hidden, "/", "")
	files := []string{
		write("sound"+name+".yaml", soundFile),
		write("refused"+name+".yaml", strings.Replace(soundFile, "A: fixed", "A: pin", 1)),
		write("title.yaml", strings.Replace(soundFile, "title: T", `title: "`+escaped+`"`, 1)),
		write("raw"+name+".yaml", strings.Replace(soundFile, "title: T", "title: "+hidden, 1)),
		write("title.json", `{"title": "`+escaped+`", "`+escaped+`": 1}`),
		write("field.yaml", soundFile+`"`+escaped+`": 1`),
		write("direction.yaml", strings.Replace(soundFile, "down", `"`+escaped+`"`, 1)),
		write("grade.yaml", soundFile+`grade: "`+escaped+`"`),
		write("vary.yaml", soundFile+`vary: {"`+escaped+`": 3..4 by 1}`),
		write("given.yaml", soundFile+`given: {w: "`+escaped+`"}`),
		write("ask.yaml", soundFile+`ask: {moments: "`+escaped+`", "x`+escaped+`": cw}`),
		write("joint.yaml", strings.Replace(soundFile, "members: [AB]", `members: ["A`+escaped+`B"]`, 1)),
		write("set"+name+".yaml", "id: w5\ntitle: T\nseed: \""+"s"+"\"\nproblems: [{problem: \"sound"+escaped+".yaml\"}, {problem: title.yaml}]\n"),
		write("titled.yaml", "id: w5\ntitle: \""+escaped+"\"\ncourse: \""+escaped+"\"\nproblems: [{problem: jetty-deck, find: [\""+escaped+"\"]}]\n"),
		write("list.csv", "student,code,digest\n"+hidden+",2222222"+hidden+",x\n"),
		filepath.Join(folder, "gone"+name+".yaml"), folder, hidden, hidden + "/", "solve" + hidden,
	}
	var lines [][]string
	for _, file := range files {
		for _, format := range []string{"text", "markdown", "html", "json", "svg"} {
			lines = append(lines, []string{"solve", file, "--as", format})
		}
		lines = append(lines, []string{"inspect", file}, []string{"inspect", file, "--as", "json"}, []string{"inspect", file, "--brief"},
			[]string{"vary", file, "--copies", "1"}, []string{"vary", "jetty-deck", "--roster", file}, []string{"vary", file, "--code", hidden}, []string{"new", file},
			[]string{"sheet", file}, []string{"sheet", file, "--key", "--as", "markdown"}, []string{"sheet", file, "--as", "html"}, []string{"sheet", file, "--table"},
			[]string{"sheet", file, "--table", "--as", "markdown", "--copies", "1"}, []string{"sheet", "jetty-deck", "--variants", file},
			[]string{"mark", file, "-"}, []string{"report", file}, []string{"report", file, "--as", "html"}, []string{"mark", "jetty-deck", file, "--tell"}, []string{"mark", "jetty-deck", file, "--as", "csv"}, []string{"mark", "jetty-deck", "-", "--scheme", file},
			[]string{"mark", "jetty-deck", "-", "--override", file}, []string{"mark", "jetty-deck", "-", "--compare", file}, []string{"mark", "jetty-deck", "-", "--roster", file},
			[]string{"mark", "jetty-deck", file, "--as", "json"}, []string{"mark", "jetty-deck", "-", "--variants", file},
			[]string{"practise", file, "--plain"}, []string{"practise", file, "--plain", "--find"}, []string{file},
			[]string{"solve", "jetty-deck", "-o", file + "/x.txt"}, []string{"solve", "jetty-deck", "-o", "x." + hidden}, []string{"solve", files[0], "-o", files[0], "--as", "text"})
	}
	for _, flag := range []string{"--as", "--figure", "--step", "--paper", "--only", "--" + hidden, "-o"} {
		lines = append(lines, []string{"solve", "jetty-deck", flag, hidden + "/"})
	}
	lines = append(lines, []string{"sheet", "jetty-deck", "-o", files[0] + "/x"}, []string{"sheet", "jetty-deck", "--roster", filepath.Join(folder, "list.csv"), "-o", filepath.Join(folder, name)})
	lines = append(lines, []string{"practise", "--level", hidden}, []string{"practise", "--ask", hidden}, []string{"practise", "--ask", "moments=" + hidden},
		[]string{"help", hidden}, []string{hidden, "--help"}, []string{"practise", "jetty-deck", "--plain", "--level", "blank"}, []string{"practise", "jetty-deck", "--plain", "--level", "terms"})
	answers := strings.Repeat(hidden+"\n"+"5"+hidden+"\nFx"+hidden+"\nlet "+hidden+" up\n", 3) + "hint\ntell\n" + hidden + " = 4\nquit\n"
	for _, words := range lines {
		var out, errs bytes.Buffer
		run(words, strings.NewReader(answers), &out, &errs)
		checkSeen(t, strings.Join(words, " "), out.String())
		checkSeen(t, strings.Join(words, " ")+" (errors)", errs.String())
	}
}

// TestNothingHiddenInDocuments writes a problem whose texts hold hidden characters, as no file can bring it, in all ways.
func TestNothingHiddenInDocuments(t *testing.T) {
	t.Parallel()
	p := hostile(t)
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	for _, format := range formats {
		w := writing{format: format, figure: "given", paper: worksheet.A4.Name}
		if w.inRow() {
			checkSeen(t, format, w.said(0, worksheet.Solved{Problem: p, Solution: s}))
			continue
		}
		got, err := w.document(worksheet.One(p, s))
		if err != nil {
			t.Fatal(err)
		}
		if format != "pdf" {
			checkSeen(t, format, string(got))
			continue
		}
		clean := *p
		clean.Title, clean.Text = notation.Visible(p.Title), notation.Visible(p.Text)
		want, err := w.document(worksheet.One(&clean, s))
		if err != nil || !bytes.Equal(got, want) {
			t.Errorf("the PDF is not that of the texts with escapes for what is hidden (%v)", err)
		}
	}
	l, err := tutor.NewPlain(p, tutor.Values, false)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := tutor.Plain(l, strings.NewReader(hidden+"\ntell\n"), &out); err != nil {
		t.Fatal(err)
	}
	checkSeen(t, "the plain lesson", out.String())
}

// hostile is a problem with hidden characters in its texts and names.
func hostile(t *testing.T) *problems.Problem {
	t.Helper()
	p, err := problems.Read("hostile", []byte(soundFile))
	if err != nil {
		t.Fatal(err)
	}
	h := *p
	h.Name, h.Title, h.Text = "n"+hidden, "T "+hidden, "Text "+hidden+" goes on."
	h.Warnings = []string{hidden}
	return &h
}

// TestNothingHiddenOnTheScreen shows hidden characters of names, faults and texts on the screen and types them.
func TestNothingHiddenOnTheScreen(t *testing.T) {
	t.Parallel()
	p := hostile(t)
	l, err := tutor.New(p, tutor.Values, false)
	if err != nil {
		t.Fatal(err)
	}
	entries := func() []screen.Entry {
		return []screen.Entry{{Name: p.Name, Problem: p}, {Name: "broken" + hidden, Fault: "fault " + hidden}}
	}
	for what, o := range map[string]screen.Options{"lesson": {Lesson: l, Entries: entries}, "chooser": {Entries: entries}} {
		m := screen.New(o)
		if cmd := m.Init(); cmd != nil {
			m.Update(cmd())
		}
		m.Update(tea.WindowSizeMsg{Width: 80, Height: 24})
		for _, key := range []string{"", "down", "tab", "enter", "tab", "ctrl+f", "?", "esc"} {
			if key != "" {
				m.Update(keyNamed(key))
			}
			m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(strings.ToValidUTF8(hidden, ""))})
			checkSeen(t, what+" "+key, withoutColour(m.View()))
		}
	}
}
