package worksheet

import (
	"path/filepath"
	"testing"

	"unpin/problems/librarytest"
)

// TestKeysOnOnePage prints the key to each problem of the library on both papers, as of a copy with its code: it is one page, whose text
// ends above the caution, and no more figures lose their scale or labels than would on more pages.
func TestKeysOnOnePage(t *testing.T) {
	t.Parallel()
	keys, smaller := 0, 0
	for _, name := range librarytest.Names() {
		files := glob(t, filepath.Join("..", "library", "*-"+name+".yaml"))
		if len(files) != 1 {
			t.Fatalf("%s is %v", name, files)
		}
		task := taskOf(t, files[0], PlanLevel)
		task.Code = "K7M2PX4D"
		for _, size := range []PaperSize{A4, Letter} {
			paper := Paper{Heading: week, Tasks: []Task{task}, Size: size}.settled()
			one := printing{newPrint("", size), PaperOptions{Key: true}, paper}.press(task)
			keys++
			if one.scale < 1 {
				smaller++
			}
			if len(one.pages) != 1 {
				t.Errorf("the key to %s on %s has %d pages", name, size.Name, len(one.pages))
				continue
			}
			last := one.pages[0][len(one.pages[0])-1]
			if end := (last.y + last.height) * one.scale; end > size.Height-paperFoot*one.scale+0.1 {
				t.Errorf("the key to %s on %s ends at %.0f of %.0f", name, size.Name, end, size.Height)
			}
			crowded := one.c.crowded()
			one.c.size = size
			one.c.pair(false)
			if one.c.compose(0.8); crowded > one.c.crowded() {
				t.Errorf("the key to %s on %s has %d figures that are crowded at %.2f, and %d on more pages", name, size.Name, crowded, one.scale, one.c.crowded())
			}
			if noteSize*one.scale < 6.9 {
				t.Errorf("the key to %s on %s is printed at %.2f", name, size.Name, one.scale)
			}
		}
	}
	t.Logf("%d of %d keys are printed smaller", smaller, keys)
}
