package statics

// A queue is a heap of numbered items: the smallest comes first, of equal ones that with the lower number.
type queue []queued

type queued struct{ item, size int }

func (q queued) before(o queued) bool {
	return q.size < o.size || q.size == o.size && q.item < o.item
}

// push adds an item.
func (q *queue) push(x queued) {
	h := append(*q, x)
	i := len(h) - 1
	for up := (i - 1) / 2; i > 0 && h[i].before(h[up]); up = (i - 1) / 2 {
		h[i], h[up] = h[up], h[i]
		i = up
	}
	*q = h
}

// pop takes out the first item.
func (q *queue) pop() queued {
	h := *q
	first, last := h[0], len(h)-1
	h[0] = h[last]
	h = h[:last]
	for i := 0; ; {
		least := i
		for down := 2*i + 1; down <= 2*i+2 && down < last; down++ {
			if h[down].before(h[least]) {
				least = down
			}
		}
		if least == i {
			break
		}
		h[i], h[least] = h[least], h[i]
		i = least
	}
	*q = h
	return first
}
