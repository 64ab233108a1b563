package main

import (
	"bytes"
	"fmt"
	"io"
	"sync"
	"time"

	"golang.org/x/crypto/ssh"
)

// A client is one learner at a terminal, or by line.
type client struct {
	conn    *ssh.Client
	session *ssh.Session
	in      io.WriteCloser
	mutex   sync.Mutex
	text    bytes.Buffer  // what came since it was last looked at
	came    chan struct{} // something came
	gone    chan struct{} // closed when the line has broken
}

// Write takes what the host sends.
func (c *client) Write(b []byte) (int, error) {
	c.mutex.Lock()
	c.text.Write(b)
	c.mutex.Unlock()
	select {
	case c.came <- struct{}{}:
	default:
	}
	return len(b), nil
}

// login logs in with a code, and opens a session: on a terminal, or by a word.
func login(address, code, word string) (*client, error) {
	answer := func(_, _ string, questions []string, _ []bool) ([]string, error) {
		answers := make([]string, len(questions))
		for i := range answers {
			answers[i] = code
		}
		return answers, nil
	}
	conn, err := ssh.Dial("tcp", address, &ssh.ClientConfig{User: "class", Auth: []ssh.AuthMethod{ssh.KeyboardInteractive(answer)},
		HostKeyCallback: ssh.InsecureIgnoreHostKey(), Timeout: 60 * time.Second})
	if err != nil {
		return nil, err
	}
	c := &client{conn: conn, came: make(chan struct{}, 1), gone: make(chan struct{})}
	go func() {
		conn.Wait()
		close(c.gone)
	}()
	if c.session, err = conn.NewSession(); err != nil {
		return nil, err
	}
	c.session.Stdout, c.session.Stderr = c, c
	if c.in, err = c.session.StdinPipe(); err != nil {
		return nil, err
	}
	if word != "" {
		return c, c.session.Start(word)
	}
	if err := c.session.RequestPty("xterm", 24, 80, ssh.TerminalModes{}); err != nil {
		return nil, err
	}
	return c, c.session.Shell()
}

// sees waits until a text came; what came before it is forgotten.
func (c *client) sees(text string, patience time.Duration) error {
	_, err := c.seesOne(patience, text)
	return err
}

// seesOne waits until one of some texts came, and returns which came first; what came before it is forgotten.
func (c *client) seesOne(patience time.Duration, texts ...string) (which int, err error) {
	late := time.After(patience)
	for {
		if which, found := c.first(texts); found {
			return which, nil
		}
		select {
		case <-c.came:
		case <-c.gone:
			if which, found := c.first(texts); found {
				return which, nil
			}
			return 0, fmt.Errorf("the line breaks before %q comes", texts[0])
		case <-late:
			return 0, fmt.Errorf("%q does not come", texts[0])
		}
	}
}

// first takes what came up to the first of some texts.
func (c *client) first(texts []string) (which int, found bool) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	best := -1
	for i, text := range texts {
		if at := bytes.Index(c.text.Bytes(), []byte(text)); at >= 0 && (best < 0 || at < best) {
			best, which = at, i
		}
	}
	if best >= 0 {
		c.text.Next(best + len(texts[which]))
	}
	return which, best >= 0
}

// answered types a key and waits until something comes.
func (c *client) answered(key string) (time.Duration, error) {
	c.mutex.Lock()
	c.text.Reset()
	c.mutex.Unlock()
	select {
	case <-c.came:
	default:
	}
	begun := time.Now()
	if _, err := io.WriteString(c.in, key); err != nil {
		return 0, err
	}
	select {
	case <-c.came:
		return time.Since(begun), nil
	case <-time.After(5 * time.Second):
		return 0, fmt.Errorf("a key changes nothing within 5 s")
	}
}
