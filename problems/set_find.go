package problems

import (
	"slices"
	"strings"
)

// find reads what is to be found in a problem of a set.
func (r *setReader) find(n *node, p Solved) []string {
	var all []string
	for _, item := range r.joined(n.items) {
		switch {
		case !r.shaped(item, "an entry of find", "find: [reactions, M]", scalar):
		case slices.Contains(all, item.text):
			r.fault(item.at, item.text+" stands in find twice", "Take one of them out.")
		default:
			all = append(all, item.text)
			r.answer(item, p)
		}
	}
	if len(n.items) == 0 {
		r.fault(n.at, "find asks for nothing", "Name what is to be found, or take find out.")
	} else if items, err := p.Asked(all); err == nil && len(items) == 0 {
		r.fault(n.at, "this problem has nothing of what find asks for", "Write reactions, pins, N, V, M, diagrams, or names.")
	}
	return all
}

// answer finds fault with an entry of find that the problem has no answer to.
func (r *setReader) answer(n *node, p Solved) {
	_, err := p.Asked([]string{n.text})
	if err == nil {
		return
	}
	problem, remedy, _ := strings.Cut(err.Error(), ": ")
	if remedy == "" {
		remedy = "write reactions, pins, N, V, M, diagrams, a force, or a place along a member"
	}
	r.fault(n.at, problem, sentence(remedy))
}

// joined puts names such as M(BC, 2.4) together again, which a list without quotes has parted at the comma.
func (r *setReader) joined(items []*node) []*node {
	var all []*node
	for i := 0; i < len(items); i++ {
		item := items[i]
		if i+1 < len(items) && item.shape == scalar && items[i+1].shape == scalar && open(item.text) && strings.HasSuffix(items[i+1].text, ")") {
			whole := *item
			whole.text, whole.literal = item.text+", "+items[i+1].text, false
			if next := items[i+1].at; next.line == whole.at.line {
				whole.at.width = next.column + next.width - whole.at.column
			}
			item = &whole
			i++
		}
		all = append(all, item)
	}
	return all
}

// open reports whether a bracket is opened and not closed.
func open(text string) bool { return strings.Contains(text, "(") && !strings.Contains(text, ")") }
