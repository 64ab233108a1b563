// Package screen is the lesson on a terminal's screen: a chooser of problems, and a lesson with the figure of the free
// body in hand, the sheet of the sums worked so far, the question, a line for the answer, and what is said to it.
//
// Everything about the lesson itself is in package tutor; here keys are translated into lines typed, and what tutor knows
// is drawn. Three rules keep the drawing whole. Nothing is drawn before the terminal has told its size. One function a
// view divides the screen into places. All of a screen is put into one page of cells, which has exactly the height and
// width of the terminal, so that no line can be too long and none too many.
//
// What a mark means is never told by colour alone, every sign has a twin in ASCII, and only the eight colours that the
// terminal itself defines are used, so that light and dark grounds both serve.
package screen
