package worksheet

import (
	"strings"

	"unpin/statics/figure/cells"
)

// Markdown is the worked solution as Markdown with tables (CommonMark 0.31 with the pipe tables that most readers know). It
// is whole in itself: its figures are drawings in characters, in code blocks, which every reader shows. Several solutions
// stand one after the other. It heeds Only.
func Markdown(all []Solved, o Options) string {
	m := &markdown{}
	for _, d := range written(all, Options{Only: o.Only}, true) {
		for _, b := range d.list {
			m.set(b)
		}
		m.fence("")
	}
	return strings.TrimLeft(m.String(), "\n")
}

// A markdown is a document in the writing.
type markdown struct {
	strings.Builder
	last   passageKind
	fenced bool // in a code block
}

// set writes one passage.
func (m *markdown) set(b passage) {
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
		m.apart("# " + text)
	case sectionPassage:
		m.apart("## " + text)
	case subheadPassage:
		m.apart("**" + text + "**")
	case stepPassage:
		m.apart("**" + label + " " + text + "**")
	case itemPassage:
		m.item(label, text)
	case equationPassage, resultPassage:
		m.fence("text")
		m.line(strings.TrimSpace(b.label + b.text))
	case tablePassage:
		m.table(b.table.compact())
	case picturePassage:
		m.picture(b)
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
		rule[i] = map[rune]string{'l': ":--", 'r': "--:", 'm': ":--"}[a]
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
		m.WriteString("| " + strings.ReplaceAll(escaped(c), "|", "\\|") + " ")
	}
	m.WriteString("|\n")
}

// Sizes of drawings in columns and rows: of a frame, a beam, and a frame taken apart.
const (
	drawingWide, drawingTall = 84, 27
	beamTall                 = 17
	apartWide, apartTall     = 108, 36
)

// picture writes a drawing and its title.
func (m *markdown) picture(b passage) {
	w, h := drawingWide, drawingTall
	if b.picture.IsLevel() {
		h = beamTall
	}
	if b.picture.IsApart() {
		w, h = apartWide, apartTall
	}
	g := cells.Draw(b.picture, w, h, false)
	m.apart("*" + escaped(strings.TrimSuffix(b.text, ".")) + ":*")
	m.fence("text")
	m.WriteString(trimmed(g.Text()))
	for _, left := range g.Dropped {
		m.line("not drawn: " + left)
	}
	m.fence("")
}

// trimmed is a drawing without the blanks around it.
func trimmed(drawing string) string {
	var lines []string
	margin := -1
	for line := range strings.SplitSeq(strings.Trim(drawing, "\n"), "\n") {
		line = strings.TrimRight(line, " ")
		if line == "" && len(lines) == 0 {
			continue
		}
		if n := len(line) - len(strings.TrimLeft(line, " ")); line != "" && (margin < 0 || n < margin) {
			margin = n
		}
		lines = append(lines, line)
	}
	var b strings.Builder
	for _, line := range lines {
		b.WriteString(line[min(max(margin, 0), len(line)):] + "\n")
	}
	return strings.TrimRight(b.String(), "\n") + "\n"
}

// escaped is a text none of whose signs Markdown takes for its own.
func escaped(text string) string { return marks.Replace(text) }

var marks = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "[", `\[`, "]", `\]`, "<", `\<`, ">", `\>`, "#", `\#`, "~", `\~`, "&", `\&`)
