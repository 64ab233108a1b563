package main

import (
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"time"
)

// examSet is what all sit: more questions than anybody answers here.
const examSet = "id: w1\ntitle: Week 1\nseed: a secret\nlevel: values\nminutes: 60\nopens: %s\nproblems:\n  - {problem: quay-gantry, points: 10}\n  - {problem: riding-hall, points: 15}\n"

// exam has all sit an exam by line at two hosts on one database, kills one of the two again and again, and holds what is kept at the end
// against what was acknowledged.
func (c *class) exam(within, work, pace time.Duration, kills int) error {
	set := fmt.Sprintf(examSet, time.Now().Add(-time.Minute).UTC().Format("2006-01-02T15:04Z07:00"))
	if err := os.WriteFile(filepath.Join(c.folder, "w1.yaml"), []byte(set), 0o600); err != nil {
		return err
	}
	other := *c
	var err error
	if other.address, err = freeAddress(); err != nil {
		return err
	}
	hosts := [2]*class{c, &other}
	for _, h := range hosts {
		if err := h.start(); err != nil {
			return err
		}
		defer func() { h.kill() }()
	}
	var begins, answers, again times
	var group sync.WaitGroup
	end := time.Now().Add(within + work)
	sitters := make([]*sitter, len(c.ids))
	for i := range sitters {
		sitters[i] = &sitter{hosts: hosts, at: i % 2, code: c.codes[i], begins: &begins, answers: &answers, again: &again}
		group.Go(func() {
			time.Sleep(within * time.Duration(i) / time.Duration(len(c.ids)))
			sitters[i].sit(end, pace)
		})
	}
	time.Sleep(within)
	for n := range kills {
		time.Sleep(work / time.Duration(kills+1))
		hosts[n%2].kill()
		time.Sleep(min(5*time.Second, work/time.Duration(2*kills+2)))
		if err := hosts[n%2].start(); err != nil {
			return err
		}
	}
	group.Wait()
	begins.tell("logins, from the call to the exam")
	answers.tell("answers, from the line to its acknowledgement")
	again.tell("from a line that broke to the next acknowledgement, at the other host")
	return told(sitters, kills)
}

// told holds what is kept against what was acknowledged.
func told(sitters []*sitter, kills int) error {
	acknowledged, lost, beyond, doubled := 0, 0, 0, 0
	var mutex sync.Mutex
	var group sync.WaitGroup
	faults := map[string]int{}
	for _, s := range sitters {
		group.Go(func() {
			kept, err := s.kept()
			mutex.Lock()
			defer mutex.Unlock()
			if err != nil {
				faults[err.Error()]++
				return
			}
			acknowledged += len(s.acknowledged)
			l, b, d := compare(s.acknowledged, kept)
			lost, beyond, doubled = lost+l, beyond+b, doubled+d
		})
	}
	group.Wait()
	fmt.Printf("an exam of %d at two hosts, %d kills: %d answers acknowledged, %d lost, %d kept besides, %d kept twice or out of order\n", len(sitters), kills, acknowledged, lost, beyond, doubled)
	for fault, n := range faults {
		fmt.Printf("%d papers cannot be read: %s\n", n, fault)
	}
	return nil
}

// compare counts what was acknowledged and is not kept, what is kept besides, and what does not come once and in its order.
func compare(acknowledged, kept []int) (lost, beyond, doubled int) {
	is, last := map[int]int{}, 0
	for _, n := range kept {
		if is[n]++; n <= last {
			doubled++
		}
		last = n
	}
	for _, n := range acknowledged {
		if is[n] == 0 {
			lost++
		}
		delete(is, n)
	}
	return lost, len(is), doubled
}

// A sitter sits the exam, at the other host whenever the line breaks. The answers are numbers, each one more than the last.
type sitter struct {
	hosts                  [2]*class
	at                     int
	code                   string
	begun                  bool
	next                   int // the number typed last
	acknowledged           []int
	broke                  time.Time // when the line broke; zero where it stands
	begins, answers, again *times
}

// sit sits until a time.
func (s *sitter) sit(end time.Time, pace time.Duration) {
	for s.next = 1000; time.Now().Before(end); s.at = 1 - s.at {
		begun := time.Now()
		one, err := s.enter()
		if s.begins.add(time.Since(begun), err); err == nil {
			s.work(one, end, pace)
			one.conn.Close()
		} else {
			time.Sleep(200 * time.Millisecond)
		}
		if s.broke.IsZero() {
			s.broke = time.Now()
		}
	}
}

// enter logs in and is at the list of the paper's problems.
func (s *sitter) enter() (*client, error) {
	word := "plain w1"
	if s.begun {
		word = "plain"
	}
	one, err := login(s.hosts[s.at].address, s.code, word)
	if err != nil {
		return nil, err
	}
	which, err := one.seesOne(20*time.Second, "? begin or quit", "? problem [number, name or hand in]")
	if err == nil && which == 0 {
		io.WriteString(one.in, "begin\n")
		_, err = one.seesOne(20*time.Second, "? problem [number, name or hand in]")
	}
	if err != nil {
		one.conn.Close()
		return nil, err
	}
	s.begun = true
	return one, nil
}

// work answers until a time, or the line breaks.
func (s *sitter) work(one *client, end time.Time, pace time.Duration) {
	for problem := 1; problem <= 2; problem++ {
		io.WriteString(one.in, strconv.Itoa(problem)+"\n")
		if _, err := one.seesOne(10*time.Second, "kN]", "m]"); err != nil {
			return
		}
		for answering := true; answering; {
			if time.Sleep(pace); time.Now().After(end) {
				return
			}
			s.next++
			begun := time.Now()
			if _, err := fmt.Fprintln(one.in, s.next); err != nil {
				return
			}
			_, err := one.seesOne(10*time.Second, "noted")
			if err != nil {
				return
			}
			s.answers.add(time.Since(begun), nil)
			s.acknowledged = append(s.acknowledged, s.next)
			if !s.broke.IsZero() {
				s.again.add(time.Since(s.broke), nil)
				s.broke = time.Time{}
			}
			which, err := one.seesOne(10*time.Second, "? problem [", "kN]", "m]")
			if err != nil {
				return
			}
			answering = which > 0
		}
	}
}

// kept hands the paper in, and lists the numbers that the host has kept.
func (s *sitter) kept() ([]int, error) {
	one, err := s.enter()
	if err != nil {
		return nil, err
	}
	defer one.conn.Close()
	io.WriteString(one.in, "hand in\nhand in\n")
	if err := one.sees("The paper is handed in", 20*time.Second); err != nil {
		return nil, err
	}
	export, err := login(s.hosts[s.at].address, s.code, "record --export")
	if err != nil {
		return nil, err
	}
	defer export.conn.Close()
	if err := export.session.Wait(); err != nil {
		return nil, err
	}
	var all []int
	for line := range strings.Lines(export.text.String()) {
		var r struct{ Typed, Outcome string }
		if n := 0; json.Unmarshal([]byte(line), &r) == nil && r.Outcome == "noted" {
			if n, err = strconv.Atoi(r.Typed); err == nil {
				all = append(all, n)
			}
		}
	}
	return all, nil
}
