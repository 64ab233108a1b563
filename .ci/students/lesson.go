package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"time"
)

// lesson is a running `unpin practise --plain`.
type lesson struct {
	cmd      *exec.Cmd
	in       io.WriteCloser
	out      *bufio.Reader
	level    string
	question string   // the line after "? "
	page     []string // what was said before it
	typed    []string // all that was typed so far
	state    string
	kill     *time.Timer
}

// begin starts a lesson and reads up to its first question.
func (p *program) begin(path, level string) (*lesson, error) {
	state, err := os.MkdirTemp("", "students-state-")
	if err != nil {
		return nil, err
	}
	l := &lesson{level: level, state: state}
	l.cmd = exec.Command(p.path, "practise", "--plain", p.levelFlag, p.levelWord(level), path)
	l.cmd.Env = append(os.Environ(), "XDG_STATE_HOME="+state, "XDG_CONFIG_HOME="+state, "HOME="+state)
	if l.in, err = l.cmd.StdinPipe(); err != nil {
		return nil, err
	}
	out, err := l.cmd.StdoutPipe()
	if err != nil {
		return nil, err
	}
	l.out = bufio.NewReader(out)
	if err := l.cmd.Start(); err != nil {
		return nil, err
	}
	l.kill = time.AfterFunc(5*time.Minute, func() { _ = l.cmd.Process.Kill() })
	return l, l.read()
}

// read takes lines up to the next question; at the end of the lesson the question is empty.
func (l *lesson) read() error {
	l.page, l.question = nil, ""
	for {
		line, err := l.out.ReadString('\n')
		if err == io.EOF {
			return nil
		}
		if err != nil {
			return err
		}
		line = strings.TrimRight(line, "\n")
		if q, ok := strings.CutPrefix(line, "? "); ok {
			l.question = q
			return nil
		}
		l.page = append(l.page, line)
	}
}

// say types a line and reads the answer, without what is repeated of the question.
func (l *lesson) say(line string) ([]string, error) {
	l.typed = append(l.typed, line)
	if _, err := fmt.Fprintln(l.in, line); err != nil {
		return nil, err
	}
	err := l.read()
	return l.page, err
}

func (l *lesson) end() {
	_ = l.in.Close()
	_, _ = io.Copy(io.Discard, l.out)
	_ = l.cmd.Wait()
	l.kill.Stop()
	_ = os.RemoveAll(l.state)
}

// program is the binary under test, with the words that its own help gives for levels.
type program struct {
	path, levelFlag string
	words           string
}

func newProgram(path string) (*program, error) {
	out, err := exec.Command(path, "practise", "--help").Output()
	if err != nil {
		return nil, err
	}
	p := &program{path: path, levelFlag: "--rung", words: string(out)}
	if strings.Contains(p.words, "--level") {
		p.levelFlag = "--level"
	}
	return p, nil
}

// levelWord is the program's word for a level: plan was once called order.
func (p *program) levelWord(level string) string {
	if level == "plan" && !strings.Contains(p.words, "|plan|") {
		return "order"
	}
	return level
}

// asked is a question taken apart: what is asked, and for a section where.
type asked struct {
	what    string // a force's name, or N, V, M, or sum, equation, force, arm, sign, couple
	member  string
	x       float64
	after   string // before, after or nothing
	section bool
	term    int
}

func readQuestion(q string) asked {
	head, _, _ := strings.Cut(q, " [")
	var a asked
	if n := len(head); n > 6 && strings.Contains("NVM", head[:1]) && head[1] == '(' {
		body := strings.TrimSuffix(head[2:], ")")
		m, rest, _ := strings.Cut(body, ", ")
		x, side, _ := strings.Cut(rest, " ")
		return asked{what: head[:1], member: m, x: fraction(x), after: side, section: true}
	}
	words := strings.Fields(head)
	a.what = words[0]
	if len(words) > 1 {
		_, _ = fmt.Sscan(words[1], &a.term)
	}
	return a
}
