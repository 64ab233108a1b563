// Package figuretest is for the tests of figure, cells and paper: it reads frames from test files and builds their scenes.
package figuretest
