package host

import (
	"sync"
	"time"
)

// guesses counts wrong codes, by where they come from and in all, and says when there were too many. A class behind one address is let
// in: only what is wrong counts.
type guesses struct {
	now   func() time.Time
	mutex sync.Mutex
	from  map[string]int
	all   int
	since time.Time
}

// How many wrong codes are taken in a minute.
const (
	mostGuessesFrom = 60
	mostGuesses     = 600
)

// wrong notes a wrong code.
func (g *guesses) wrong(from string) {
	g.mutex.Lock()
	defer g.mutex.Unlock()
	g.renew()
	g.from[from]++
	g.all++
}

// tooMany reports whether no more codes are heard from there for now.
func (g *guesses) tooMany(from string) bool {
	g.mutex.Lock()
	defer g.mutex.Unlock()
	g.renew()
	return g.from[from] >= mostGuessesFrom || g.all >= mostGuesses
}

// renew forgets what is over a minute old.
func (g *guesses) renew() {
	if now := g.now(); g.from == nil || now.Sub(g.since) >= time.Minute || now.Before(g.since) {
		g.from, g.all, g.since = map[string]int{}, 0, now
	}
}
