package main

import (
	"fmt"
	"math/big"
	"os"
	"strconv"
	"strings"

	"go.yaml.in/yaml/v4"
)

// decimal is a number of a problem file as it is written, so that nothing of it is lost on the way to a fraction.
type decimal string

func (d *decimal) UnmarshalYAML(n *yaml.Node) error {
	*d = decimal(n.Value)
	return nil
}

func (d decimal) rat() *big.Rat {
	number, _, _ := strings.Cut(string(d), " ")
	r, ok := new(big.Rat).SetString(number)
	if !ok {
		panic("not a number: " + string(d))
	}
	return r
}

func (d decimal) float() float64 {
	f, _ := d.rat().Float64()
	return f
}

// problem is what these checks need of a problem file: the fields that their own frames use.
type problem struct {
	Joints   map[string][]decimal `yaml:"joints"`
	Members  []string             `yaml:"members"`
	Pins     map[string]any       `yaml:"pins"` // all, or the members hinged to the rest
	Supports map[string]any       `yaml:"supports"`
	Loads    []loadEntry          `yaml:"loads"`
}

// loadEntry is a load as it is written; exactly one of the first four says what it is.
type loadEntry struct {
	Point   decimal   `yaml:"point"`
	Couple  decimal   `yaml:"couple"`
	Uniform decimal   `yaml:"uniform"`
	Ramp    []decimal `yaml:"ramp"`
	To      any       `yaml:"to"`
	On      any       `yaml:"on"`
	At      decimal   `yaml:"at"`
	Joint   string    `yaml:"joint"`
	From    decimal   `yaml:"from"`
	Until   decimal   `yaml:"until"`
	Per     string    `yaml:"per"`
}

func readProblem(path string) (*problem, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	p := new(problem)
	if err := yaml.Unmarshal(text, p); err != nil {
		return nil, fmt.Errorf("%s: %w", path, err)
	}
	return p, nil
}

// direction reads one of up, down, left, right, 250deg, [3, -4], normal, along; a member gives the last two their meaning.
func direction(to any, m *member) (v vec, degrees float64, byAngle bool) {
	if list, ok := to.([]any); ok {
		return vec{number(list[0]), number(list[1])}.unit(), 0, false
	}
	switch word := fmt.Sprint(to); word {
	case "up":
		return vec{0, 1}, 0, false
	case "down":
		return vec{0, -1}, 0, false
	case "left":
		return vec{-1, 0}, 0, false
	case "right":
		return vec{1, 0}, 0, false
	case "along":
		return m.u, 0, false
	case "normal":
		return vec{m.u.y, -m.u.x}, 0, false
	default:
		degrees, err := strconv.ParseFloat(strings.TrimSuffix(word, "deg"), 64)
		if err != nil {
			panic("no direction: " + word)
		}
		return polar(degrees), degrees, true
	}
}

func number(v any) float64 {
	f, err := strconv.ParseFloat(fmt.Sprint(v), 64)
	if err != nil {
		panic(err)
	}
	return f
}

// names gives one name or a list of names as a list.
func names(v any) []string {
	switch v := v.(type) {
	case nil:
		return nil
	case []any:
		var all []string
		for _, s := range v {
			all = append(all, fmt.Sprint(s))
		}
		return all
	default:
		return []string{fmt.Sprint(v)}
	}
}
