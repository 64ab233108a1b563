package problems

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// TestSearch ranks one problem by what is typed to find it.
func TestSearch(t *testing.T) {
	t.Parallel()
	p := &Problem{Title: "Mill bridge with a hinge", Text: "A footbridge over a leat.", Grade: 2, Skills: []string{"couple-in-sum", "pin-pair"}}
	for _, c := range []struct {
		typed string
		want  Fit
	}{
		{"", InTitle}, {"b", InTitle}, {"bri", InTitle}, {"mill-b", InTitle}, {"hin", InTitle}, {"MILL", InTitle},
		{"f", InText}, {"leat", InText}, {"grade", InTitle}, {"bridge foot", InText}, {"2", InText}, {"couple", InText},
		{"ridge", Within}, {"bridge ridge", Within}, {"tbri", Within},
		{"z", NoFit}, {"dg", NoFit}, {"crane", NoFit}, {"bridge crane", NoFit},
		{"grade 2", InTitle}, {"grade 2 bridge", InTitle}, {"leat grade 2", InText}, {"grade 1-3", InTitle}, {"grade 2-", InTitle},
		{"grade 3", NoFit}, {"bridge grade 3", NoFit}, {"grade 3-6", NoFit}, {"grade 1", NoFit}, {"grade bridge", InText}, {"grade x-3", NoFit},
		{"skill", InTitle}, {"skill couple", InTitle}, {"skill pin-p", InTitle}, {"skill sum grade 2", InTitle},
		{"skill hinge", NoFit}, {"skill bridge", NoFit}, {"skill couple grade 3", NoFit},
	} {
		if got := SearchFor(c.typed).Fit("mill-bridge", p); got != c.want {
			t.Errorf("%q is %d, want %d", c.typed, got, c.want)
		}
	}
	if got := SearchFor("bro").Fit("broken.yaml", nil); got != InTitle {
		t.Errorf("a file that cannot be used is found as %d", got)
	}
	if SearchFor(" grade ").Asks() || SearchFor("").Asks() || !SearchFor("grade 3").Asks() || !SearchFor("skill sum").Asks() || !SearchFor("b").Asks() {
		t.Error("what is asked for and what is not is mistaken")
	}
}

// TestSearchOfLibrary holds grades and skills against the files: what is found is what has them, counted another way.
func TestSearchOfLibrary(t *testing.T) {
	t.Parallel()
	found := func(typed string) (names []string) {
		for _, p := range solvedLibrary(t) {
			if SearchFor(typed).Fit(p.Name, p.Problem) < NoFit {
				names = append(names, p.Name)
			}
		}
		return names
	}
	for grade := 1; grade <= 6; grade++ {
		var want []string
		for _, p := range solvedLibrary(t) {
			if p.Grade == grade {
				want = append(want, p.Name)
			}
		}
		if got := found(fmt.Sprint("grade ", grade)); !slices.Equal(got, want) {
			t.Errorf("of grade %d are %v, and %v are found", grade, want, got)
		}
	}
	for _, skill := range skillNames() {
		var want []string
		for _, p := range solvedLibrary(t) {
			if slices.Contains(p.Skills, skill) {
				want = append(want, p.Name)
			}
		}
		if got := found("skill " + skill); !slices.Equal(got, want) {
			t.Errorf("%s is exercised by %s, and found are %s", skill, strings.Join(want, " "), strings.Join(got, " "))
		}
	}
}
