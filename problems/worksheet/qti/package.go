package qti

import (
	"archive/zip"
	"io"
	"time"
)

// A Version is one of the standard.
type Version int

// The versions.
const (
	V21 Version = iota
	V30
)

// Versions are their names, in order.
var Versions = []string{"2.1", "3.0"}

// String is the version's name.
func (v Version) String() string { return Versions[v] }

// A Test is the paper on which the questions of a package stand. Its texts may be any.
type Test struct {
	ID, Title string
	Sections  []string // the titles of its places, each for one problem
}

// A Writer writes a package, item by item. The same items and test give the same bytes: the files have a fixed date.
type Writer struct {
	zip      *zip.Writer
	version  Version
	sections map[int][]*Item // without what they hold
	written  map[string]bool
}

// NewWriter is a writer of a package.
func NewWriter(to io.Writer, v Version) *Writer {
	return &Writer{zip: zip.NewWriter(to), version: v, sections: map[int][]*Item{}, written: map[string]bool{}}
}

// Add adds an item to a section, from 0. Of several items of one section a platform draws one; they are to be copies of one
// problem. An item that is in the package already is passed over: two students may have the same copy.
func (w *Writer) Add(section int, i *Item) error {
	if w.written[i.id] {
		return nil
	}
	w.written[i.id] = true
	w.sections[section] = append(w.sections[section], &Item{id: i.id})
	if err := w.file(i.document(), i.data); err != nil {
		return err
	}
	return w.file(i.picture(), i.figure)
}

// Close ends the package with the test and the manifest.
func (w *Writer) Close(t Test) error {
	sections := make([][]*Item, len(t.Sections))
	for n := range sections {
		sections[n] = w.sections[n]
	}
	if err := w.file("test.xml", w.version.document(w.version.test(t, sections))); err != nil {
		return err
	}
	if err := w.file("imsmanifest.xml", w.version.document(w.version.manifest(sections))); err != nil {
		return err
	}
	return w.zip.Close()
}

// fixedDate is the first day that a zip can tell.
var fixedDate = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)

// file adds a file.
func (w *Writer) file(name string, data []byte) error {
	to, err := w.zip.CreateHeader(&zip.FileHeader{Name: name, Method: zip.Deflate, Modified: fixedDate})
	if err == nil {
		_, err = to.Write(data)
	}
	return err
}
