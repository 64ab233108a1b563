package main

import (
	"runtime"
	"runtime/debug"
	"strings"
)

// version names this build: the module's version, the revision it was built from where the build knows it, and Go's.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "(unknown), " + runtime.Version()
	}
	return buildName(info)
}

// buildName is version for the build that info describes.
func buildName(info *debug.BuildInfo) string {
	settings := map[string]string{}
	for _, s := range info.Settings {
		settings[s.Key] = s.Value
	}
	words := []string{info.Main.Version}
	if info.Main.Version == "" {
		words = []string{"(devel)"}
	}
	if revision := settings["vcs.revision"]; revision != "" {
		revision = "revision " + revision[:min(len(revision), 12)]
		if settings["vcs.modified"] == "true" {
			revision += " with changes"
		}
		words = append(words, revision)
	}
	return strings.Join(append(words, info.GoVersion), ", ")
}
