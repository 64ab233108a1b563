package main

import (
	"runtime/debug"
	"strings"
	"testing"
	"unicode/utf8"
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

// TestTopicFile solves the problem that the topic on problem files shows.
func TestTopicFile(t *testing.T) {
	t.Parallel()
	about, _ := topicNamed("file")
	_, rest, _ := strings.Cut(about.text(), "\n\n")
	example, _, _ := strings.Cut(rest, "\n\n")
	if !strings.HasPrefix(example, "  title: ") {
		t.Fatalf("the example is\n%s", example)
	}
	if complaint := checkProblem(strings.ReplaceAll("\n"+example, "\n  ", "\n")); complaint != "" {
		t.Error(complaint)
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
