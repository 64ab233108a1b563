package problems

import (
	"iter"
	"slices"
	"strings"
)

// A naming is how names of joints follow a word in a text: "at C", "between A and E", "the beam ABC".
type naming struct {
	after   []string // the words, small
	least   int      // joints in a name
	most    int
	between []string // what parts two names
}

var (
	jointNaming = naming{strings.Fields("at joint joints pin pins hinge hinges support supports roller rollers feet foot from to between corner corners " +
		"knee knees tip tips end ends head heads ridge pulley pulleys wheel wheels"), 1, 1, []string{", ", " and ", " or ", " to ", ", and "}}
	walkNaming = naming{strings.Fields("member members beam beams bar bars leg legs rafter rafters column columns post posts strut struts tie ties boom booms " +
		"arm arms girder girders part parts"), 2, maxJoints, []string{", ", " and ", " or "}}
)

// namesAfter lists the joints that a text names, as often as it does.
func namesAfter(text string, how naming) []string {
	var all []string
	for word, rest := range wordsOf(text) {
		rest, ok := strings.CutPrefix(rest, " ")
		if ok && rest != "" && rest[0] >= 'A' && rest[0] <= 'Z' && slices.Contains(how.after, strings.ToLower(word)) {
			all = append(all, how.list(rest)...)
		}
	}
	return all
}

// list is the joints of the names with which a text begins, up to the last name that is a whole word.
func (how naming) list(text string) []string {
	var whole, all []string
	for {
		name := 0
		for text != "" && text[0] >= 'A' && text[0] <= 'Z' {
			end := 1
			for end < len(text) && strings.IndexByte("0123456789'", text[end]) >= 0 {
				end++
			}
			all, text = append(all, text[:end]), text[end:]
			name++
		}
		if name < how.least || name > how.most {
			return whole
		}
		if text == "" || strings.IndexByte(" .,;:)", text[0]) >= 0 {
			whole = all
		}
		next := slices.IndexFunc(how.between, func(parting string) bool {
			rest, ok := strings.CutPrefix(text, parting)
			return ok && rest != "" && rest[0] >= 'A' && rest[0] <= 'Z'
		})
		if next < 0 {
			return whole
		}
		text = text[len(how.between[next]):]
	}
}

// wordsOf goes through the words of a text, runs of English letters and figures, each with all that follows it.
func wordsOf(text string) iter.Seq2[string, string] {
	return func(yield func(word, rest string) bool) {
		for at := 0; at < len(text); {
			end := at
			for end < len(text) && inName(text[end]) {
				end++
			}
			if end == at {
				at++
				continue
			}
			if !yield(text[at:end], text[end:]) {
				return
			}
			at = end
		}
	}
}

func inName(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_'
}

// A lay is what a text says to be level or vertical: "a vertical post".
type lay struct {
	how, what string
	level     bool
}

// lieable are the things of which it means that a member, a force or a rope lies so.
var lieable = strings.Fields("rope cable chain beam member bar girder post column mast leg tie strut")

// lying lists what a text says to be level or vertical.
func lying(text string) []lay {
	var all []lay
	how := "" // the word before, if a blank alone follows it
	for word, rest := range wordsOf(text) {
		if small := strings.ToLower(how); slices.Contains(lieable, strings.ToLower(word)) {
			switch small {
			case "level", "horizontal":
				all = append(all, lay{how, word, true})
			case "vertical", "upright":
				all = append(all, lay{how, word, false})
			}
		}
		if how = ""; len(rest) > 1 && rest[0] == ' ' && inName(rest[1]) {
			how = word
		}
	}
	return all
}
