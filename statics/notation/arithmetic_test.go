package notation_test

import (
	"fmt"
	"go/ast"
	"go/constant"
	"go/parser"
	"go/token"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

// expressions are arithmetic that Go reads too: decimals, signs, brackets and + - * /.
func expressions() *rapid.Generator[string] {
	literal := rapid.Custom(func(t *rapid.T) string {
		return fmt.Sprintf("%d.%d", rapid.IntRange(0, 99).Draw(t, "whole"), rapid.IntRange(0, 99).Draw(t, "fraction"))
	})
	var any func(depth int) *rapid.Generator[string]
	any = func(depth int) *rapid.Generator[string] {
		if depth == 0 {
			return literal
		}
		return rapid.Custom(func(t *rapid.T) string {
			x, y := any(depth-1).Draw(t, "x"), any(depth-1).Draw(t, "y")
			form := rapid.SampledFrom([]string{"%s + %s", "%s-%s", "%s * %s", "%s/%s", "(%s) - (%s)", "(%s)*(%s)", "(%s)/(%s)", "-%s + %s", "%s*-%s"}).Draw(t, "form")
			return fmt.Sprintf(form, x, y)
		})
	}
	return any(3)
}

// The Go language reads the same arithmetic by the same precedence, with exact constants.
func TestArithmeticIsThatOfGo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := expressions().Draw(t, "text")
		tree, err := parser.ParseExpr(text)
		if err != nil {
			t.Skip("Go reads a -- in it as one sign")
		}
		want, ok := constantOf(tree)
		a, err := notation.ReadAnswer(text, notation.Units{}, notation.Force)
		if !ok {
			if err == nil {
				t.Fatalf("%s divides by nought, and reads as %s", text, a.Value)
			}
			return
		}
		if err != nil || !a.Value.Equal(want) {
			t.Fatalf("%s = %s, not %s (%v)", text, a.Value, want, err)
		}
	})
}

// constantOf evaluates x by the standard library's constants, unless it divides by nought.
func constantOf(x ast.Expr) (exact.Num, bool) {
	v, ok := evaluate(x)
	if !ok {
		return exact.Num{}, false
	}
	r, isRat := new(big.Rat).SetString(constant.ToFloat(v).ExactString())
	return exact.FromRat(r), isRat
}

func evaluate(x ast.Expr) (constant.Value, bool) {
	switch x := x.(type) {
	case *ast.BasicLit:
		return constant.MakeFromLiteral(x.Value, token.FLOAT, 0), true
	case *ast.ParenExpr:
		return evaluate(x.X)
	case *ast.UnaryExpr:
		v, ok := evaluate(x.X)
		return constant.UnaryOp(x.Op, v, 0), ok
	case *ast.BinaryExpr:
		a, ok := evaluate(x.X)
		b, ok2 := evaluate(x.Y)
		if !ok || !ok2 || x.Op == token.QUO && constant.Sign(b) == 0 {
			return constant.MakeInt64(0), false
		}
		return constant.BinaryOp(constant.ToFloat(a), x.Op, constant.ToFloat(b)), true
	}
	return constant.MakeUnknown(), false
}
