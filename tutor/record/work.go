package record

import "slices"

// Work is what was done before on one problem at one level.
type Work struct{ events []Record }

// WorkOn picks out of all records, in the order of the file, those of lessons, or else of exams, on a problem with one of
// these fingerprints at a level; of what was set aside by a restart, nothing. What is of a paper is no part of it.
func WorkOn(all []Record, frames []string, level string, exam bool) Work {
	var w Work
	for _, r := range all {
		if r.Exam != exam || r.Paper != "" || r.Level != level || !slices.Contains(frames, r.Frame) {
			continue
		}
		if r.Outcome == Restarted {
			w.events = nil
		}
		w.events = append(w.events, r)
	}
	return w
}

// Together are the events of all runs as if they had been one: for lessons whose questions are the same in every run.
func (w Work) Together() []Record { return w.events }

// Furthest are the events of the run that settled the most questions, of several the latest: for lessons whose questions
// follow from what was answered, so that those of two runs cannot be mixed.
func (w Work) Furthest() []Record {
	var best []Record
	most := 0
	for _, run := range w.runs() {
		events := w.history(run, len(w.events))
		if n := settled(events); n >= most {
			best, most = events, n
		}
	}
	return best
}

// Latest are the events of the run that came last, with what it took up.
func (w Work) Latest() []Record {
	runs := w.runs()
	if len(runs) == 0 {
		return nil
	}
	return w.history(runs[len(runs)-1], len(w.events))
}

// Unfinished are the events of the exam that was left last: of the runs since the last one that was worked
// to its end, the one that answers the most, of several the latest.
func (w Work) Unfinished(ends func([]Record) bool) []Record {
	var best []Record
	most := 0
	for _, run := range w.runs() {
		events := w.history(run, len(w.events))
		switch n := Answered(events); {
		case ends(events):
			best, most = nil, 0
		case n > 0 && n >= most:
			best, most = events, n
		}
	}
	return best
}

// runs lists the runs in the order in which they began.
func (w Work) runs() []string {
	var all []string
	for _, r := range w.events {
		if !slices.Contains(all, r.Run) {
			all = append(all, r.Run)
		}
	}
	return all
}

// history lists the events of a run before a place in the file, in the order of the lesson: where it took up another run,
// what had been done in that by then comes first. It ends, since each run taken up is read up to an earlier place.
func (w Work) history(run string, before int) []Record {
	var events []Record
	for i, r := range w.events[:before] {
		switch {
		case r.Run != run:
		case r.Outcome == Resumed && r.From != "":
			events = append(w.history(r.From, i), r)
		default:
			events = append(events, r)
		}
	}
	return events
}

// settled counts the questions that are settled.
func settled(events []Record) int { return count(events, Outcome.Settles) }

// Answered counts the questions of an exam that are answered or left open.
func Answered(events []Record) int { return count(events, Outcome.Notes) }

// count counts the questions with an outcome of some sort.
func count(events []Record, sort func(Outcome) bool) int {
	numbers := map[int]bool{}
	for _, r := range events {
		if sort(r.Outcome) {
			numbers[r.Number] = true
		}
	}
	return len(numbers)
}
