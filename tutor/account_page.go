package tutor

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"sync"
	"time"

	"unpin/statics/wording"
)

//go:embed account.html
var accountPage string

// accountTemplate is the page for a browser.
var accountTemplate = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("account").Funcs(template.FuncMap{
		"day":        func(t time.Time) string { return t.Format(time.DateOnly) },
		"session":    sessionText,
		"caution":    func() string { return wording.Caution },
		"standsWhen": func() []string { return standsWhen },
		"percent":    func(right, of int) int { return 100 * right / max(of, 1) },
	}).Parse(accountPage))
})

// A bar is one day in the plot of an account, in the units of its drawing, y downwards.
type bar struct {
	X, Width         int
	Top, Tall        int // of all steps
	RightTop, Height int // of those that came right at the first try
	Title            string
}

// The plot of days, in the units of its drawing.
const (
	barStep  = 20
	barWidth = 14
	plotTall = 100
)

// bars are the days of an account as drawn.
func (a Account) bars() []bar {
	most := 1
	for _, d := range a.Days {
		most = max(most, d.Steps.Of)
	}
	var all []bar
	for i, d := range a.Days {
		tall, right := plotTall*d.Steps.Of/most, plotTall*d.Steps.Right/most
		all = append(all, bar{
			X: i * barStep, Width: barWidth, Top: plotTall - tall, Tall: tall, RightTop: plotTall - right, Height: right,
			Title: fmt.Sprintf("%s: %d of %d", d.Day.Format(time.DateOnly), d.Steps.Right, d.Steps.Of),
		})
	}
	return all
}

// HTML is an account as a page for a browser, whole in itself.
func (a Account) HTML() []byte {
	page := map[string]any{"Account": a, "Bars": a.bars(), "Wide": len(a.Days) * barStep, "Across": len(a.Days)*barStep + 4, "Tall": plotTall, "High": plotTall + 40, "Under": plotTall + 16}
	steps, most := 0, 0
	for _, d := range a.Days {
		steps, most = steps+d.Steps.Of, max(most, d.Steps.Of)
	}
	page["Steps"], page["Most"] = steps, most
	page["From"], page["Until"] = a.Days[0].Day.Format(time.DateOnly), a.Days[len(a.Days)-1].Day.Format(time.DateOnly)
	var b bytes.Buffer
	if err := accountTemplate().Execute(&b, page); err != nil {
		panic("internal error: " + err.Error()) // the template fits what it is given
	}
	return b.Bytes()
}
