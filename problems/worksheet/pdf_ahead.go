package worksheet

import (
	"iter"
	"runtime"

	"codeberg.org/go-pdf/fpdf"
)

// A ready paper is one whose pages are made, so that they can be drawn.
type ready struct {
	printing
	tasks []pressed
	fault any // what its making panicked with
}

// ahead makes the pages of papers on all processors and yields them in their order, no more of them at a time than are in the making.
// Widths are measured in documents that nothing is drawn in, one for each that measures.
func ahead(papers iter.Seq[Paper], o PaperOptions) iter.Seq[ready] {
	workers := runtime.GOMAXPROCS(0)
	measures := make(chan *fpdf.Fpdf, workers)
	for range workers {
		measures <- nil // made when it is needed
	}
	return func(yield func(ready) bool) {
		begun, ended := make(chan chan ready, workers), make(chan struct{})
		defer close(ended)
		go func() {
			defer close(begun)
			defer func() {
				if fault := recover(); fault != nil { // of who makes the papers
					one := make(chan ready, 1)
					one <- ready{fault: fault}
					begun <- one
				}
			}()
			for p := range papers {
				one := make(chan ready, 1)
				select {
				case begun <- one:
				case <-ended:
					return
				}
				measure := <-measures
				go func() {
					if measure == nil {
						measure = newPrint("", A4)
					}
					one <- made(printing{measure, o, p.settled()})
					measures <- measure
				}()
			}
		}()
		for one := range begun {
			r := <-one
			if r.fault != nil {
				panic(r.fault)
			}
			if !yield(r) {
				return
			}
		}
	}
}

// made makes the pages of a paper and catches a panic of that.
func made(p printing) (r ready) {
	defer func() { r.fault = recover() }()
	r.printing = p
	for _, t := range p.Tasks {
		r.tasks = append(r.tasks, p.press(t))
	}
	return r
}
