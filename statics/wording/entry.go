package wording

// An Entry is one load as the file has it, for prose, filled where the file is read. A load over several members is one Entry.
type Entry struct {
	Kind  string   // "point", "couple", "uniform" or "ramp"
	Size  []string // the number as written; a ramp has two
	To    string   // the direction as written: "down", "210deg", "[3, -4]"; a couple "ccw" or "cw"
	On    []string // members as written there; "all" stands for itself
	Joint string
	At    string // position as written: "2.4", "1/2 length"
	From  string
	Until string
	Per   string // "length", "run" or "rise"; empty for a point load and a couple
}
