package record

import (
	"cmp"
	"crypto/sha256"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"slices"
)

// window is how many steps of a skill, and of a kind, count at most: the latest. What was before says little of what stands now, and
// so what is to be read at an opening stays small however long one practises.
const window = 60

// often is after how many lines more the brief is written anew: so many are read line by line at an opening at most.
const often = 2000

// A Past is what was kept when it was read, with no more of it in hand than is needed at once.
type Past struct {
	log   Log
	brief brief
	last  []placed // the line that has no end yet, if it is a record
	torn  Passed   // or else what it is passed over for
}

// latelyName is the note that keeps the brief.
const latelyName = "lately"

// A brief is drawn from the lines up to one of them: what counts of them, and where the rest stands. It can be made anew at any time.
type brief struct {
	Version int               `json:"version"`
	Last    mark              `json:"last"`
	Frame   string            `json:"frame"` // of the last line, if it is a record
	Passed  Passed            `json:"passed"`
	Frames  map[string][]span `json:"frames"` // where the lines of each frame stand
	Lately  []placed          `json:"lately"` // the records that count by themselves, see lately
}

// briefVersion is that of the briefs that are written; others are made anew.
const briefVersion = 2

// A mark tells the last line that a brief was drawn from: if that is as it was, so are those before it.
type mark struct {
	At, Next int64
	Digest   string
}

// A span is from one place to before another.
type span [2]int64

// placed is a record with its place.
type placed struct {
	Place int64 `json:"place"`
	Record
}

// Past reads what was kept. The time that it takes hardly grows with all that was ever kept: of older lines a brief is kept beside them.
func (s *Store) Past() (*Past, error) {
	p := &Past{log: s.log, brief: readBrief(s.log)}
	read := 0
	for line, err := range s.log.Lines(p.brief.Last.Next) {
		if err != nil {
			return nil, fmt.Errorf("earlier progress cannot be read: %w", err)
		}
		read++
		if r, why := line.parse(); line.Next > line.At {
			p.brief.add(line, r, why)
		} else if p.torn.count(why); why == sound {
			p.last = []placed{{line.At, r}}
		}
	}
	p.brief.Lately = lately(p.brief.Lately)
	if read >= s.often {
		if text, err := json.Marshal(p.brief); err == nil {
			_ = s.log.SetNote(latelyName, text) // without it the next opening takes longer, no more
		}
	}
	return p, nil
}

// readBrief is the brief that is kept, if it holds for the lines that are there; else an empty one.
func readBrief(log Log) brief {
	none := brief{Version: briefVersion, Frames: map[string][]span{}}
	text, err := log.Note(latelyName)
	if err != nil || text == nil {
		return none
	}
	var b brief
	if json.Unmarshal(text, &b) != nil || b.Version != briefVersion || b.Frames == nil {
		return none
	}
	for line, err := range log.Lines(b.Last.At) {
		if err == nil && line.mark() == b.Last {
			return b
		}
		break
	}
	return none
}

// mark is what a brief keeps of its last line.
func (l Line) mark() mark {
	sum := sha256.Sum256(l.Text)
	return mark{l.At, l.Next, base64.RawStdEncoding.EncodeToString(sum[:12])}
}

// add takes one more line into a brief, and what it was parsed to.
func (b *brief) add(l Line, r Record, why fault) {
	goesOn := b.Frame == r.Frame
	b.Last, b.Frame = l.mark(), r.Frame
	if b.Passed.count(why); why != sound {
		return
	}
	spans := b.Frames[r.Frame]
	if n := len(spans); n > 0 && goesOn {
		spans[n-1][1] = l.Next
	} else {
		spans = append(spans, span{l.At, l.Next})
	}
	b.Frames[r.Frame] = spans
	if b.Lately = append(b.Lately, placed{l.At, r}); len(b.Lately) >= 4*often {
		b.Lately = lately(b.Lately)
	}
}

// lately picks the records that count by themselves: the latest steps of each skill and of each kind, those that decide what the latest days of a skill
// come to, and the last event on each problem.
func lately(all []placed) []placed {
	decides := decide(all)
	skills, kinds, problems := map[string]int{}, map[Kind]int{}, map[string]bool{}
	var kept []placed
	for i, r := range slices.Backward(all) {
		counts := !problems[r.Problem] || decides[i]
		problems[r.Problem] = true
		if r.Kind != "" {
			counts = counts || kinds[r.Kind] < window
			kinds[r.Kind]++
		}
		for skill := range r.tried() {
			counts = counts || skills[skill] < window
			skills[skill]++
		}
		if counts {
			kept = append(kept, r)
		}
	}
	slices.Reverse(kept)
	return kept
}

// Passed counts the lines that were passed over.
func (p *Past) Passed() Passed {
	a, b := p.brief.Passed, p.torn
	return Passed{a.Torn + b.Torn, a.Long + b.Long, a.Newer + b.Newer}
}

// Of lists the records that say what stands now, and all of those on frames with these fingerprints, in their order.
func (p *Past) Of(frames ...string) ([]Record, error) {
	all := slices.Concat(p.brief.Lately, p.last)
	for _, frame := range frames {
		for _, span := range p.brief.Frames[frame] {
			some, err := span.records(p.log)
			if err != nil {
				return nil, fmt.Errorf("earlier progress cannot be read: %w", err)
			}
			all = append(all, some...)
		}
	}
	slices.SortStableFunc(all, func(a, b placed) int { return cmp.Compare(a.Place, b.Place) })
	all = slices.CompactFunc(all, func(a, b placed) bool { return a.Place == b.Place })
	records := make([]Record, len(all))
	for i, r := range all {
		records[i] = r.Record
	}
	return records, nil
}

// records reads the records of a span.
func (s span) records(log Log) (all []placed, err error) {
	for line, err := range log.Lines(s[0]) {
		if err != nil {
			return nil, err
		}
		if line.At >= s[1] {
			break
		}
		if r, why := line.parse(); why == sound {
			all = append(all, placed{line.At, r})
		}
	}
	return all, nil
}
