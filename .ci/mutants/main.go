// Command mutants measures how well the tests guard the code: it draws small faults by a seed, puts one at a time into the
// code, and runs the tests. A fault that fails no test points at a rule that nothing holds.
//
//	go run ./.ci/mutants            # 60 faults, about two hours
//	go run ./.ci/mutants -n 3 -v -check=false -packages ./statics/slip -all ./statics/judging    # a try
//
// The tree is never touched: the compiler is given the changed file in place of the true one (go build -overlay). A fault
// that does not compile is drawn again. The kind of a fault is drawn first, evenly, and then its place among all places for
// that kind, so that what is frequent in the code does not crowd out what is rare. The same seed on the same code draws the
// same faults.
package main

import (
	"flag"
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"time"
)

// guarded are the packages that faults are put into, where they exist.
var guarded = []string{
	"./statics", "./statics/slip", "./statics/judging", "./statics/figure/...", "./statics/wording", "./problems/worksheet",
}

func main() {
	seed := flag.Uint64("seed", 20261128, "what the faults are drawn by")
	n := flag.Int("n", 60, "how many faults")
	first := flag.Int("first", 1, "the number of the first to try; those before are drawn only, as where a run was cut short")
	only := flag.String("packages", strings.Join(guarded, ","), "the packages to put them into, parted by commas")
	all := flag.String("all", "./...", "the packages whose tests a fault meets that its own package does not notice")
	check := flag.Bool("check", true, "run all tests without a fault first")
	verbose := flag.Bool("v", false, "show which tests fail")
	flag.Parse()
	if err := measure(*seed, *first, *n, strings.Split(*only, ","), *all, *check, *verbose); err != nil {
		fmt.Fprintln(os.Stderr, "mutants:", err)
		os.Exit(2)
	}
}

// measure draws n faults, runs the tests against each from the first on, and reports.
func measure(seed uint64, first, n int, patterns []string, everything string, check, verbose bool) error {
	sites, err := sitesIn(patterns)
	if err != nil {
		return err
	}
	kinds := slices.Sorted(maps.Keys(sites))
	if len(kinds) == 0 {
		return fmt.Errorf("no place for a fault in %s", strings.Join(patterns, ", "))
	}
	if check {
		if failed := runTests(nil, everything); failed != "" {
			return fmt.Errorf("the tests fail without any fault, so nothing can be measured:\n%s", failed)
		}
	}
	random := rand.New(rand.NewPCG(seed, 0))
	var own, all int
	var survivors []site
	drawn := map[site]bool{}
	for number := 1; number <= n && len(drawn) < total(sites); {
		kind := kinds[random.IntN(len(kinds))]
		s := sites[kind][random.IntN(len(sites[kind]))]
		if drawn[s] {
			continue
		}
		drawn[s] = true
		begun := time.Now()
		if number < first {
			fits, err := builds(s)
			if err != nil {
				return err
			}
			if fits {
				number++
			}
			continue
		}
		fate, failed, err := tryFault(s, everything)
		if err != nil {
			return err
		}
		switch fate {
		case unfit:
			continue
		case killedByOwn:
			own, all = own+1, all+1
		case killedByAll:
			all++
		case survived:
			survivors = append(survivors, s)
		}
		fmt.Printf("%3d  %-14s %4.0f s  %s\n", number, fate, time.Since(begun).Seconds(), s)
		if verbose && failed != "" {
			fmt.Println(failed)
		}
		number++
	}
	report(n-first+1, own, all, survivors)
	return nil
}

// total is how many places there are.
func total(sites map[string][]site) int {
	n := 0
	for _, list := range sites {
		n += len(list)
	}
	return n
}

// report writes the shares and the faults that no test noticed.
func report(n, own, all int, survivors []site) {
	rate := func(killed int) string {
		return fmt.Sprintf("%d of %d, %.0f %%", killed, n, 100*float64(killed)/float64(n))
	}
	fmt.Printf("\nkilled by the package's own tests: %s\nkilled in all: %s\n", rate(own), rate(all))
	for _, s := range survivors {
		fmt.Println("survived:", s)
	}
}
