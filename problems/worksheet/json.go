package worksheet

import (
	"encoding/json"
	"strconv"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
)

// digits is how many significant digits stand for a value that does not terminate.
const digits = 20

// JSON is the solution for other programs: numbers as decimal strings, in full where they terminate, with exact text
// beside them. A frame that is not determinate has no forces, plan and members.
func JSON(p *problems.Problem, s *statics.Solution) ([]byte, error) {
	w := &writer{s: s}
	units := strings.Fields(p.Units.String())
	w.text("{\n \"title\": " + quote(p.Title) + ",\n \"units\": {\n  \"force\": " + quote(units[0]) + ",\n  \"length\": " + quote(units[1]) + "\n },\n")
	w.count()
	w.list("parts", w.parts())
	if s.Values != nil {
		w.list("forces", w.forces())
		w.list("plan", w.plan())
		w.members()
	}
	return []byte(strings.TrimSuffix(w.String(), ",\n") + "\n}\n"), nil
}

// A writer holds the document as it grows.
type writer struct {
	strings.Builder
	s *statics.Solution
}

func (w *writer) text(t string) { w.WriteString(t) }

// list writes a list of objects, one a line.
func (w *writer) list(name string, objects []string) {
	w.text(" " + quote(name) + ": [\n  " + strings.Join(objects, ",\n  ") + "\n ],\n")
}

func (w *writer) count() {
	c := w.s.Count
	fields := []string{
		`"unknowns": ` + strconv.Itoa(c.Unknowns), `"sums": ` + strconv.Itoa(c.Sums), `"rank": ` + strconv.Itoa(c.Rank),
		`"verdict": ` + quote(c.Verdict().String()), `"degree": ` + strconv.Itoa(c.Degree()),
		`"motions": ` + strconv.Itoa(c.Motions()), `"inner": ` + strconv.Itoa(c.Inner),
	}
	if c.Inexact {
		fields = append(fields, `"inexact": true`)
	}
	w.text(" \"count\": {\n  " + strings.Join(fields, ",\n  ") + "\n },\n")
}

func (w *writer) parts() []string {
	var all []string
	for _, p := range w.s.Parts {
		var names []string
		for _, m := range p.Members {
			names = append(names, w.s.Frame.Members[m].Name)
		}
		all = append(all, object(field("name", p.Name), `"members": `+texts(names)))
	}
	return all
}

func (w *writer) forces() []string {
	var all []string
	for i, f := range w.s.Forces {
		fields := []string{field("name", f.Name), field("joint", w.s.Frame.Joints[f.Joint].Name), field("on", w.s.BodyName(f.On))}
		if !f.Couple {
			fields = append(fields, `"along": `+pair(f.Along.X, f.Along.Y))
		}
		v := w.s.Values[i]
		fields = append(fields, `"couple": `+strconv.FormatBool(f.Couple), field("value", v.Decimal(digits)), field("exact", v.String()))
		all = append(all, object(append(fields, inexact(v)...)...))
	}
	return all
}

func (w *writer) plan() []string {
	var all []string
	for _, step := range w.s.Plan {
		var fields []string
		if len(step.Sums) == 1 {
			fields = w.sum(step.Sums[0])
		} else {
			var sums []string
			for _, s := range step.Sums {
				sums = append(sums, object(w.sum(s)...))
			}
			fields = []string{`"sums": [` + strings.Join(sums, ", ") + "]"}
		}
		gives := []string{}
		for _, f := range step.Gives {
			gives = append(gives, w.s.Forces[f].Name)
		}
		fields = append(fields, `"gives": `+texts(gives))
		if step.Relation {
			fields = append(fields, `"relation": true`)
		}
		if step.Check {
			fields = append(fields, `"check": true`)
		}
		all = append(all, object(fields...))
	}
	return all
}

// sum is the fields that name one sum.
func (w *writer) sum(s statics.Sum) []string {
	var names []string
	for _, b := range s.Body {
		names = append(names, w.s.BodyName(b))
	}
	fields := []string{`"parts": ` + texts(names)}
	if s.Moment {
		return append(fields, field("sum", "moment"), `"about": `+pair(s.About.X, s.About.Y))
	}
	return append(fields, field("sum", "force"), `"along": `+pair(s.Along.X, s.Along.Y))
}

func (w *writer) members() {
	w.text(" \"members\": [\n")
	for i, d := range w.s.Diagrams {
		m := w.s.Frame.Members[d.Member]
		fields := []string{field("name", m.Name), field("from", w.s.Frame.Joints[m.From].Name), field("to", w.s.Frame.Joints[m.To].Name), field("length", d.Length.Decimal(digits))}
		if d.Withheld {
			fields = append(fields, field("withheld", ringReason))
		} else {
			fields = append(fields, "\"pieces\": [\n    "+strings.Join(pieces(d), ",\n    ")+"\n   ]")
		}
		w.text("  {\n   " + strings.Join(fields, ",\n   ") + "\n  }")
		if i < len(w.s.Diagrams)-1 {
			w.text(",")
		}
		w.text("\n")
	}
	w.text(" ],\n")
}

// ringReason says why N, V and M of a member are withheld.
const ringReason = "the member lies on a closed ring of its part, so equilibrium alone does not give its N, V and M"

func pieces(d statics.Diagram) []string {
	var all []string
	for _, p := range d.Pieces {
		fields := []string{field("from", p.From.Decimal(digits)), field("until", p.Until.Decimal(digits)),
			`"N": ` + poly(p.N), `"V": ` + poly(p.V), `"M": ` + poly(p.M)}
		for _, c := range append(append(append(exact.Poly{}, p.N...), p.V...), p.M...) {
			if c.Inexact() {
				fields = append(fields, `"inexact": true`)
				break
			}
		}
		all = append(all, object(fields...))
	}
	return all
}

func poly(p exact.Poly) string {
	var all []string
	for _, c := range p.Trim() {
		all = append(all, c.Decimal(digits))
	}
	return texts(all)
}

// inexact is the field that marks a value that rests on an angle outside the exact set.
func inexact(v exact.Num) []string {
	if v.Inexact() {
		return []string{`"inexact": true`}
	}
	return nil
}

// pair is a point or direction: decimals where they end, else fractions, else decimals of twenty figures.
func pair(x, y exact.Num) string { return texts([]string{coordinate(x), coordinate(y)}) }

func coordinate(n exact.Num) string {
	if n.IsRational() && !n.Terminates() && !n.Inexact() {
		return n.String()
	}
	return n.Decimal(digits)
}

func object(fields ...string) string { return "{" + strings.Join(fields, ", ") + "}" }

func field(name, value string) string { return quote(name) + ": " + quote(value) }

func texts(list []string) string {
	quoted := make([]string, len(list))
	for i, t := range list {
		quoted[i] = quote(t)
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}

// quote is a JSON string; < and > stay as they are.
func quote(t string) string {
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(t); err != nil {
		return `""`
	}
	return strings.TrimSpace(b.String())
}
