package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"strings"

	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
	"unpin/statics/wording"
	"unpin/tutor/marking"
)

// askedFor says what can be typed where answers are asked for.
const askedFor = "Type each answer, such as 9.5 kN up; an empty line leaves one out, and the word end ends.\n" +
	"An answer to something else names it: M(AB, 2) = 12 tension top. A sense in words, as in these, is clear under any convention."

// askedForMore is said beside it where there are several problems.
const askedForMore = "The word next goes on to the next problem."

// An asker has a person on a terminal type the answers one by one, and writes them down as a file of answers has them.
type asker struct {
	lines *bufio.Scanner
	out   io.Writer
	help  string
	text  bytes.Buffer
}

// ask has a person type the answers to each problem of the desk.
func (d *desk) ask(in io.Reader, out io.Writer) io.Reader {
	a := &asker{lines: bufio.NewScanner(in), out: out, help: askedFor}
	if len(d.tasks) > 1 {
		a.help += "\n" + askedForMore
	}
	fmt.Fprintln(out, a.help)
	fmt.Fprintln(&a.text, "# answers")
	for _, t := range d.tasks {
		if len(d.tasks) > 1 {
			fmt.Fprintf(out, "\n%s: %s\n", t.problem.Name, t.problem.Title)
			fmt.Fprintf(&a.text, "problem: %s\n", t.problem.Name)
		}
		if ended := a.task(t.marker); ended {
			break
		}
	}
	return &a.text
}

// task asks for the answers to one problem, and reports whether the person is done with all. An answer that names what it is of is
// taken for that, in place of an earlier one; one that cannot be read is asked for again.
func (a *asker) task(marker *marking.Marker) (ended bool) {
	answers := map[string]string{}
	var order []string
	defer func() {
		for _, q := range order {
			fmt.Fprintf(&a.text, "%s = %s\n", q, answers[q])
		}
	}()
	names := marker.Wanted()
	signs := signsOf(marker)
	for n := 0; n < len(names); {
		if answers[names[n]] != "" {
			n++
			continue
		}
		if lead := signs[n].lead; lead != "" {
			fmt.Fprintln(a.out, lead)
			signs[n].lead = ""
		}
		name, unit := marker.AsAsked(names[n])
		fmt.Fprintf(a.out, "%s = ", withUnit(name+signs[n].behind, unit))
		if !a.lines.Scan() {
			fmt.Fprintln(a.out)
			return true
		}
		quantity, value := names[n], strings.TrimSpace(a.lines.Text())
		switch value {
		case "end":
			return true
		case "next":
			return false
		case "help":
			fmt.Fprintln(a.out, a.help)
			continue
		case "":
			n++
			continue
		}
		if name, typed, named := strings.Cut(value, "="); named {
			quantity, value = strings.TrimSpace(name), strings.TrimSpace(typed)
		}
		if err := marker.Check(quantity, value); err != nil {
			fmt.Fprintf(a.out, "That cannot be read: %s.\n", notation.Visible(err.Error()))
			continue
		}
		quantity, _ = marker.AsAsked(quantity)
		if answers[quantity] == "" {
			order = append(order, quantity)
		}
		answers[quantity] = value
	}
	return false
}

// A sign is what must be known of the sign of an answer: a sentence before the first one along a member, or a remark behind a force.
type sign struct{ lead, behind string }

// signsOf are those of the answers that are asked for, in their order, as a sheet has them.
func signsOf(m *marking.Marker) []sign {
	say := wording.New(m.Assembly, m.Style(false))
	var all []sign
	last := statics.None
	for i, item := range m.Items {
		if !m.Asked[i] {
			continue
		}
		var k sign
		switch {
		case item.Force != statics.None:
			f := m.Forces[item.Force]
			if f.Kind != statics.MemberPull {
				k.behind = " on " + say.BodyName(f.On)
			}
			k.behind += ", " + notation.SenseOf(f, exact.Int(1)) + " positive"
		case item.Member != last:
			last = item.Member
			k.lead = say.Member(item.Member) + ". " + say.SectionSigns(item.Member)
		}
		all = append(all, k)
	}
	return all
}

// withUnit is a name with its unit, where it has one.
func withUnit(name, unit string) string {
	if unit == "" {
		return name
	}
	return name + " [" + unit + "]"
}
