package worksheet

import (
	"path/filepath"
	"testing"
)

// TestFilled prints sheets of frames of all grades at all levels: no page but the last is half empty, and of the last pages few
// have but a little on them. Room that is left out to save a page leaves some in each place.
func TestFilled(t *testing.T) {
	t.Parallel()
	sheets, stubs := 0, 0
	for _, name := range []string{"05-harbour-sign", "10-mill-bridge", "21-sawmill-portal", "34-watch-tower", "37-camp-table"} {
		for level := ValuesLevel; level <= BlankLevel; level++ {
			for _, size := range []PaperSize{A4, Letter} {
				paper := Paper{Heading: week, Tasks: []Task{taskOf(t, filepath.Join("..", "library", name+".yaml"), level)}, Size: size}.settled()
				p := printing{newPrint("", size), PaperOptions{}, paper}
				one := p.press(p.Tasks[0])
				sheets++
				if one.c.isStub(one.pages) {
					stubs++
				}
				for n, page := range one.pages[:len(one.pages)-1] {
					if one.c.isOpen(page) {
						t.Errorf("%s at %s on %s: page %d of %d is half empty", name, level, size.Name, n+1, len(one.pages))
					}
				}
				rows := 0
				for i, s := range one.c.strips {
					if rows++; !s.room {
						rows = 0
					} else if i+1 == len(one.c.strips) || !one.c.strips[i+1].room {
						if rows < leastRoom && level != ValuesLevel {
							t.Errorf("%s at %s on %s: a room of %d rows", name, level, size.Name, rows)
						}
					}
				}
			}
		}
	}
	if stubs*10 > sheets {
		t.Errorf("%d of %d last pages have but a little on them", stubs, sheets)
	}
}

// TestHalfPage: a step with room to work in loses rows until half a page holds it, if it keeps enough of them, and nothing else; what it
// gives stays behind the last row.
func TestHalfPage(t *testing.T) {
	t.Parallel()
	step := func(rows int) []strip {
		all := []strip{{height: 10}, {height: 14, with: true}}
		for range rows {
			all = append(all, strip{height: dotRow, room: true})
		}
		return append(all, strip{above: blankAbove, height: 14})
	}
	for _, test := range []struct {
		rows int
		tall float64
		want int // rows that are left
	}{{9, 200, 9}, {9, 150, 7}, {9, 120, 5}, {9, 80, 9}, {3, 60, 3}, {0, 10, 0}} {
		whole := step(test.rows)
		got := halfPage(whole, 1, test.tall)
		left := len(got) - 3
		if left != test.want || got[0].room || got[1].room || got[len(got)-1].room {
			t.Errorf("%d rows in %.0f: %d are left", test.rows, test.tall, left)
		}
		if len(whole) != test.rows+3 || test.rows > 0 && !whole[2].room {
			t.Errorf("%d rows in %.0f: what was composed is altered", test.rows, test.tall)
		}
	}
}
