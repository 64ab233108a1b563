package worksheet

import (
	picture "image"
	"image/color"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"pgregory.net/rapid"

	"unpin/statics/figure/paper"
)

// printed is what a printer makes of a sheet of filled rectangles, at so many dots a point.
func printed(s paper.Sheet, dots float64) *picture.Gray {
	img := picture.NewGray(picture.Rect(0, 0, int(s.Width*dots), int(s.Height*dots)))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, m := range s.Marks {
		low, high := m.Path[0], m.Path[2]
		for y := int(low.Y*dots + 0.5); y < int(high.Y*dots+0.5); y++ {
			for x := int(low.X*dots + 0.5); x < int(high.X*dots+0.5); x++ {
				img.SetGray(x, y, color.Gray{Y: 0})
			}
		}
	}
	return img
}

// scanned is what another implementation, a reader of QR codes, finds in an image.
func scanned(img picture.Image) (string, error) { return scannedWith(img, nil) }

// scannedWith is what it finds when it is told of the image.
func scannedWith(img picture.Image, hints map[gozxing.DecodeHintType]any) (string, error) {
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		return "", err
	}
	found, err := qrcode.NewQRCodeReader().Decode(bits, hints)
	if err != nil {
		return "", err
	}
	return found.GetText(), nil
}

// TestDrawnCode has codes read from the drawing by a reader that shares nothing with what encodes them.
func TestDrawnCode(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		code := rapid.StringOfN(rapid.RuneFrom([]rune("23456789ABCDEFGHJKMNPQRSTUVWXYZ")), 8, 8, -1).Draw(t, "code")
		size := rapid.Float64Range(CodeSize, 120).Draw(t, "size")
		s, err := DrawnCode(code, size)
		if err != nil {
			t.Fatal(err)
		}
		if err := s.Check(); err != nil {
			t.Fatal(err)
		}
		got, err := scanned(printed(s, 300.0/72))
		if err != nil { // of one code in some hundreds this reader mistakes the size where it has to find it on the page first
			pure := map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true}
			got, err = scannedWith(printed(s, 300.0/72), pure)
		}
		if err != nil || got != code {
			t.Fatalf("of %s a reader finds %q, %v", code, got, err)
		}
	})
}

// TestSpoiltCode has a code read with a blot on it, of a tenth of its width.
func TestSpoiltCode(t *testing.T) {
	t.Parallel()
	s, err := DrawnCode("K7M2PX4D", 100)
	if err != nil {
		t.Fatal(err)
	}
	img := printed(s, 4)
	for y := 200; y < 240; y++ {
		for x := 200; x < 240; x++ {
			img.SetGray(x, y, color.Gray{Y: 0})
		}
	}
	if got, err := scanned(img); err != nil || got != "K7M2PX4D" {
		t.Errorf("a reader finds %q, %v", got, err)
	}
}

func TestCodeTooLong(t *testing.T) {
	t.Parallel()
	if _, err := DrawnCode(string(make([]byte, 5000)), 100); err == nil {
		t.Error("a text of 5000 bytes is drawn as a QR code")
	}
}
