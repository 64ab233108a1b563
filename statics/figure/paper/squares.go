package paper

// quiet is how many squares are left white around a pattern of squares that is read by a camera (ISO/IEC 18004, 2015,
// section 5.3.8: four for a QR code).
const quiet = 4

// Squares is a pattern of black and white squares, such as a QR code, as a sheet of a width and height in points, with its
// white rim in them. Rows lists the squares from the top left, black ones true; all rows are as long as there are rows.
func Squares(title string, rows [][]bool, size float64) Sheet {
	n := len(rows)
	s := Sheet{Title: title, Width: size, Height: size, Fits: true}
	if n == 0 {
		return s
	}
	one := size / float64(n+2*quiet)
	for y, row := range rows {
		runs(len(row), func(x int) bool { return row[x] }, func(from, until int) {
			s.Marks = append(s.Marks, filled(one, from, y, until, y+1))
		})
	}
	// The same columns over the rows: between rows that only touch, some readers of documents leave a hair of white.
	for x := range n {
		runs(n, func(y int) bool { return rows[y][x] }, func(from, until int) {
			if until > from+1 {
				s.Marks = append(s.Marks, filled(one, x, from, x+1, until))
			}
		})
	}
	return s
}

// runs tells each longest run of black among n squares.
func runs(n int, black func(int) bool, tell func(from, until int)) {
	for from := 0; from < n; from++ {
		until := from
		for until < n && black(until) {
			until++
		}
		if until > from {
			tell(from, until)
			from = until
		}
	}
}

// filled is a black rectangle between squares, each so many points wide.
func filled(one float64, x0, y0, x1, y1 int) Mark {
	at := func(x, y int) Place { return Place{float64(x+quiet) * one, float64(y+quiet) * one} }
	return Mark{Path: []Place{at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)}, Closed: true, Fill: black, Line: NoInk}
}
