package worksheet

import (
	"fmt"
	"strings"

	"unpin/statics/figure"
	"unpin/statics/figure/paper"
)

// Heights of printed figures at most, in points: of a frame, and for each of its members where they are many; taken apart, for
// each of its arrows where they are many, and in any case; and of one of two side by side, also for each member.
const (
	pictureTall = 220.0
	memberTall  = 18.0
	bodiesTall  = 275.0
	arrowTall   = 13.0
	bodiesMost  = 600.0
	besideTall  = 210.0
	besideEach  = 14.0
	besideGap   = 16.0
)

// A pictureKind is how a figure stands among others of its document.
type pictureKind int

const (
	alonePicture  pictureKind = iota
	levelPicture              // of a beam: all such have one scale and stand exactly beneath one another
	besidePicture             // of N, V or M of a frame: all have one scale and stand two by two
)

// kindOf is the kind of a figure.
func kindOf(s figure.Scene) pictureKind {
	switch {
	case s.IsApart():
		return alonePicture
	case s.IsLevel():
		return levelPicture
	case len(s.Curves) > 0:
		return besidePicture
	}
	return alonePicture
}

// pictureKind is the kind of a figure among the passages.
func (b passage) pictureKind() pictureKind {
	switch {
	case b.kind != picturePassage:
		return alonePicture
	case b.beside, b.paired:
		return besidePicture
	}
	return kindOf(b.picture)
}

// A room is what figures have: the width of the text, and how tall one may be at most.
type room struct {
	wide, tallest float64
}

// beside is the width of a figure that stands beside another.
func (r room) beside() float64 { return (r.wide - besideGap) / 2 }

// sheetsOf lays all figures of a document out.
func (c *composer) sheetsOf(size float64) map[int]paper.Sheet {
	return room{c.wide(), c.tallest()}.sheetsOf(c.d.list, size)
}

// tallest is how tall a figure may be that stands on a page with its title.
func (c *composer) tallest() float64 {
	const title = 5 * lineHeight
	return c.size.Height - c.top - c.foot - title
}

// sheetsOf lays all figures among passages out, those that have one scale together. Size is the share of their usual height
// that they may have.
func (r room) sheetsOf(list []passage, size float64) map[int]paper.Sheet {
	sheets := map[int]paper.Sheet{}
	together := map[pictureKind][]int{}
	smaller, _ := r.besideBy(bodiesBeside(list), size)
	var sketches []int
	for i, b := range list {
		switch {
		case b.kind == sketchPassage && b.alone:
			sheets[i] = paper.Layout(b.picture, r.wide, beamAxesTall)
		case b.kind == sketchPassage && b.axes:
			sheets[i] = paper.Layout(b.picture, r.sketchWide(), axesTall)
		case b.kind == sketchPassage:
			sketches = append(sketches, i)
		}
		if b.kind != picturePassage {
			continue
		}
		if b.beside {
			by := 1.0
			if len(b.picture.Curves) == 0 {
				by = smaller
			}
			sheets[i] = r.besideSheet(b.picture, size, by)
			continue
		}
		if kind := b.pictureKind(); kind != alonePicture {
			together[kind] = append(together[kind], i)
			continue
		}
		tall := min(max(pictureTall, memberTall*float64(len(b.picture.Strokes))), bodiesMost)
		if b.picture.IsApart() {
			tall = min(max(bodiesTall, arrowTall*float64(b.picture.CountArrows())), bodiesMost)
		}
		sheets[i] = r.fitting(b.picture, tall*size)
	}
	for kind, some := range together {
		scenes := make([]figure.Scene, len(some))
		for k, i := range some {
			scenes[k] = list[i].picture
		}
		wide, tall := r.wide, pictureTall*size
		if kind == besidePicture {
			members := float64(len(scenes[0].Strokes))
			wide, tall = r.beside(), min(max(besideTall, besideEach*members), bodiesMost)*size
		}
		for k, s := range paper.LayoutAll(scenes, wide, tall) {
			sheets[some[k]] = s
		}
	}
	r.sketches(sheets, list, sketches)
	for i, s := range sheets { // a frame too crowded for the page is printed smaller
		if by := min(r.wide/s.Width, r.tallest/s.Height); by < 1 {
			sheets[i] = s.Scaled(by)
		}
	}
	return sheets
}

// besideSheet is a figure that stands beside another, laid out so many times as large as it is printed.
func (r room) besideSheet(s figure.Scene, size, by float64) paper.Sheet {
	return paper.Layout(s, r.beside()*by, besideTall*size*by).Scaled(1 / by)
}

// besideBy is how many times as large all these free bodies must be laid out at least to stand beside one another, and whether
// they then can: all are printed smaller by that.
func (r room) besideBy(scenes []figure.Scene, size float64) (by float64, ok bool) {
	const step, most = 1.05, 1.25 // letters are of 9 points, and then of 7
	by = 1
	for _, s := range scenes {
		for !r.besideSheet(s, size, by).Fits {
			if by *= step; by > most {
				return 1, false
			}
		}
	}
	return by, true
}

// bodiesBeside are the free bodies among passages that stand beside one another.
func bodiesBeside(list []passage) []figure.Scene {
	var scenes []figure.Scene
	for _, b := range list {
		if b.beside && len(b.picture.Curves) == 0 {
			scenes = append(scenes, b.picture)
		}
	}
	return scenes
}

// growth is by how much taller a figure is tried that is too crowded.
const growth = 1.3

// fitting is a figure of the width of the text, so tall at most if that fits its labels and its arrows stand at what they act on,
// else somewhat taller, at last as a page.
func (r room) fitting(s figure.Scene, tall float64) paper.Sheet {
	sheet := paper.Layout(s, r.wide, tall)
	tries := 0
	for tall *= growth; !sheet.Fits && tall < r.tallest*growth; tall *= growth {
		sheet = paper.Layout(s, r.wide, min(tall, r.tallest))
	}
	for ; sheet.Fits && sheet.Astray > fewAstray && tall < r.tallest && tries < roomier; tall *= growth {
		if larger := paper.Layout(s, r.wide, tall); larger.Fits && larger.Astray < sheet.Astray-fewAstray {
			sheet = larger
		}
		tries++
	}
	return sheet
}

// A figure whose arrows stand off what they act on by more than so many points in all is tried larger, so many times.
const (
	fewAstray = 10.0
	roomier   = 3
)

// sketchesAbreast is how many pictures to draw on stand side by side on a page so wide: in large print each has a row of its own.
func sketchesAbreast(wide float64) int {
	const two = 340
	if wide < two {
		return 1
	}
	return 2
}

// sketchWide is the width of a place for a picture to draw on.
func (r room) sketchWide() float64 {
	n := float64(sketchesAbreast(r.wide))
	return (r.wide - besideGap*(n-1)) / n
}

// sketches lays pictures to draw on out with room around them, all to one scale but single pins, which have none.
func (r room) sketches(sheets map[int]paper.Sheet, list []passage, some []int) {
	wide := r.sketchWide() - sketchPad // the layout keeps as much again for labels, more than outlines have
	var scenes []figure.Scene
	var of []int
	for _, i := range some {
		if len(list[i].picture.Strokes) == 0 {
			sheets[i] = paper.Layout(list[i].picture, wide, sketchTall)
			continue
		}
		scenes, of = append(scenes, list[i].picture), append(of, i)
	}
	for k, s := range paper.LayoutAll(scenes, wide, sketchTall) {
		sheets[of[k]] = s
	}
}

// picture sets figure i with its number and title beneath, or waits for the one that stands beside it.
func (c *composer) picture(i int) {
	switch c.d.list[i].pictureKind() {
	case levelPicture:
		c.pictures([]int{i}, c.levelLeft(i))
	case besidePicture:
		c.pair(i)
	default:
		c.pictures([]int{i}, []float64{c.slot(0, 1) - c.sheets[i].Width/2})
	}
}

// levelLeft is where the sheet of a beam begins, so that all beams of the document stand beneath one another and the widest
// figure in the middle.
func (c *composer) levelLeft(i int) []float64 {
	left, right := 0.0, 0.0
	for k, s := range c.sheets {
		if c.d.list[k].pictureKind() == levelPicture {
			left, right = max(left, s.Origin.X), max(right, s.Width-s.Origin.X)
		}
	}
	return []float64{sideMargin + (c.wide()-left-right)/2 + left - c.sheets[i].Origin.X}
}

// pair sets a figure beside the one before, if that stands alone, or else waits for the next.
func (c *composer) pair(i int) {
	first := i
	for first > 0 && c.isBeside(first-1) {
		first--
	}
	group := []int{i}
	if (i-first)%2 == 1 {
		group = []int{i - 1, i}
	} else if c.isBeside(i + 1) {
		return
	}
	var left []float64
	for k, n := range group {
		left = append(left, c.slot(k, len(group))-c.sheets[n].Width/2)
	}
	c.pictures(group, left)
}

// isBeside reports whether passage i is a figure that stands beside another.
func (c *composer) isBeside(i int) bool {
	return i < len(c.d.list) && c.d.list[i].pictureKind() == besidePicture
}

// pictures sets figures side by side, each from a place of its own, with their frames at one height.
func (c *composer) pictures(group []int, left []float64) {
	over, under := 0.0, 0.0 // the feet of the frames
	for _, i := range group {
		s := c.sheets[i]
		over, under = max(over, s.Origin.Y), max(under, s.Height-s.Origin.Y)
	}
	c.strips = append(c.strips, strip{above: 10, height: over + under, with: !c.tight, draw: func(y float64) {
		for k, i := range group {
			paper.DrawPDF(c.doc, c.sheets[i], left[k], y+over-c.sheets[i].Origin.Y, figureFamily)
		}
	}})
	if c.tight { // what they are stands in their legends
		return
	}
	var captions [][]typeWord
	for _, i := range group {
		captions = append(captions, c.caption(c.d.list[i]))
	}
	c.strips = append(c.strips, strip{above: 3, height: lineHeight + 4, draw: func(y float64) {
		for k, words := range captions {
			c.write(words, c.slot(k, len(captions))-lineWide(words, noteSize+0.5)/2, y+noteSize, noteSize+0.5)
		}
	}})
}

// caption is the number and title of a figure.
func (c *composer) caption(b passage) []typeWord {
	c.figures++
	number := c.words(fmt.Sprintf("Figure %d.", c.figures), lineStyle{size: noteSize + 0.5, style: "B"})
	return append(number, c.words(strings.TrimSuffix(b.text, "."), lineStyle{size: noteSize + 0.5, letters: captionLetters(b)})...)
}

// captionLetters are the letters that stand for numbers in the title of a figure; where no quantity is drawn they are joints.
func captionLetters(b passage) string {
	if len(b.picture.Curves) > 0 {
		return "NVM"
	}
	return ""
}

// slot is the middle of the place of figure k of n side by side.
func (c *composer) slot(k, n int) float64 {
	return sideMargin + c.wide()*(float64(k)+0.5)/float64(n)
}
