package worksheet

import (
	"time"

	"unpin/problems"
)

// InspectSetJSON is what InspectSet says, for programs: an object with the fields id, title, course, points, minutes as the
// file gives them (0 if not), opens, closes, keep (empty if not), expected, the minutes that it takes, skills, with covered
// and missing, clashes and warnings, a sentence each, and problems.
//
//   - A problem has name, title, points, grade, values, the number of values asked for, find, expected, and copies: choices,
//     the number of sets of numbers (at most 10⁹), good and judged, and all, whether all were judged; or none, the reason
//     why it has none.
func InspectSetJSON(set *problems.Set) []byte {
	s := surveyed(set)
	var tasks []string
	for _, t := range s.tasks {
		tasks = append(tasks, t.json())
	}
	return []byte(object(0, []field{
		{"id", quote(s.ID)}, {"title", quote(s.Title)}, {"course", quote(s.Course)}, {"points", quote(s.Points().Decimal(3))},
		{"minutes", number(s.Minutes)}, {"opens", momentJSON(s.Opens, time.RFC3339)}, {"closes", momentJSON(s.Closes, time.RFC3339)},
		{"keep", momentJSON(s.Keep, time.DateOnly)}, {"expected", number(s.minutes())},
		{"skills", object(1, []field{{"covered", texts(s.covered)}, {"missing", texts(s.missing)}})},
		{"clashes", texts(s.clashes)}, {"warnings", texts(set.Warnings)}, {"problems", list(1, tasks)},
	}) + "\n")
}

func (t taskSurvey) json() string {
	all := "false"
	if t.copies.All {
		all = "true"
	}
	copies := inline(field{"choices", number(t.copies.Choices)}, field{"good", number(t.copies.Good)}, field{"judged", number(t.copies.Judged)}, field{"all", all})
	if t.none != "" {
		copies = inline(field{"none", quote(t.none)})
	}
	return inline(field{"name", quote(t.Name)}, field{"title", quote(oneLine(t.Title))}, field{"points", quote(t.Points.Decimal(3))},
		field{"grade", number(t.grade)}, field{"values", number(t.asked)}, field{"find", texts(t.Find)},
		field{"expected", number((t.halves + 1) / 2)}, field{"copies", copies})
}

// momentJSON is a moment, or an empty text where the file gives none.
func momentJSON(t time.Time, form string) string {
	if t.IsZero() {
		return quote("")
	}
	return quote(t.Format(form))
}
