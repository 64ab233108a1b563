package main

import (
	"encoding/json"
	"runtime/debug"
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"unpin/problems"
	"unpin/tutor"
)

// TestTopics reads every topic of help: its lines fit a page, and what it shows as typed is right.
func TestTopics(t *testing.T) {
	t.Parallel()
	for _, topic := range topics {
		text := topic.text()
		if !strings.HasSuffix(text, "\n") || strings.Contains(text, "\t") {
			t.Errorf("%s: wants blanks in place of tabs, and a line's end at its end", topic.name)
		}
		for _, line := range strings.Split(text, "\n") {
			if n := utf8.RuneCountInString(line); n > 120 {
				t.Errorf("%s: %d characters in %q", topic.name, n, line)
			}
			if command, ok := strings.CutPrefix(line, "  unpin "); ok && !strings.Contains(command, "says") {
				if complaint := checkCommand(strings.Fields(command)); complaint != "" {
					t.Errorf("%s: %s", topic.name, complaint)
				}
			}
		}
	}
}

// TestTopicFile solves the problems that the topic on problem files shows.
func TestTopicFile(t *testing.T) {
	t.Parallel()
	about, _ := topicNamed("file")
	shown := 0
	for block := range strings.SplitSeq(about.text(), "\n\n") {
		if !strings.HasPrefix(block, "  title: ") {
			continue
		}
		shown++
		if complaint := checkProblem(strings.ReplaceAll("\n"+block, "\n  ", "\n")); complaint != "" {
			t.Error(complaint)
		}
	}
	if shown < 2 {
		t.Errorf("%d problems are shown", shown)
	}
}

// TestTopicFileNamesAllFields looks for every field of the format in the topic on problem files.
func TestTopicFileNamesAllFields(t *testing.T) {
	t.Parallel()
	about, _ := topicNamed("file")
	words := strings.FieldsFunc(about.text(), func(r rune) bool { return !unicode.IsLetter(r) && r != '-' })
	names := problems.FieldNames()
	if len(names) < 35 {
		t.Errorf("the format has only %d fields: %v", len(names), names)
	}
	for _, name := range names {
		if !slices.Contains(words, name) {
			t.Errorf("the topic does not tell of the field %s", name)
		}
	}
}

// TestTopicHosting holds what a service and a container start to the real commands.
func TestTopicHosting(t *testing.T) {
	t.Parallel()
	about, _ := topicNamed("hosting")
	started := 0
	for line := range strings.Lines(about.text()) {
		var words []string
		if command, found := strings.CutPrefix(line, "    ExecStart=/usr/local/bin/unpin "); found {
			words = strings.Fields(command)
		} else if entry, found := strings.CutPrefix(line, "    ENTRYPOINT "); found {
			if err := json.Unmarshal([]byte(entry), &words); err != nil || len(words) == 0 {
				t.Fatal(entry, err)
			}
			words = words[1:]
		}
		if words == nil {
			continue
		}
		started++
		if complaint := checkCommand(words); complaint != "" {
			t.Error(complaint)
		}
	}
	if started != 2 {
		t.Errorf("%d are shown", started)
	}
}

// TestTopicSet reads the set that the topic on sets shows, and looks for every field there.
func TestTopicSet(t *testing.T) {
	t.Parallel()
	about, _ := topicNamed("set")
	shown := ""
	for block := range strings.SplitSeq(about.text(), "\n\n") {
		if strings.HasPrefix(block, "  id: ") {
			shown = strings.ReplaceAll("\n"+block, "\n  ", "\n")
		}
	}
	for what, text := range map[string]string{"the topic": shown, "the starter": problems.SetStarter} {
		s, err := problems.ReadSet(what, []byte(text), problems.Beside("."))
		if err != nil || len(s.Tasks) < 2 {
			t.Errorf("%s: %v", what, err)
			continue
		}
		for _, w := range s.Warnings {
			t.Errorf("%s: %s", what, w)
		}
	}
	for _, name := range problems.SetFieldNames() {
		if !strings.Contains(about.text(), "\n  "+name+" ") && name != "closes" {
			t.Errorf("the topic does not tell of the field %s", name)
		}
	}
	if !slices.Equal(tutor.Levels(), problems.SetLevels) {
		t.Errorf("a set knows the levels %v, a lesson %v", problems.SetLevels, tutor.Levels())
	}
}

// TestBuildName names builds by what the linker knows of them.
func TestBuildName(t *testing.T) {
	t.Parallel()
	for want, info := range map[string]*debug.BuildInfo{
		"(devel), go1.26.8": {GoVersion: "go1.26.8"},
		"v1.2.0, go1.26.8":  {GoVersion: "go1.26.8", Main: debug.Module{Version: "v1.2.0"}},
		"v1.2.0, revision 0123456789ab with changes, go1.26.8": {GoVersion: "go1.26.8", Main: debug.Module{Version: "v1.2.0"},
			Settings: []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}, {Key: "vcs.modified", Value: "true"}}},
	} {
		if got := buildName(info); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
