package worksheet

import "strings"

// Markdown is the worked solution as Markdown with tables (CommonMark 0.31 with the pipe tables that most readers know). It
// is whole in itself: its figures are drawings in characters, in code blocks, which every reader shows. Several solutions
// stand one after the other. It heeds Only.
func Markdown(all []Solved, o Options) string { return setMarkdown(all, o, nil) }

// setMarkdown is the solutions as Markdown, their figures images in the album if there is one.
func setMarkdown(all []Solved, o Options, a *album) string {
	m := &markdown{album: a}
	for _, d := range written(all, Options{Only: o.Only}, true) {
		if a != nil {
			a.begin(d)
		}
		for i, b := range d.list {
			m.set(i, b)
		}
		m.fence("")
	}
	return strings.TrimLeft(m.String(), "\n")
}

// A markdown is a document in the writing.
type markdown struct {
	strings.Builder
	last   passageKind
	fenced bool   // in a code block
	album  *album // or nil: the figures are drawings in characters
	under  string // what stands before a heading, one more # for each heading above it
}

// set writes passage i.
func (m *markdown) set(i int, b passage) {
	if b.kind == gapPassage {
		return
	}
	if b.kind != equationPassage && b.kind != resultPassage {
		m.fence("")
	}
	text := escaped(b.text)
	label := strings.TrimSpace(b.label)
	switch b.kind {
	case titlePassage:
		m.apart(m.under + "# " + text)
	case sectionPassage:
		m.apart(m.under + "## " + text)
	case subheadPassage:
		m.apart("**" + text + "**")
	case stepPassage:
		m.apart("**" + strings.TrimSpace(label+" "+text) + "**")
	case itemPassage:
		m.item(label, text)
	case equationPassage, resultPassage:
		m.fence("text")
		m.line(strings.TrimSpace(b.label + b.text))
	case tablePassage:
		if b.table.hasBoxes() {
			m.table(b.table.withoutEmpty())
		} else {
			m.table(b.table.compact())
		}
	case picturePassage:
		m.picture(i, b)
	case roomPassage:
	case sketchPassage:
		m.sketch(i, b)
	default:
		m.apart(strings.TrimSpace(escaped(label) + " " + text))
	}
	m.last = b.kind
}

// apart writes a line with a free one before it.
func (m *markdown) apart(line string) { m.WriteString("\n" + line + "\n") }

func (m *markdown) line(text string) { m.WriteString(text + "\n") }

// item writes an item of a list; one without a label goes on with the item before.
func (m *markdown) item(label, text string) {
	if m.last != itemPassage {
		m.WriteString("\n")
	}
	switch {
	case label != "":
		m.line("- **" + escaped(strings.TrimSuffix(label, ":")) + "**: " + text)
	case m.last == itemPassage:
		m.line("  <br>" + text)
	default:
		m.line("- " + text)
	}
}

// fence begins a code block, or with no kind ends the one that is open.
func (m *markdown) fence(kind string) {
	switch {
	case kind != "" && !m.fenced:
		m.WriteString("\n```" + kind + "\n")
	case kind == "" && m.fenced:
		m.WriteString("```\n")
	}
	m.fenced = kind != ""
}

// table writes a table.
func (m *markdown) table(t table) {
	rule := make([]string, len(t.align))
	for i, a := range t.align {
		rule[i] = map[rune]string{'l': ":--", 'r': "--:", 'm': ":--", 'b': ":--"}[a]
	}
	m.WriteString("\n")
	m.row(t.head)
	m.line("| " + strings.Join(rule, " | ") + " |")
	for _, r := range t.rows {
		m.row(r)
	}
}

func (m *markdown) row(cells []string) {
	for _, c := range cells {
		if c == box {
			c = strings.Repeat(string(bound), len(shortBlank))
		}
		m.WriteString("| " + strings.ReplaceAll(escaped(c), "|", "\\|") + " ")
	}
	m.WriteString("|\n")
}

// escaped is a text none of whose signs Markdown takes for its own.
func escaped(text string) string { return marks.Replace(text) }

var marks = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "[", `\[`, "]", `\]`, "<", `\<`, ">", `\>`, "#", `\#`, "~", `\~`, "&", `\&`)
