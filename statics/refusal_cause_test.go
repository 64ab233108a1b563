package statics

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"unpin/statics/exact"
)

// TestRefusals checks frames of every critical form and of every sort of fault, made by hand: why each motion is possible,
// and what would make the frame determinate. The title ends in the causes of the motions.
func TestRefusals(t *testing.T) {
	eachCase(t, "testdata/refusals.txt", func(t *testing.T, c textCase) string {
		s, err := Solve(build(t, c.input))
		if err != nil {
			t.Fatal(err)
		}
		var causes []string
		for _, m := range s.Motions() {
			r := s.Reason(m)
			causes = append(causes, r.Cause.String())
		}
		if _, want, _ := strings.Cut(c.title, " => "); strings.Join(causes, ", ") != want {
			t.Errorf("causes: %v, want %s", causes, want)
		}
		if err := refusalFits(s); err != nil {
			t.Error(err)
		}
		return refusalLines(s)
	})
}

// refusalLines is why a frame is not determinate.
func refusalLines(s *Solution) string {
	var b strings.Builder
	fmt.Fprintln(&b, s.Count.Determinacy())
	for _, m := range s.Motions() {
		fmt.Fprintf(&b, "motion: %s\n  %s\n", motionText(s.Assembly, m), reasonText(s.Assembly, s.Reason(m)))
	}
	for _, way := range s.Remedies() {
		var changes []string
		for _, c := range way {
			changes = append(changes, changeText(&s.Frame, c))
		}
		fmt.Fprintf(&b, "or else: %s\n", strings.Join(changes, "; "))
	}
	return b.String()
}

func forceNames(a *Assembly, forces []int) string {
	var names []string
	for _, i := range forces {
		names = append(names, a.Forces[i].Name)
	}
	return strings.Join(names, " ")
}

func reasonText(a *Assembly, r Reason) string {
	var groups []string
	for _, g := range r.Groups {
		groups = append(groups, bodyNames(a, g))
	}
	var bars []string
	for _, b := range r.Bars {
		bars = append(bars, a.Frame.Joints[b.Ends[0]].Name+"-"+a.Frame.Joints[b.Ends[1]].Name)
	}
	text := fmt.Sprintf("%s: %s held by %d forces of %d: %s", r.Cause, strings.Join(groups, " | "), len(r.Forces), r.Needed(), forceNames(a, r.Forces))
	if len(bars) > 0 {
		text += fmt.Sprintf("; %s on bars %s", bodyNames(a, r.Groups[r.Main]), strings.Join(bars, " "))
	}
	switch r.Cause {
	case AllParallel:
		text += fmt.Sprintf("; along (%s, %s)", r.Along.X, r.Along.Y)
	case AllConcurrent:
		text += fmt.Sprintf("; in (%s, %s)", r.Point.X, r.Point.Y)
	case HingesInLine:
		for _, h := range r.Hinges {
			text += "; " + hingeText(a, h)
		}
	}
	return text
}

func hingeText(a *Assembly, h Hinge) string {
	switch {
	case h.Parallel:
		return fmt.Sprintf("%s along (%s, %s)", forceNames(a, h.Forces), h.Along.X, h.Along.Y)
	case h.Joint != None:
		return a.Frame.Joints[h.Joint].Name
	}
	return fmt.Sprintf("%s at (%s, %s)", forceNames(a, h.Forces), h.At.X, h.At.Y)
}

func changeText(f *Frame, c Change) string {
	text := [...]string{"pin for fixed", "hinge", "roller for pin", "no roller", "roller for guide", "guide for fixed", "through", "pin for roller", "pin for slot",
		"rigid", "fixed for pin", "fixed for guide", "new roller", "new pin", "new fixed", "pin for sleeve", "pin for guide", "roller turned", "joint moved"}[c.Kind]
	text += " at " + f.Joints[c.Joint].Name
	if c.Kind == HingeAt && c.Member != None {
		text += " of " + f.Members[c.Member].Name
	}
	if !c.Along.IsZero() {
		text += fmt.Sprintf(" (%s, %s)", c.Along.X, c.Along.Y)
	}
	return text
}

// refusalFits checks what is said about a frame that is not determinate: each cause is so by the lines of the forces alone,
// and each way leads to a frame that the oracle finds determinate.
func refusalFits(s *Solution) error {
	for _, m := range s.Motions() {
		if err := reasonFits(s.Assembly, s.Reason(m)); err != nil {
			return fmt.Errorf("%s: %w", reasonText(s.Assembly, s.Reason(m)), err)
		}
	}
	for _, way := range s.Remedies() {
		f := s.Frame
		for _, c := range way {
			f = f.With(c)
		}
		if o := consult(f); o.degree() != 0 || o.motions() != 0 {
			return fmt.Errorf("with %+v the frame has degree %d and %d motions", way, o.degree(), o.motions())
		}
	}
	return nil
}

func reasonFits(a *Assembly, r Reason) error {
	if want := forcesBetween(a, r.Groups); !slices.Equal(want, r.Forces) {
		return fmt.Errorf("the forces that hold the groups are %s", forceNames(a, want))
	}
	if few := len(r.Forces) < r.Needed(); few != (r.Cause == TooFewForces) {
		return fmt.Errorf("%d forces, %d needed", len(r.Forces), r.Needed())
	}
	if r.Cause == AllParallel || r.Cause == AllConcurrent {
		return heldInVain(a, r)
	}
	switch r.Cause {
	case HingesInLine:
		return hingesInLine(a, r)
	}
	return nil
}

// forcesBetween lists the forces that act between different groups, or between a group and anything else.
func forcesBetween(a *Assembly, groups []FreeBody) []int {
	var between []int
	for i, f := range a.Forces {
		for _, g := range groups {
			if slices.Contains(g, f.On) != slices.Contains(g, f.By) && !slices.Contains(between, i) {
				between = append(between, i)
			}
		}
	}
	return between
}

// heldInVain checks that the forces on the main group from what is at rest, and the bars, are all parallel or all in one
// point, three at least.
func heldInVain(a *Assembly, r Reason) error {
	direct := forcesBetween(a, []FreeBody{r.Groups[r.Main]})
	lines := len(r.Bars)
	for _, b := range r.Bars {
		on := forcesBetween(a, []FreeBody{r.Groups[b.Group]})
		direct = slices.DeleteFunc(direct, func(i int) bool { return slices.Contains(on, i) })
		from, to := a.Frame.Joints[b.Ends[0]].At, a.Frame.Joints[b.Ends[1]].At
		line := from.To(to)
		if r.Cause == AllParallel && !line.Cross(r.Along).IsZero() || r.Cause == AllConcurrent && !line.Cross(from.To(r.Point)).IsZero() {
			return fmt.Errorf("the bar from %v to %v does not", from, to)
		}
	}
	if lines+len(direct) < 3 {
		return fmt.Errorf("only %d hold the group", lines+len(direct))
	}
	if r.Cause == AllParallel {
		return parallel(a, direct, r.Along)
	}
	return concurrent(a, direct, r.Point)
}

func parallel(a *Assembly, forces []int, along Vector) error {
	for _, i := range forces {
		if f := a.Forces[i]; !f.Couple && !f.Along.Cross(along).IsZero() || along.IsZero() {
			return fmt.Errorf("%s is not parallel", f.Name)
		}
	}
	return nil
}

func concurrent(a *Assembly, forces []int, p Point) error {
	for _, i := range forces {
		f := a.Forces[i]
		if f.Couple || !a.Frame.Joints[f.Joint].At.To(p).Cross(f.Along).IsZero() {
			return fmt.Errorf("%s does not pass through the point", f.Name)
		}
	}
	return nil
}

// hingesInLine checks that the forces of each hinge fix it, and that the three lie in one line.
func hingesInLine(a *Assembly, r Reason) error {
	var points []Point
	var way Vector
	total := 0
	for _, h := range r.Hinges {
		total += len(h.Forces)
		if h.Parallel {
			way = h.Along
			if err := parallel(a, h.Forces, h.Along); err != nil {
				return err
			}
			continue
		}
		points = append(points, h.At)
		if h.Joint != None && !a.Frame.Joints[h.Joint].At.Equal(h.At) {
			return fmt.Errorf("the hinge is not at its joint")
		}
		if err := concurrent(a, h.Forces, h.At); err != nil {
			return err
		}
	}
	if len(points) == 3 {
		way = points[1].To(points[2])
	}
	if total != len(r.Forces) || len(points) < 2 || !points[0].To(points[1]).Cross(way).IsZero() {
		return fmt.Errorf("%d of %d forces belong to the hinges, or these are not in one line", total, len(r.Forces))
	}
	return nil
}

// TestRefusalsOfRandomFrames checks the same for thousands of frames that are not determinate, and that most of those that
// a few changes could mend are given some (S16).
func TestRefusalsOfRandomFrames(t *testing.T) {
	t.Parallel()
	causes, ways, mendable, mended := map[Cause]int{}, 0, 0, 0
	check := func(f Frame) error {
		s, err := Solve(f)
		if err != nil || s.Values != nil {
			return err
		}
		for _, m := range s.Motions() {
			causes[s.Reason(m).Cause]++
		}
		n := len(s.Remedies())
		ways += n
		if s.Count.Degree()+s.Count.Motions() <= mostChanges {
			mendable++
			mended += min(n, 1)
		}
		return refusalFits(s)
	}
	overSeeds(t, 4000, 400, check)
	n := uint64(1500)
	if testing.Short() {
		n = 200
	}
	for seed := range n {
		f := critical(seeded(seed))
		if err := check(f); err != nil {
			t.Fatalf("critical frame %d: %v\n%s", seed, err, write(f))
		}
	}
	t.Logf("%d frames not determinate, %d of them mended; causes of motions: %v; %d ways to mend", mendable, mended, causes, ways)
	for _, c := range []Cause{TooFewForces, AllParallel, AllConcurrent, HingesInLine, BadPlaces} {
		if causes[c] < 2 {
			t.Errorf("only %d motions are possible because %s", causes[c], c)
		}
	}
	if mended*10 < mendable*9 {
		t.Errorf("only %d of %d frames are mended", mended, mendable)
	}
}

// critical is a frame of one or two parts in a critical form, now and then on a random frame: three rollers that meet or
// are parallel, or two bent parts whose hinges, pins or crossings of rollers, lie in one line.
func critical(pick chooser) Frame {
	g := generator{pick: pick, taken: map[[2]int]bool{}}
	if g.chance(50) {
		g.rollers(3, g.newJoint, g.direction(), g.chance(50))
		return g.f
	}
	// The hinges stand on the line from (0, 0) along the direction.
	line := Vector{exact.Int(int64(pick(1, 4))), exact.Int(int64(pick(-3, 3)))}
	at := func(k int64) Point { return Point{}.Plus(line.Times(exact.Int(k))) }
	mid := g.jointOn(at(int64(pick(2, 4))))
	var pieces [][]int
	for _, k := range []int64{0, 6} {
		first := len(g.f.Members)
		if g.chance(50) {
			foot, knee := g.jointOn(at(k)), g.newJoint()
			g.member(foot, knee)
			g.member(knee, mid)
			g.f.Supports = append(g.f.Supports, Support{Joint: foot, Kind: Pinned, On: None})
		} else {
			g.pushed(at(k), mid)
		}
		pieces = append(pieces, g.at(mid, first))
	}
	g.f.Connections = append(g.f.Connections, Connection{Joint: mid, Kind: Pin, Pieces: pieces, Main: None})
	return g.f
}

// at lists the members from the first on that end at a joint.
func (g *generator) at(j, first int) []int {
	var members []int
	for m := first; m < len(g.f.Members); m++ {
		if x := g.f.Members[m]; x.From == j || x.To == j {
			members = append(members, m)
		}
	}
	return members
}

// jointOn makes a joint at a point.
func (g *generator) jointOn(p Point) int {
	g.f.Joints = append(g.f.Joints, Joint{name(len(g.f.Joints)), p})
	h := g.halves(len(g.f.Joints) - 1)
	g.taken[h] = true
	return len(g.f.Joints) - 1
}

// pushed is a part to joint mid on two rollers whose lines cross at p.
func (g *generator) pushed(p Point, mid int) {
	last := mid
	for range 2 {
		j := g.newJoint()
		g.member(j, last)
		last = j
		along := g.f.Joints[j].At.To(p)
		if along.IsZero() {
			along = east
		}
		g.f.Supports = append(g.f.Supports, Support{Joint: j, Kind: Roller, Along: along, On: None})
	}
}

// rollers is one part on n rollers, parallel or pushing through one point.
func (g *generator) rollers(n int, joint func() int, along Vector, parallel bool) {
	p := Point{exact.Int(int64(g.pick(-5, 30))), exact.Int(int64(g.pick(-5, 30)))}
	last := joint()
	for i := range n {
		j := last
		if i > 0 {
			j = joint()
			g.member(last, j)
			last = j
		}
		way := along
		if !parallel {
			if way = g.f.Joints[j].At.To(p); way.IsZero() {
				way = north
			}
		}
		g.f.Supports = append(g.f.Supports, Support{Joint: j, Kind: Roller, Along: way, On: None})
	}
}
