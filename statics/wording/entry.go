package wording

// An Entry is one load as the file has it, for prose, filled where the file is read. A load over several members is one Entry.
type Entry struct {
	Kind   string   // "point", "couple", "uniform", "ramp" or "pulley"
	Size   []string // the number as written; a ramp has two; of a pulley the rope's tension
	To     string   // the direction as written: "down", "210deg", "[3, -4]"; a couple "ccw" or "cw"; a pulley two: "[down, left]"
	On     []string // members as written there; "all" stands for itself
	Joint  string   // of a pulley, on which it stands
	At     string   // position as written: "2.4", "1/2 length"
	From   string
	Until  string
	Per    string // "length", "run" or "rise"; empty for a point load, a couple and a pulley
	Radius string // of a pulley's wheel; empty where it is not given
}
