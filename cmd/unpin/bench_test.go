package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// beamOf is a problem file of a beam of so many parts with pins between them, the first fixed, each further one on a roller.
func beamOf(parts int) string {
	joints, members, pins, supports, loads := "P0: [0, 0]", []string{}, []string{}, "P0: fixed", ""
	for i := range parts {
		joints += fmt.Sprintf(", R%d: [%d, 0], P%d: [%d, 0]", i, 4*i+2, i+1, 4*i+4)
		members = append(members, fmt.Sprintf("P%dR%d, R%dP%d", i, i, i, i+1))
		if i > 0 {
			pins = append(pins, fmt.Sprintf("P%d", i))
			supports += fmt.Sprintf(", R%d: {roller: up}", i)
		}
		loads += fmt.Sprintf("  - {point: 6, to: down, on: P%dR%d, at: 1}\n  - {uniform: 2, to: down, on: R%dP%d}\n", i, i, i, i+1)
	}
	return fmt.Sprintf("title: beam\nunits: kN m\njoints: {%s}\nmembers: [%s]\npins: [%s]\nsupports: {%s}\nloads:\n%s",
		joints, strings.Join(members, ", "), strings.Join(pins, ", "), supports, loads)
}

// BenchmarkOutputs is whole commands in one process, on beams of several sizes.
func BenchmarkOutputs(b *testing.B) {
	for _, parts := range []int{3, 30, 100, 300} {
		path := filepath.Join(b.TempDir(), "beam.yaml")
		if err := os.WriteFile(path, []byte(beamOf(parts)), 0o600); err != nil {
			b.Fatal(err)
		}
		for _, args := range []string{"inspect", "solve --as text", "solve --as json", "solve --as svg", "solve --as html", "solve --as pdf"} {
			b.Run(fmt.Sprintf("%s/%d", strings.ReplaceAll(args, " ", "_"), parts), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if code := run(append(strings.Fields(args), path), strings.NewReader(""), io.Discard, os.Stderr); code != done {
						b.Fatalf("exit code %d", code)
					}
				}
			})
		}
	}
}

// BenchmarkProcess is a whole process from nothing to its end.
func BenchmarkProcess(b *testing.B) {
	self, err := os.Executable()
	if err != nil {
		b.Fatal(err)
	}
	bin := filepath.Join(b.TempDir(), "unpin")
	if err := os.Symlink(self, bin); err != nil {
		b.Fatal(err)
	}
	for _, args := range []string{"--version", "solve jetty-deck --as json", "inspect jetty-deck"} {
		b.Run(strings.ReplaceAll(args, " ", "_"), func(b *testing.B) {
			for b.Loop() {
				if err := exec.Command(bin, strings.Fields(args)...).Run(); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
