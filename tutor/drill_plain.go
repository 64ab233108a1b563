package tutor

import (
	"errors"
	"io"

	"unpin/statics/notation"
	"unpin/statics/wording"
)

// PlainDrill runs a drill by line, as Plain runs a lesson.
func PlainDrill(d *Drill, in io.Reader, out io.Writer) error {
	p := plainOn(in, out)
	_, err := p.drill(d)
	return errors.Join(err, p.out.Flush())
}

// drill asks all questions of a drill, and reports whether the student is still there.
func (p *plain) drill(d *Drill) (on bool, err error) {
	p.say("%s", notation.ASCII(d.Title()))
	p.lines(teller{about: d.about}.frameLines())
	p.say("%s", wording.Caution)
	p.say("%s", d.Task())
	p.lines(pageTexts(d.Page()))
	p.say("Type help to see what can be typed.")
	for last := -1; ; {
		says, name, unit, asking := d.Now()
		if !asking {
			p.lines(d.Ending())
			return true, nil
		}
		if at, _ := d.Position(); at != last {
			p.lines(says)
			last = at
		}
		p.say("? %s [%s]", name, unit)
		if _, on, err := p.takes(d.Type); err != nil || !on {
			return false, err
		}
	}
}
