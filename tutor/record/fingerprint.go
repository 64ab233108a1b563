package record

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"unpin/problems"
	"unpin/statics"
	"unpin/statics/exact"
	"unpin/statics/notation"
)

// Fingerprint stands for what is asked of a frame: the same text for the same frame under the same conventions, another
// for another. It is "v3:" and the first 16 hex digits of the SHA-256 of Canon.
func Fingerprint(p *problems.Problem) string { return "v3:" + digest(Canon(p)) }

// Fingerprints are all those under which work on a problem may be kept: its own first, then those that earlier versions
// of the program wrote. That of version 2 had no line on two-force members.
func Fingerprints(p *problems.Problem) []string {
	_, earlier, _ := strings.Cut(Canon(p), "\n")
	return []string{Fingerprint(p), "v2:" + digest(earlier), OldFingerprint(&p.Frame)}
}

// digest is the first 16 hex digits of the SHA-256 of a text.
func digest(text string) string {
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:8])
}

// Canon writes out all of a problem that questions and answers depend on, one fact a line in a fixed order: whether
// two-force members are used at once, units and conventions that a typed value is read by, what is to be found, joints, members, connections, supports and loads by number. Numbers are
// exact, as exact.Num writes them. Titles, texts, the way a number was written and how results are printed are not in it.
func Canon(p *problems.Problem) string {
	var b strings.Builder
	find := slices.Clone(p.Find)
	slices.Sort(find)
	fmt.Fprintf(&b, "two-force %s\n", twoForceCodes[p.Conventions.TwoForce])
	fmt.Fprintf(&b, "ask units=%v moments=%v shear=%v find=%s\n", p.Units, p.Conventions.Moments, p.Conventions.Shear, strings.Join(find, ","))
	f := &p.Frame
	for _, j := range f.Joints {
		fmt.Fprintf(&b, "joint %s %v %v\n", j.Name, j.At.X, j.At.Y)
	}
	for _, m := range f.Members {
		fmt.Fprintf(&b, "member %s %d %d\n", m.Name, m.From, m.To)
	}
	for _, c := range f.Connections {
		fmt.Fprintf(&b, "%s %d pieces=%v main=%d along=%v,%v\n", connectionCodes[c.Kind], c.Joint, c.Pieces, c.Main, c.Along.X, c.Along.Y)
	}
	for _, s := range f.Supports {
		fmt.Fprintf(&b, "%s %d on=%d along=%v,%v\n", supportCodes[s.Kind], s.Joint, s.On, s.Along.X, s.Along.Y)
	}
	for _, l := range f.Loads {
		fmt.Fprintf(&b, "%s entry=%d joint=%d member=%d at=%v size=%v along=%v,%v", loadCodes[l.Kind], l.Entry, l.Joint, l.Member, l.At, l.Size,
			l.Along.X, l.Along.Y)
		fmt.Fprintf(&b, " first=%v last=%v start=%v end=%v per=%s", l.First, l.Last, l.Start, l.End, perCodes[l.Per])
		if l.Kind == statics.RopeLoad {
			fmt.Fprintf(&b, " second=%v,%v radius=%v", l.Second.X, l.Second.Y, l.Radius)
		}
		fmt.Fprintln(&b)
	}
	return b.String()
}

// The codes of a fingerprint's text. They never change.
var (
	connectionCodes = [...]string{statics.Pin: "pin", statics.Slot: "slot", statics.Sleeve: "sleeve"}
	supportCodes    = [...]string{statics.Pinned: "pinned", statics.Fixed: "fixed", statics.Roller: "roller", statics.Guide: "guide"}
	loadCodes       = [...]string{statics.PointLoad: "point", statics.CoupleLoad: "couple", statics.SpreadLoad: "spread", statics.RopeLoad: "rope"}
	twoForceCodes   = [...]string{notation.TwoForcePlain: "plain", notation.TwoForceShortcut: "shortcut"}
	perCodes        = [...]string{statics.PerLength: "length", statics.PerRun: "run", statics.PerRise: "rise"}
)

// OldFingerprint is that of version 1: a hash of the frame in Go's print format, without conventions. The types here are
// those that a frame was made of then, so that the text stays what it was whatever becomes of those of package statics.
func OldFingerprint(f *statics.Frame) string {
	type (
		point struct{ X, Y exact.Num }
		joint struct {
			Name string
			At   point
		}
		member struct {
			Name     string
			From, To int
		}
		connection struct {
			Joint, Kind int
			Pieces      [][]int
			Main        int
			Along       point
		}
		support struct {
			Joint, Kind int
			Along       point
			On          int
		}
		load struct {
			Kind, Entry             int
			Size                    exact.Num
			Along                   point
			Joint, Member           int
			At                      exact.Num
			First, Last, Start, End exact.Num
			Per                     int
		}
		frame struct {
			Joints      []joint
			Members     []member
			Connections []connection
			Supports    []support
			Loads       []load
		}
	)
	var old frame
	for _, x := range f.Joints {
		old.Joints = append(old.Joints, joint{x.Name, point(x.At)})
	}
	for _, x := range f.Members {
		old.Members = append(old.Members, member{x.Name, x.From, x.To})
	}
	for _, x := range f.Connections {
		old.Connections = append(old.Connections, connection{x.Joint, int(x.Kind), x.Pieces, x.Main, point(x.Along)})
	}
	for _, x := range f.Supports {
		old.Supports = append(old.Supports, support{x.Joint, int(x.Kind), point(x.Along), x.On})
	}
	for _, x := range f.Loads {
		old.Loads = append(old.Loads, load{int(x.Kind), x.Entry, x.Size, point(x.Along), x.Joint, x.Member, x.At, x.First, x.Last, x.Start,
			x.End, int(x.Per)})
	}
	return digest(fmt.Sprintf("%v", old))
}
