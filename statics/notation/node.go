package notation

// A nodeKind is what a node of an expression is.
type nodeKind int

const (
	numberNode     nodeKind = iota
	nameNode                // a name that the caller knows
	letterNode              // P, L, PL…
	negativeNode            // −x
	sumNode                 // x + y
	differenceNode          // x − y
	productNode             // x · y
	quotientNode            // x ÷ y
	callNode                // a function of x
	measuredNode            // x with a unit
	powerNode               // x to the power in the text, from 1 to 9
)

// A node is an expression as typed, from byte start to end of its text.
type node struct {
	kind       nodeKind
	start, end int
	text       string  // number, name, letters, function; of a measured node its unit as typed
	unit       measure // of a measured node; of letters their powers
	unitAt     int     // of a measured node: where its unit begins
	x, y       *node
	bracketed  bool // it stands in brackets of its own, which start and end include
}
