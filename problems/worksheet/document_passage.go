package worksheet

import "unpin/statics/figure"

// A passageKind says what a passage is, and so how each format sets it.
type passageKind int

const (
	titlePassage    passageKind = iota // of the document
	sectionPassage                     // the heading of a section
	subheadPassage                     // what the passages after it are about, a free body or a member
	prosePassage                       // a paragraph
	itemPassage                        // a text with its label; an empty label goes on with the item before
	stepPassage                        // a step of the plan: its number and title
	reasonPassage                      // what is said within a step
	equationPassage                    // a line of mathematics
	resultPassage                      // the same, with what comes out
	tablePassage
	picturePassage // only where a format has figures
	gapPassage     // a little room
	roomPassage    // room to work in
	sketchPassage  // a picture to draw on, with room around it
)

// A passage is one piece of a document, in the order of reading. The label keeps the blanks around it, which lay out a text.
type passage struct {
	kind    passageKind
	label   string
	text    string
	letters string // that stand for numbers in a paragraph or an item
	indent  int    // of a table, in a text
	table   table
	picture figure.Scene
	words   []string // say what the picture shows
	leads   bool     // a paragraph stays with what follows
	beside  bool     // a picture stands among others, two by two
	paired  bool     // and so does one of a beam, where a page has no room for it beneath another
	rows    int      // of dots, of a room
	axes    bool     // a picture to draw on is of axes, and large enough by itself
	alone   bool     // it has the width of the page
	whole   bool     // a step stays on one page even if it takes most of that
	told    bool     // a paragraph is the author's of the problem
	around  bool     // what is said within a step begins another way to do the same
}

// passages are a document in the making.
type passages struct {
	list     []passage
	ascii    bool
	pictures bool // the format has figures
}

func (b *passages) add(kind passageKind, label, text string) {
	b.list = append(b.list, passage{kind: kind, label: label, text: text})
}

func (b *passages) title(text string)            { b.add(titlePassage, "", text) }
func (b *passages) section(text string)          { b.add(sectionPassage, "", text) }
func (b *passages) subhead(text string)          { b.add(subheadPassage, "", text) }
func (b *passages) prose(text string)            { b.add(prosePassage, "", text) }
func (b *passages) item(label, text string)      { b.add(itemPassage, label, text) }
func (b *passages) numbered(label, text string)  { b.add(stepPassage, label, text) }
func (b *passages) because(label, text string)   { b.add(reasonPassage, label, text) }
func (b *passages) conclude(indent, text string) { b.add(resultPassage, indent, text) }
func (b *passages) equate(indent, text string)   { b.add(equationPassage, indent, text) }
func (b *passages) blank()                       { b.add(gapPassage, "", "") }

func (b *passages) tabulate(indent int, t table) {
	b.list = append(b.list, passage{kind: tablePassage, indent: indent, table: t})
}

// symbolic marks the letters that stand for numbers in the passage that was added last.
func (b *passages) symbolic(letters string) { b.list[len(b.list)-1].letters = letters }

// room adds so many rows of room to work in.
func (b *passages) room(rows int) { b.list = append(b.list, passage{kind: roomPassage, rows: rows}) }

// sketch adds a picture to draw on, with the words that describe it.
func (b *passages) sketch(s figure.Scene, words []string) {
	b.list = append(b.list, passage{kind: sketchPassage, text: s.Title, picture: s, words: words})
}

// lead adds a paragraph that stays with what follows it.
func (b *passages) lead(text string) {
	b.prose(text)
	b.list[len(b.list)-1].leads = true
}

// tell adds a paragraph of the author's of the problem.
func (b *passages) tell(text string) {
	b.prose(text)
	b.list[len(b.list)-1].told = true
}

// draw adds a picture with the words that describe it.
func (b *passages) draw(s figure.Scene, words []string) {
	b.list = append(b.list, passage{kind: picturePassage, text: s.Title, picture: s, words: words})
}
