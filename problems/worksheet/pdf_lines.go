package worksheet

import "strings"

// A lineStyle says how a paragraph is set.
type lineStyle struct {
	size    float64
	style   string
	above   float64
	indent  float64 // of all its lines; the label stands before the first
	with    bool    // it stays with what follows
	hang    float64 // of its lines after the first, beyond the indent
	letters string  // that stand for numbers where they stand alone, and so are italic
	tall    float64 // the height of a line, if it is not that of its size
}

// leading is the height of a line of that style.
func (s lineStyle) leading() float64 { return max(lineHeight*s.size/bodySize, s.tall) }

// base is where the baseline of a line stands beneath its head.
func (s lineStyle) base() float64 {
	return s.leading() - lineHeight*s.size/bodySize + s.size*0.95
}

// paragraph sets a text in lines, with a label before the first.
func (c *composer) paragraph(s lineStyle, label, text string) {
	lines := c.lines(c.words(text, s), c.wide()-s.indent-s.hang, s)
	labels := c.words(label, lineStyle{size: s.size, style: "B"})
	for i, line := range lines {
		above := 0.0
		if i == 0 {
			above = s.above
		}
		c.strips = append(c.strips, strip{
			above: above, height: s.leading(), with: s.with || i < 1 && len(lines) > 1 || i == len(lines)-2,
			draw: func(y float64) {
				base := y + s.size*0.95
				if i == 0 {
					c.write(labels, sideMargin, base, s.size)
				}
				c.write(line, sideMargin+s.indent+s.hang*float64(min(i, 1)), base, s.size)
			},
		})
	}
}

// A typeWord is what stands together on a line.
type typeWord struct {
	runs []typeRun
	wide float64
}

// words are the words of a text with their widths.
func (c *composer) words(text string, s lineStyle) []typeWord {
	var words []typeWord
	text = strings.ReplaceAll(text, "   ", "\u2003 ")
	for word := range strings.SplitSeq(c.page.bind(printable(text)), " ") {
		if word == "" {
			continue
		}
		w := typeWord{runs: c.names.runsOf(word, s.style, s.letters)}
		for _, r := range w.runs {
			w.wide += c.runWidth(r, s.size)
		}
		words = append(words, w)
	}
	return words
}

// use sets the document's font for a run.
func (c *composer) use(r typeRun, size float64) {
	if r.index {
		size *= indexScale
	}
	c.doc.SetFont(family, r.style, size)
}

func (c *composer) runWidth(r typeRun, size float64) float64 {
	c.use(r, size)
	return c.doc.GetStringWidth(r.text)
}

// blankWidth is the width of a blank between words, as a share of the size: that of the font.
const blankWidth = 0.286

// lines breaks words into lines no wider than that; a word that is wider is cut.
func (c *composer) lines(words []typeWord, wide float64, s lineStyle) [][]typeWord {
	var lines [][]typeWord
	used := wide + 1
	blank := blankWidth * s.size
	for len(words) > 0 {
		w := words[0]
		words = words[1:]
		if used+blank+w.wide <= wide {
			lines[len(lines)-1] = append(lines[len(lines)-1], w)
			used += blank + w.wide
			continue
		}
		if w.wide > wide {
			var rest typeWord
			w, rest = c.cutWord(w, wide, s.size)
			words = append([]typeWord{rest}, words...)
		}
		lines = append(lines, []typeWord{w})
		used = w.wide
	}
	return lines
}

// cutWord cuts a word where it becomes wider than that.
func (c *composer) cutWord(w typeWord, wide, size float64) (head, tail typeWord) {
	for i, r := range w.runs {
		n := c.runWidth(r, size)
		if head.wide+n <= wide {
			head.runs, head.wide = append(head.runs, r), head.wide+n
			continue
		}
		fit, rest := c.cutRun(r, wide-head.wide, size, len(head.runs) == 0)
		if fit.text != "" {
			head.runs = append(head.runs, fit)
			head.wide += c.runWidth(fit, size)
		}
		tail.runs = append([]typeRun{rest}, w.runs[i+1:]...)
		break
	}
	for _, r := range tail.runs {
		tail.wide += c.runWidth(r, size)
	}
	return head, tail
}

// cutRun cuts a run where it becomes wider than that; if it must, it takes one character at least.
func (c *composer) cutRun(r typeRun, wide, size float64, must bool) (fit, rest typeRun) {
	fit, rest = r, r
	fit.text = ""
	for i, char := range r.text {
		next := fit
		next.text = r.text[:i+len(string(char))]
		if c.runWidth(next, size) > wide && !(must && i == 0) {
			break
		}
		fit = next
	}
	rest.text = r.text[len(fit.text):]
	return fit, rest
}

// write sets words on a baseline.
func (c *composer) write(words []typeWord, x, y, size float64) {
	c.doc.SetTextColor(0, 0, 0)
	for _, w := range words {
		for _, r := range w.runs {
			wide := c.runWidth(r, size)
			drop := 0.0
			if r.index {
				drop = indexFall * size
			}
			c.doc.Text(x, y+drop, r.text)
			x += wide
		}
		x += blankWidth * size
	}
}
