// Command class puts a class of SSH clients to a host on this machine, and tells how the host bears it: how long logins take that come
// all within half a minute, how long it takes from a key to what it changes on the screen while all are there, what memory and processor
// time the host needs, and what is lost when it is killed in the middle of lessons. The clients share the processors with the host, so
// what they need themselves is told too. It uses the program alone, as a class does: its files, its words, its screen.
//
//	go build -o /tmp/unpin ./cmd/unpin && go run ./.ci/class -unpin /tmp/unpin -clients 300 -kills 20
//	.ci/postgres go run ./.ci/class -unpin /tmp/unpin -clients 60 -kills 6 -exam
package main

import (
	"encoding/csv"
	"flag"
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"time"
)

// A class is a host with those who may come in.
type class struct {
	unpin   string
	folder  string
	address string
	ids     []string
	codes   []string
	host    *exec.Cmd
	store   string // shared by hosts, or empty
}

func main() {
	unpin := flag.String("unpin", "", "the program")
	clients := flag.Int("clients", 100, "how many log in")
	within := flag.Duration("within", 30*time.Second, "in what time they come")
	work := flag.Duration("work", time.Minute, "how long they work")
	pace := flag.Duration("pace", 8*time.Second, "from key to key of one of them, in the middle")
	rest := flag.Duration("rest", 20*time.Second, "how long they rest then")
	kills := flag.Int("kills", 0, "how often the host is killed in the middle of lessons by line")
	store := flag.String("store", os.Getenv("UNPIN_TEST_POSTGRES"), "a PostgreSQL, empty, for two hosts and -exam")
	exam := flag.Bool("exam", false, "an exam by line at two hosts on one database, of which one is killed again and again")
	flag.Parse()
	c := &class{unpin: *unpin}
	do := func() error { return c.lessons(*within, *work, *pace, *rest, *kills) }
	if *exam {
		c.store = *store
		do = func() error { return c.exam(*within, *work, *pace, *kills) }
	}
	if err := c.run(*clients, do); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// run does something with a class in a folder of its own.
func (c *class) run(clients int, do func() error) error {
	folder, err := os.MkdirTemp("", "class-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	c.folder = folder
	if err := c.prepare(clients); err != nil {
		return err
	}
	return do()
}

// lessons has all log in, work and rest, and then lessons killed.
func (c *class) lessons(within, work, pace, rest time.Duration, kills int) error {
	if err := c.start(); err != nil {
		return err
	}
	defer c.kill()
	if err := c.load(within, work, pace, rest); err != nil {
		return err
	}
	return c.killAgain(kills)
}

// prepare writes a roster and has codes made.
func (c *class) prepare(clients int) error {
	roster := "id\n"
	for i := range clients {
		roster += fmt.Sprintf("s%04d\n", i)
	}
	if err := os.WriteFile(filepath.Join(c.folder, "roster.csv"), []byte(roster), 0o600); err != nil {
		return err
	}
	list := filepath.Join(c.folder, "codes.csv")
	begun := time.Now()
	if out, err := exec.Command(c.unpin, c.words("--codes", list)...).CombinedOutput(); err != nil {
		return fmt.Errorf("codes: %w: %s", err, out)
	}
	fmt.Printf("%d codes made in %v\n", clients, time.Since(begun).Round(time.Millisecond))
	file, err := os.Open(list)
	if err != nil {
		return err
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		return err
	}
	for _, row := range rows[1:] {
		c.ids, c.codes = append(c.ids, row[0]), append(c.codes, row[2])
	}
	c.address, err = freeAddress()
	return err
}

// words are those that start a host.
func (c *class) words(more ...string) []string {
	words := append([]string{"host", c.folder}, more...)
	if c.store != "" {
		words = append(words, "--store", c.store)
	}
	return words
}

// freeAddress is one at which nobody listens.
func freeAddress() (string, error) {
	free, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", err
	}
	return free.Addr().String(), free.Close()
}

// start starts the host and waits until it listens.
func (c *class) start() error {
	c.host = exec.Command(c.unpin, c.words("--listen", c.address)...)
	log, err := os.OpenFile(filepath.Join(c.folder, "log"), os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o600)
	if err != nil {
		return err
	}
	defer log.Close()
	c.host.Stderr = log
	if err := c.host.Start(); err != nil {
		return err
	}
	for range 500 {
		if conn, err := net.Dial("tcp", c.address); err == nil {
			return conn.Close()
		}
		time.Sleep(20 * time.Millisecond)
	}
	return fmt.Errorf("the host does not listen")
}

// kill kills the host.
func (c *class) kill() {
	c.host.Process.Kill()
	c.host.Wait()
}

// uses is what a process has used: memory that is its own or shared, in MB, and processor time.
func uses(pid int) (memory float64, processor time.Duration) {
	status, _ := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
	for line := range strings.Lines(string(status)) {
		if rest, found := strings.CutPrefix(line, "VmRSS:"); found {
			kB, _ := strconv.ParseFloat(strings.Fields(rest)[0], 64)
			memory = kB / 1024
		}
	}
	stat, _ := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	_, rest, _ := strings.Cut(string(stat), ") ")
	if fields := strings.Fields(rest); len(fields) > 12 {
		user, _ := strconv.Atoi(fields[11])
		system, _ := strconv.Atoi(fields[12])
		processor = time.Duration(user+system) * 10 * time.Millisecond // the clock of the kernel's counts: 100 a second
	}
	return memory, processor
}
