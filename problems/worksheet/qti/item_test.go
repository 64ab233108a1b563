package qti

import (
	"bytes"
	"flag"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"unpin/problems"
	"unpin/problems/librarytest"
	"unpin/problems/worksheet"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/judging"
	"unpin/statics/notation"
)

var update = flag.Bool("update", false, "rewrite the files in testdata")

// libraryQuestion is all that a problem of the library can be asked.
func libraryQuestion(t testing.TB, name string) Question {
	t.Helper()
	p, ok := problems.Library(name)
	if !ok {
		t.Fatalf("no problem %s", name)
	}
	return question(t, p)
}

func question(t testing.TB, p *problems.Problem) Question {
	t.Helper()
	s, err := statics.Solve(p.Frame)
	if err != nil {
		t.Fatal(err)
	}
	solved := problems.Solved{Problem: p, Solution: s}
	return Question{Solved: solved, Items: solved.Items(), Points: problems.UsualPoints}
}

// single is the test with one question.
func single(q Question) Test {
	return Test{ID: q.Problem.Name, Title: q.Problem.Title, Sections: []string{q.Problem.Title}}
}

// packed is a package of questions, all for the first section.
func packed(t testing.TB, test Test, v Version, questions ...Question) []byte {
	t.Helper()
	var out bytes.Buffer
	w := NewWriter(&out, v)
	for _, q := range questions {
		i, err := NewItem(q, v)
		if err == nil {
			err = w.Add(0, i)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(test); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// packaged are the files of a package with one question, and its item.
func packaged(t testing.TB, test Test, v Version, q Question) (files map[string][]byte, item *node) {
	t.Helper()
	files, names := unzipped(t, packed(t, test, v, q))
	for _, name := range names {
		if strings.HasPrefix(name, "items/") && strings.HasSuffix(name, ".xml") {
			item = readXML(t, files[name])
		}
	}
	return files, item
}

// TestPlayed plays every answer of the library in both versions, by a player of the test's own: the right values score all,
// no answers score nothing and are told nothing, each likely wrong value is told what judging says of it.
func TestPlayed(t *testing.T) {
	t.Parallel()
	answers, wrong := 0, 0
	for n, name := range librarytest.Names() {
		q := libraryQuestion(t, name)
		if n%3 == 0 { // in other conventions
			c := q.Problem.Conventions
			c.Shear, c.Decimal, c.Moments = notation.CounterClockwiseShear, notation.DecimalComma, notation.ClockwiseMoments
			q.Problem = q.Problem.In(c)
		}
		q.Points = exact.Int(int64(n + 1))
		if n%2 == 0 {
			q.Scheme, _ = problems.ReadScheme("", nil)
		}
		_, item := packaged(t, single(q), Version(n%2), q)
		ids := responses(item)
		if len(ids) != len(q.Items) {
			t.Fatalf("%s: %d responses for %d items", name, len(ids), len(q.Items))
		}
		answers += len(ids)
		full := map[string]string{}
		for i, it := range q.Items {
			full[ids[i]] = printed(q, it, it.Value).Figures(3)
		}
		if got := play(t, item, full)[score]; got != exact.Int(int64(n+1)).String() {
			t.Errorf("%s: all right answers with three figures score %s of %d", name, got, n+1)
		}
		none := play(t, item, nil)
		for _, id := range ids {
			if text := shown(t, item, none, id); text != "" || none[score] != "0" {
				t.Errorf("%s: of no answer to %s is told %q, score %s", name, id, text, none[score])
			}
		}
		wrong += playedWrong(t, item, q, ids)
	}
	t.Logf("%d answers, %d wrong values", answers, wrong)
	if answers < 650 || wrong < 1900 {
		t.Errorf("only %d answers and %d wrong values", answers, wrong)
	}
}

// printed is a value of an item by the signs that its problem prints.
func printed(q Question, it problems.Item, v exact.Num) exact.Num {
	if it.Force == statics.None && !it.Place && it.Quantity == statics.ShearForce {
		return q.Problem.Conventions.Shear.Value(v)
	}
	return v
}

// responses are the identifiers of an item's responses, in order.
func responses(item *node) []string {
	var all []string
	for _, d := range item.all("responseDeclaration") {
		all = append(all, d.attributes["identifier"])
	}
	return all
}

// playedWrong plays the first likely wrong values of all answers, then the second ones, then the third, at last those in the
// opposite sense, and returns how many there were.
func playedWrong(t *testing.T, item *node, q Question, ids []string) (wrong int) {
	type value struct{ typed, says string }
	rounds := make([]map[string]value, likelyValues+1)
	for n := range rounds {
		rounds[n] = map[string]value{}
	}
	for i, it := range q.Items {
		c := worksheet.Judged(q.Solved, it)
		for n, w := range c.LikelyWrong(likelyValues) {
			rounds[n][ids[i]] = value{printed(q, it, w.Value).Figures(3), w.Says}
			wrong++
		}
		low, high := c.Range()
		if v := it.Value.Neg(); !v.IsZero() && !it.Place && (v.Cmp(low) < 0 || v.Cmp(high) > 0) {
			rounds[likelyValues][ids[i]] = value{printed(q, it, v).Figures(3), senseSays}
		}
	}
	for _, round := range rounds {
		typed := map[string]string{}
		for id, v := range round {
			typed[id] = v.typed
		}
		values := play(t, item, typed)
		for id, v := range round {
			if text := shown(t, item, values, id); text != "Not yet: "+v.says {
				t.Errorf("%s, %s: of %s is told %q, want %q", q.Problem.Name, id, v.typed, text, v.says)
			}
		}
		if q.Scheme == nil && values[score] != "0" {
			t.Errorf("%s: nothing is right, and the score %s", q.Problem.Name, values[score])
		}
	}
	return wrong
}

// TestPlayedAsJudged holds what an item takes as right to the verdicts of package judging, on values around the right one.
func TestPlayedAsJudged(t *testing.T) {
	t.Parallel()
	offs := []string{"-0.03", "-0.011", "-0.004", "0", "0.002", "0.009", "0.013", "0.05"}
	taken, refused := 0, 0
	for _, name := range []string{"riding-hall", "grain-chute", "jetty-deck"} {
		q := libraryQuestion(t, name)
		_, item := packaged(t, single(q), V30, q)
		ids, want, typed := responses(item), map[string]bool{}, map[string]map[string]string{}
		for _, off := range offs {
			typed[off] = map[string]string{}
		}
		for i, it := range q.Items {
			c := worksheet.Judged(q.Solved, it)
			for _, off := range offs {
				v := exact.MustParse(it.Value.Mul(exact.Int(1).Add(exact.MustParse(off))).Figures(5))
				typed[off][ids[i]] = printed(q, it, v).Figures(5)
				within := v.Sub(it.Value).Abs().Cmp(judging.ThirdFigure(it.Value)) <= 0
				want[off+ids[i]] = within || c.Verdict(judging.Typed{Value: v, Written: v, Unit: exact.Int(1)}).Right()
			}
		}
		for off, answers := range typed {
			values := play(t, item, answers)
			for id, v := range answers {
				got := values[ofAnswer+id] == isRight
				if got != want[off+id] {
					t.Errorf("%s, %s: %s is right: %v, want %v", name, id, v, got, want[off+id])
				}
				if got {
					taken++
				} else {
					refused++
				}
			}
		}
	}
	if taken < 100 || refused < 100 {
		t.Errorf("only %d right and %d wrong", taken, refused)
	}
}

// TestLibraryItems looks through the documents of the library for what the standard's schema cannot tell, and lists the
// names that they use: where a new one comes in, the documents are to be held to the schema again, as
// testdata/measured/qti.md says.
func TestLibraryItems(t *testing.T) {
	t.Parallel()
	names := map[string]bool{}
	for n, name := range librarytest.Names() {
		q := libraryQuestion(t, name)
		files, item := packaged(t, single(q), Version(n%2), q)
		checkItem(t, name, item, files)
		checkManifest(t, name, files)
		for file, data := range files {
			if strings.HasSuffix(file, ".xml") {
				readXML(t, data).note(names)
			}
		}
	}
	golden(t, "names.txt", strings.Join(slices.Sorted(maps.Keys(names)), "\n")+"\n")
}

// note notes the names of a node and its attributes, and of all within it.
func (n *node) note(names map[string]bool) {
	names[n.name] = true
	for a := range n.attributes {
		names[n.name+" "+a] = true
	}
	for _, c := range n.children {
		c.note(names)
	}
}

// golden holds a text to a file of testdata.
func golden(t *testing.T, name, text string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if strings.ReplaceAll(string(want), "\r\n", "\n") != text {
		t.Errorf("%s differs; -update rewrites it", path)
	}
}

// checkItem looks for names that lead nowhere.
func checkItem(t *testing.T, name string, item *node, files map[string][]byte) {
	t.Helper()
	declared, entered, told := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, kind := range []string{"responseDeclaration", "outcomeDeclaration"} {
		for _, d := range item.all(kind) {
			id := d.attributes["identifier"]
			if declared[id] || identifier(id) != id {
				t.Errorf("%s: %s is declared twice, or is no name", name, id)
			}
			declared[id] = true
		}
	}
	for _, e := range item.all("textEntryInteraction") {
		entered[e.attributes["responseIdentifier"]] = true
	}
	for _, id := range responses(item) {
		if !entered[id] {
			t.Errorf("%s: there is no entry for %s", name, id)
		}
	}
	for _, kind := range []string{"variable", "setOutcomeValue"} {
		for _, u := range item.all(kind) {
			if id := u.attributes["identifier"]; !declared[id] {
				t.Errorf("%s: %s is used and not declared", name, id)
			}
		}
	}
	for _, s := range item.all("setOutcomeValue") {
		if b := s.children[0]; b.name == "baseValue" {
			told[s.attributes["identifier"]+" "+b.text()] = true
		}
	}
	for _, b := range item.all("feedbackBlock") {
		if key := b.attributes["outcomeIdentifier"] + " " + b.attributes["identifier"]; !told[key] || !declared[b.attributes["outcomeIdentifier"]] {
			t.Errorf("%s: %s is never told", name, key)
		}
	}
	for _, img := range item.all("img") {
		if files["items/"+img.attributes["src"]] == nil || img.attributes["alt"] == "" {
			t.Errorf("%s: no picture %q, or nothing said in its place", name, img.attributes["src"])
		}
	}
}

// checkManifest has the manifest list what is in the package, no more and no less.
func checkManifest(t *testing.T, name string, files map[string][]byte) {
	t.Helper()
	m := readXML(t, files["imsmanifest.xml"])
	listed := []string{"imsmanifest.xml"}
	for _, f := range m.all("file") {
		listed = append(listed, f.attributes["href"])
	}
	var have, resources []string
	for file := range files {
		have = append(have, file)
	}
	slices.Sort(listed)
	slices.Sort(have)
	if !slices.Equal(listed, have) {
		t.Errorf("%s: the manifest lists %q, the package has %q", name, listed, have)
	}
	for _, r := range m.all("resource") {
		resources = append(resources, r.attributes["identifier"])
	}
	for _, d := range m.all("dependency") {
		if !slices.Contains(resources, d.attributes["identifierref"]) {
			t.Errorf("%s: nothing is named %s", name, d.attributes["identifierref"])
		}
	}
	test := readXML(t, files["test.xml"])
	for _, ref := range test.all("assessmentItemRef") {
		if files[ref.attributes["href"]] == nil {
			t.Errorf("%s: the test refers to %s", name, ref.attributes["href"])
		}
	}
}

// TestWritten shows the documents of one package whole.
func TestWritten(t *testing.T) {
	t.Parallel()
	q := libraryQuestion(t, "jetty-deck")
	q.Items, q.Points = q.Items[:3], exact.MustParse("2.5")
	copied := q
	q.Code, copied.Code = "K7M2PX4D", "K3W9QHT5"
	test := Test{ID: "statics-w5", Title: "Statics, week 5", Sections: []string{"Problem 1"}}
	for v := range Versions {
		data := packed(t, test, Version(v), q, copied, q)
		files, _ := unzipped(t, data)
		for _, name := range []string{"imsmanifest.xml", "test.xml", "items/jetty-deck-K7M2PX4D.xml"} {
			golden(t, Versions[v]+"-"+strings.ReplaceAll(name, "/", "-"), string(files[name]))
		}
		if again := packed(t, test, Version(v), q, copied, q); !bytes.Equal(again, data) {
			t.Errorf("version %s: the same test gives other bytes", Versions[v])
		}
	}
}

// TestNothingHiddenInPackages: what is hidden in a title, a text or a code reaches no file as it is.
func TestNothingHiddenInPackages(t *testing.T) {
	t.Parallel()
	const hidden = "\x1b]0;x\a\x1b[31m\u009b31m\x9b\u202e\u2066\u200b\ufeff\x7f\u2028<b>&\"']]>"
	q := libraryQuestion(t, "jetty-deck")
	p := *q.Problem
	p.Name, p.Title, p.Text = p.Name+hidden, p.Title+hidden, p.Text+hidden
	q.Problem, q.Code = &p, "K7M2PX4D"+hidden
	files, item := packaged(t, Test{ID: "x" + hidden, Title: hidden, Sections: []string{hidden}}, V30, q)
	for name, data := range files {
		text := strings.ReplaceAll(string(data), "\n", "")
		if strings.ContainsFunc(text, notation.Hidden) || strings.ContainsRune(text, '\ufffd') || strings.ContainsFunc(name, notation.Hidden) {
			t.Errorf("%q holds what is hidden", name)
		}
	}
	if !strings.Contains(item.attributes["title"], `\u001b]0;x`) || !strings.Contains(item.attributes["title"], `<b>&"']]>`) {
		t.Errorf("the title is %q", item.attributes["title"])
	}
}

// TestNothingToAsk: a frame that has no answers makes no package.
func TestNothingToAsk(t *testing.T) {
	t.Parallel()
	q := libraryQuestion(t, "jetty-deck")
	q.Items = nil
	if _, err := NewItem(q, V21); err == nil {
		t.Error("a question without answers is packed")
	}
}
