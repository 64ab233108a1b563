// Command students works lessons of unpin as students do who make mistakes, and measures what they are told. It shares no code
// and no rule with packages slip and judging: frames, solution, terms, mistakes and the reading of replies are its own.
//
//	go build -o /tmp/unpin ./cmd/unpin && go run ./.ci/students -unpin /tmp/unpin -out /tmp/students -frames 60
//
// It writes the tables to standard output, and to the folder the frames and, for each mistake that was not met, how to make it again.
package main

import (
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"time"
)

func main() {
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func run() error {
	unpin := flag.String("unpin", "", "the built program under test")
	out := flag.String("out", "", "folder for the frames and what was missed")
	frames := flag.Int("frames", 60, "how many frames")
	seed := flag.Uint64("seed", 700000, "seed of the first frame; each further one has the next")
	per := flag.Int("per", 5, "mistakes at a question; 0 only types true values")
	levels := flag.String("levels", "values,terms,plan,blank", "levels, with commas between")
	limit := flag.Duration("time", time.Hour, "no frame is begun after this time")
	whole := flag.Int("papers", 0, "in place of lessons, so many papers of each kind on each frame, marked by unpin mark")
	carry := flag.String("carry", carryFigures, "how a paper's values are carried on: figures, full or products")
	hand := flag.Int("by-hand", 0, "in place of lessons, so many papers to be marked by people, without verdicts")
	flag.Parse()
	if *unpin == "" || *out == "" {
		return errors.New("-unpin and -out are needed")
	}
	if err := os.MkdirAll(*out, 0o755); err != nil {
		return err
	}
	if *whole > 0 {
		return papers(*unpin, *out, *carry, *seed, *frames, *whole)
	}
	if *hand > 0 {
		return byHand(*unpin, *out, *seed, *hand)
	}
	p, err := newProgram(*unpin)
	if err != nil {
		return err
	}
	ta := newTally()
	start := time.Now()
	for s := *seed; s < *seed+uint64(*frames) && time.Since(start) < *limit; s++ {
		if err := ta.frame(p, *out, s, *per, strings.Split(*levels, ",")); err != nil {
			ta.lost(fmt.Sprintf("frame %d: %v", s, err))
		}
	}
	ta.report(os.Stdout)
	return ta.write(*out)
}

// frame draws one frame, checks unpin's solution of it, and plays it at each level.
func (ta *tally) frame(p *program, out string, seed uint64, per int, levels []string) error {
	path := filepath.Join(out, fmt.Sprintf("f%d.yaml", seed))
	if err := os.WriteFile(path, []byte(newDraft(seed).text(fmt.Sprintf("frame %d", seed))), 0o644); err != nil {
		return err
	}
	t, err := newTask(p.path, path)
	if err != nil {
		return err
	}
	ta.frames++
	for _, level := range levels {
		l, err := p.begin(path, level)
		if err != nil {
			return err
		}
		pl := &play{
			lesson: l, program: p, t: t, tally: ta, r: rand.New(rand.NewPCG(seed, uint64(len(level)))), figures: 3 + int(seed%2),
			own: map[string]float64{}, cuts: map[string][]passedCut{}, per: per, randoms: per > 0, order: t.planned(),
		}
		err = pl.run()
		l.end()
		if err != nil {
			return err
		}
	}
	return nil
}
