package main

import (
	"regexp"
	"slices"
	"strings"
)

// outcome is what a reply makes of a mistake, as a person reads it.
type outcome int

const (
	named      outcome = iota // the mistake is said
	questioned                // one of several readings that are asked about
	broad                     // the whole sum is sent back
	otherTerm                 // another term or other readings are asked about
	alike                     // another mistake is said that gives the same number
	falseStory                // another mistake is said
	passed                    // the value was accepted
)

var outcomes = []string{"named", "asked", "broadly", "asks other", "alike", "false", "accepted"}

// judge reads a reply. A question about a force or a printed product counts where it is the one that was altered, and what is
// asked of it (its size, arm, sense, or whether it counts) is what was altered; where the sum is printed the term alone is enough.
func judge(tr *tried) outcome {
	r := strings.ToLower(tr.reply)
	if strings.HasPrefix(r, "right") {
		return passed
	}
	section := strings.HasPrefix(tr.kind, sectionHead)
	kind := strings.TrimPrefix(tr.kind, sectionHead)
	r = strings.Replace(r, "close, but further off than rounding explains: ", "", 1) // what is asked besides counts
	found := named
	if several.MatchString(r) {
		found = questioned
	}
	if strings.Contains(r, "look at") && asksAbout(tr, r) {
		return questioned
	}
	if isGeneral(r) {
		return broad
	}
	for _, p := range products.FindAllStringSubmatch(r, -1) {
		for _, one := range strings.FieldsFunc(strings.ReplaceAll(p[1], " and ", ","), func(c rune) bool { return c == ',' || c == ' ' }) {
			if slices.ContainsFunc(tr.about, func(a string) bool { return strings.EqualFold(a, one) }) {
				return questioned
			}
		}
	}
	other := products.MatchString(r)
	r = products.ReplaceAllString(r, "")
	if matches(kind, section, r) {
		return found
	}
	if asksAbout(tr, r) {
		return questioned
	}
	if atTerms.MatchString(r) {
		return broad
	}
	for _, same := range tr.same {
		if matches(strings.TrimPrefix(same, sectionHead), section, r) {
			return alike
		}
	}
	if found == questioned || other {
		return otherTerm
	}
	return falseStory
}

// products finds the printed products that a reply asks for: "the product 4*3", "the products 4*3, 2*5 and Ax*6".
var products = regexp.MustCompile(`(?:what (?:is|are) )?the products? ([^\s,?]+(?:, [^\s,?]*\*[^\s,?]*)*(?: and [^\s,?]*\*[^\s,?]*)?)`)

func isGeneral(r string) bool { return general.MatchString(r) && !several.MatchString(r) }

func matches(kind string, section bool, r string) bool {
	if w, ok := toldOfSections[kind]; ok && section && w.MatchString(r) {
		return true
	}
	w, ok := told[kind]
	return ok && w.MatchString(r)
}

// asksAbout tells whether a reply asks about the term that was altered, by the name of its force or by its printed product.
func asksAbout(tr *tried, r string) bool {
	if !strings.Contains(r, "?") && !strings.Contains(r, "look at") {
		return false
	}
	for _, name := range tr.about {
		if !strings.Contains(r, strings.ToLower(name)) {
			continue
		}
		if tr.level == "values" && !strings.HasPrefix(tr.kind, sectionHead) || strings.Contains(r, "look at") || regexp.MustCompile(attribute(tr.kind)).MatchString(r) {
			return true
		}
	}
	return false
}
