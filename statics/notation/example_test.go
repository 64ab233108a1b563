package notation_test

import (
	"fmt"

	"unpin/statics/exact"
	"unpin/statics/notation"
)

func ExampleReadAnswer() {
	units, _ := notation.ParseUnits("kN m")
	a, _ := notation.ReadAnswer("12000 N down", units, notation.Force)
	fmt.Println(a.Value, a.Sense)
	a, _ = notation.ReadAnswer("1/2(8)(4,5)", units, notation.Force)
	fmt.Println(a.Value, a.Expression)
	// Output:
	// 12 down
	// 18 true
}

func ExampleReadError_Caret() {
	units, _ := notation.ParseUnits("kN m")
	text := "6 kN*2.4 + 15 7.2"
	_, err := notation.ReadAnswer(text, units, notation.Moment)
	fmt.Println(err)
	fmt.Println(err.(*notation.ReadError).Caret(text))
	// Output:
	// two numbers side by side do not multiply: write 15*7.2, or 157.2 if it is one number
	// 6 kN*2.4 + 15 7.2
	//            ^^^^^^
}

func ExampleReadNumber() {
	units, _ := notation.ParseUnits("kip ft")
	given := map[string]exact.Num{"h": exact.Int(9)}
	n, _ := notation.ReadNumber("2h + 6 in", given, units, notation.Length)
	fmt.Println(notation.Value(n, notation.Length, units, 3))
	// Output: 18.5 ft
}

func ExampleReadSum() {
	units, _ := notation.ParseUnits("kN m")
	isForce := func(name string) bool { return notation.NameMatches(name, "Cy") }
	s, _ := notation.ReadSum("6*2.4 + 15(7.2) - C_y*7.2 = 0", units, isForce)
	for _, t := range s.Left {
		fmt.Printf("%s %q\n", t.Value, t.Force)
	}
	// Output:
	// 72/5 ""
	// 108 ""
	// -36/5 "C_y"
}

func ExampleValue() {
	letters, _ := notation.ParseUnits("P L")
	quarter := exact.MustParse("1/4")
	fmt.Println(notation.Value(quarter, notation.Moment, letters, 3))
	fmt.Println(notation.Value(exact.MustParse("-5/2"), notation.Force, letters, 3))
	// Output:
	// PL/4
	// -5/2 P
}
