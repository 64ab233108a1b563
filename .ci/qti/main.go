// Command qti packs the library as questions, in all versions, and writes what is to be typed into their items and what
// should come of it, for a player that shares nothing with the project:
//
//	go run ./.ci/qti -out /tmp/questions
//
// The folder gets VERSION/NAME/ with the files of the package of each problem, and cases.json. What should come of an answer
// is from package judging, by the items' order; the documents are read only for the names of the responses.
package main

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"encoding/xml"
	"flag"
	"fmt"
	"io"
	"math/big"
	"os"
	"path/filepath"

	"unpin/problems"
	"unpin/problems/worksheet"
	"unpin/problems/worksheet/qti"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/tutor/marking"
)

func main() {
	out := flag.String("out", "", "the folder for packages and cases")
	flag.Parse()
	if *out == "" {
		flag.Usage()
		os.Exit(2)
	}
	if err := run(*out); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// A typing is what is typed into an item, and what should come of it.
type typing struct {
	Item   string            // the path of its document in the folder
	Kind   string            // right, low, high, empty, wrong 1, wrong 2, wrong 3, sense, far
	Typed  map[string]string // by the names of responses
	Score  float64
	Shown  map[string]string // what begins the text that is shown of an answer; of others none is
	Answer int               // how many answers the item has
}

func run(out string) error {
	var cases []typing
	for v := range qti.Versions {
		for _, name := range problems.Names() {
			p, _ := problems.Library(name)
			s, err := statics.Solve(p.Frame)
			if err != nil {
				return err
			}
			solved := problems.Solved{Problem: p, Solution: s}
			marker, err := marking.New(solved, nil)
			if err != nil {
				return err
			}
			usual := marking.DefaultScheme()
			q := qti.Question{Solved: solved, Items: solved.Items(), Points: problems.UsualPoints, Weights: marker.Weights(usual), Scheme: (*problems.Scheme)(usual)}
			data, err := packed(q, qti.Version(v))
			if err != nil {
				return err
			}
			folder := filepath.Join(qti.Versions[v], name)
			if err := unpack(data, filepath.Join(out, folder)); err != nil {
				return err
			}
			item := filepath.Join(folder, "items", name+".xml")
			ids, err := responses(filepath.Join(out, item))
			if err != nil || len(ids) != len(q.Items) {
				return fmt.Errorf("%s: %d responses of %d items, %w", item, len(ids), len(q.Items), err)
			}
			if qti.Version(v) == qti.V30 {
				cases = append(cases, typings(item, q, ids)...)
			}
		}
	}
	data, err := json.MarshalIndent(cases, "", " ")
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(out, "cases.json"), data, 0o644)
}

// packed is the package of one question, and of the same with a code, between which a platform draws.
func packed(q qti.Question, v qti.Version) ([]byte, error) {
	var out bytes.Buffer
	w := qti.NewWriter(&out, v)
	for _, code := range []string{"", "K7M2PX4D"} {
		q.Code = code
		i, err := qti.NewItem(q, v)
		if err != nil {
			return nil, err
		}
		if err := w.Add(0, i); err != nil {
			return nil, err
		}
	}
	err := w.Close(qti.Test{ID: q.Problem.Name, Title: q.Problem.Title, Sections: []string{q.Problem.Title}})
	return out.Bytes(), err
}

// unpack writes the files of a zip into a folder.
func unpack(data []byte, folder string) error {
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return err
	}
	for _, f := range z.File {
		path := filepath.Join(folder, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		r, err := f.Open()
		if err != nil {
			return err
		}
		text, err := io.ReadAll(r)
		if err != nil {
			return err
		}
		if err := os.WriteFile(path, text, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// responses are the names of an item's responses, in order.
func responses(path string) (ids []string, err error) {
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	d := xml.NewDecoder(bytes.NewReader(data))
	for {
		token, err := d.Token()
		if err == io.EOF {
			return ids, nil
		}
		if err != nil {
			return nil, err
		}
		start, ok := token.(xml.StartElement)
		if !ok || start.Name.Local != "qti-response-declaration" && start.Name.Local != "responseDeclaration" {
			continue
		}
		for _, a := range start.Attr {
			if a.Name.Local == "identifier" {
				ids = append(ids, a.Value)
			}
		}
	}
}

// typings are the cases of one item.
func typings(item string, q qti.Question, ids []string) []typing {
	kinds := []string{"right", "low", "high", "empty", "wrong 1", "wrong 2", "wrong 3", "sense", "far"}
	by, earned, charged := map[string]*typing{}, map[string]*big.Rat{}, false
	for _, k := range kinds {
		earned[k] = new(big.Rat)
		by[k] = &typing{Item: item, Kind: k, Typed: map[string]string{}, Shown: map[string]string{}, Answer: len(ids)}
	}
	for i, it := range q.Items {
		id := ids[i]
		printed := func(x exact.Num, figures int) string {
			if it.Force == statics.None && !it.Place && it.Quantity == statics.ShearForce {
				x = q.Problem.Conventions.Shear.Value(x)
			}
			return x.Figures(figures)
		}
		add := func(kind, typed, shown string) {
			by[kind].Typed[id], by[kind].Shown[id] = typed, shown
			weight, _ := new(big.Rat).SetString(q.Weights[i].String())
			switch {
			case shown == "Right.":
				earned[kind].Add(earned[kind], weight)
			case kind == "sense" && weight.Sign() > 0: // half is taken, once
				if earned[kind].Add(earned[kind], weight); !charged {
					charged = true
					earned[kind].Sub(earned[kind], weight.Quo(weight, big.NewRat(2, 1)))
				}
			}
		}
		c := worksheet.Judged(q.Solved, it)
		low, high := c.Range()
		inside := high.Sub(low).Mul(exact.MustParse("0.001"))
		add("right", printed(it.Value, 3), "Right.")
		add("low", printed(low.Add(inside), 6), "Right.")
		add("high", printed(high.Sub(inside), 6), "Right.")
		for n, w := range c.LikelyWrong(3) {
			add(fmt.Sprintf("wrong %d", n+1), printed(w.Value, 3), "Not yet: "+w.Says)
		}
		if v := it.Value.Neg(); !v.IsZero() && !it.Place && (v.Cmp(low) < 0 || v.Cmp(high) > 0) {
			add("sense", printed(v, 3), "Not yet: the size is right, but not the sense")
		}
		add("far", "98765.4321", "Not yet.")
	}
	var all []typing
	for _, k := range kinds {
		halves := earned[k].Mul(earned[k], big.NewRat(20, 1)) // of 10 points, in steps of a half, half up
		floor := halves.Add(halves, big.NewRat(1, 2))
		by[k].Score = float64(new(big.Int).Quo(floor.Num(), floor.Denom()).Int64()) / 2
		all = append(all, *by[k])
	}
	return all
}
