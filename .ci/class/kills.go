package main

import (
	"fmt"
	"io"
	"strings"
	"sync"
	"time"
)

// atOnce is how many are in lessons by line when the host is killed.
const atOnce = 20

// killAgain kills the host in the middle of lessons, and starts it again; then it holds what is kept against what was answered.
func (c *class) killAgain(kills int) error {
	lost, beyond, told := 0, 0, make([]int, min(atOnce, len(c.ids)))
	for range kills {
		before := make([]int, len(told))
		for i := range told {
			n, err := c.kept(i)
			if err != nil {
				return err
			}
			before[i], told[i] = n, 0
		}
		var group sync.WaitGroup
		for i := range told {
			group.Go(func() { told[i] = c.lesson(i) })
		}
		time.Sleep(3 * time.Second)
		c.kill()
		group.Wait()
		if err := c.start(); err != nil {
			return err
		}
		for i := range told {
			n, err := c.kept(i)
			if err != nil {
				return err
			}
			switch more := n - before[i]; {
			case more < told[i]:
				lost += told[i] - more
			case more > told[i]+1:
				beyond++
			}
		}
	}
	if kills > 0 {
		fmt.Printf("%d times killed in the middle of %d lessons: %d acknowledged answers lost, %d lessons with more than one kept that was not acknowledged\n", kills, len(told), lost, beyond)
	}
	return nil
}

// lesson answers until the connection breaks, and returns how many answers the host has acknowledged.
func (c *class) lesson(i int) (told int) {
	one, err := login(c.address, c.codes[i], "plain riding-hall")
	if err != nil {
		return 0
	}
	defer one.conn.Close()
	for {
		if _, err := io.WriteString(one.in, "tell\n"); err != nil {
			return told
		}
		if one.sees("told", 2*time.Second) != nil {
			return told
		}
		told++
		time.Sleep(50 * time.Millisecond)
	}
}

// kept is how many answers of a learner the host has kept.
func (c *class) kept(i int) (int, error) {
	one, err := login(c.address, c.codes[i], "record --export")
	if err != nil {
		return 0, err
	}
	defer one.conn.Close()
	if err := one.session.Wait(); err != nil {
		return 0, err
	}
	return strings.Count(one.text.String(), `"outcome":"told"`), nil
}
