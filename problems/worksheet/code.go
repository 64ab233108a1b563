package worksheet

import (
	"fmt"
	"image/color"

	"github.com/boombuler/barcode/qr"

	"unpin/statics/figure/paper"
)

// CodeSize is how wide a drawn code is at least, in points, with the white around it: 21 squares of half a millimetre and
// more, which the camera of a telephone reads at arm's length (common practice, no source).
const CodeSize = 48.0

// DrawnCode is the code of a copy as a QR code (ISO/IEC 18004) of a size in points, its white rim included, to be drawn in
// the corner of a sheet by [paper.DrawPDF] or as an image by [paper.SVG]. It holds the code alone, as it is printed. Up to ten
// signs of capitals and digits take 21 squares each way, of which up to three in ten may be spoilt.
func DrawnCode(code string, size float64) (paper.Sheet, error) {
	rows, err := codeSquares(code)
	if err != nil {
		return paper.Sheet{}, err
	}
	return paper.Squares("Code "+code, rows, size), nil
}

// codeSquares are the squares of a QR code, row by row from the top left; black ones are true.
func codeSquares(code string) ([][]bool, error) {
	symbol, err := qr.Encode(code, qr.H, qr.Auto)
	if err != nil {
		return nil, fmt.Errorf("the code %q does not fit a QR code: %w", code, err)
	}
	rows := make([][]bool, symbol.Bounds().Dy())
	for y := range rows {
		rows[y] = make([]bool, symbol.Bounds().Dx())
		for x := range rows[y] {
			rows[y][x] = symbol.At(x, y) == color.Black
		}
	}
	return rows, nil
}
