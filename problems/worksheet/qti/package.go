package qti

import (
	"archive/zip"
	"bytes"
	"time"

	"unpin/problems"
	"unpin/statics/exact"
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

// A Test is what is packed together.
type Test struct {
	ID, Title string // a title may be any text
	Sections  []Section
}

// A Section is one place on the paper. Of several questions, which are then copies of one problem, a platform draws one.
type Section struct {
	Title     string // any text
	Questions []Question
}

// A Question is a problem with what is asked of it. The problem must be determinate.
type Question struct {
	problems.Solved
	Items  []problems.Item // at least one
	Points exact.Num       // for all answers right, the same for each; 0 is one for each
	Code   string          // of the copy; may be empty
}

// A file of a package.
type file struct {
	name string
	data []byte
}

// Package is a test with its items as a zip, with remarks for whoever sets the questions, a line each: which mistakes lead to
// a value that passes for right. The same test gives the same bytes: the files have a fixed date.
func Package(t Test, v Version) (data []byte, remarks []string, err error) {
	p := pack{version: v, named: map[string]bool{}}
	if err := p.add(t); err != nil {
		return nil, nil, err
	}
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, f := range p.files {
		w, err := z.CreateHeader(&zip.FileHeader{Name: f.name, Method: zip.Deflate, Modified: fixedDate})
		if err != nil {
			return nil, nil, err
		}
		if _, err := w.Write(f.data); err != nil {
			return nil, nil, err
		}
	}
	if err := z.Close(); err != nil {
		return nil, nil, err
	}
	return out.Bytes(), p.remarks, nil
}

// fixedDate is the first day that a zip can tell.
var fixedDate = time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)

// A pack is a package in the making.
type pack struct {
	version Version
	files   []file // the manifest first
	named   map[string]bool
	remarks []string
}

// add makes all files of a test.
func (p *pack) add(t Test) error {
	var sections [][]packed
	for _, s := range t.Sections {
		var all []packed
		for _, q := range s.Questions {
			one, err := p.question(q)
			if err != nil {
				return err
			}
			all = append(all, one)
		}
		sections = append(sections, all)
	}
	test := file{"test.xml", p.version.document(p.test(t, sections))}
	manifest := file{"imsmanifest.xml", p.version.document(p.manifest(sections))}
	p.files = append([]file{manifest, test}, p.files...)
	return nil
}

// A packed question is an item with the names of its files.
type packed struct{ id, item, figure string }

// question adds the files of one question.
func (p *pack) question(q Question) (packed, error) {
	id := identifier(q.Problem.Name)
	if q.Code != "" {
		id += "-" + q.Code
	}
	id = unique(p.named, identifier(id))
	one := packed{id: id, item: "items/" + id + ".xml", figure: "items/" + id + ".svg"}
	i, err := newItem(id, q, p.version)
	if err != nil {
		return packed{}, err
	}
	if remark := i.remark(); remark != "" {
		p.remarks = append(p.remarks, one.id+": "+remark)
	}
	p.files = append(p.files, file{one.item, p.version.document(i.element())}, file{one.figure, i.figure})
	return one, nil
}
