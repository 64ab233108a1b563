package main

import (
	"fmt"
	"os"
	"path/filepath"

	"unpin/problems/worksheet"
)

// markdown is the solutions as Markdown, their figures images that are written into the folder for pictures. The links to
// them lead from the file of the document, or from where the command was given.
func (w writing) markdown(all []worksheet.Solved, o worksheet.Options) (string, error) {
	link := w.pictures
	if w.file != "" && w.file != "-" {
		if from, err := filepath.Rel(filepath.Dir(w.file), w.pictures); err == nil {
			link = from
		}
	}
	text, pictures := worksheet.MarkdownWithPictures(all, o, filepath.ToSlash(link))
	if err := os.MkdirAll(w.pictures, 0o777); err != nil {
		return "", fmt.Errorf("unpin: the folder %s cannot be made: %w", w.pictures, plainReason(err))
	}
	for _, p := range pictures {
		if err := w.spared(filepath.Join(w.pictures, p.Name)); err != nil {
			return "", err
		}
	}
	for _, p := range pictures {
		if err := deliver(p.SVG, filepath.Join(w.pictures, p.Name), nil); err != nil {
			return "", err
		}
	}
	return text, nil
}
