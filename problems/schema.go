package problems

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"

	"unpin/statics/notation"
)

// A schema is a JSON Schema, or a part of one.
type schema map[string]any

// Schema is the JSON Schema (2020-12) of problem files, for editors: made of the tables of fields by which files are read, so that
// names, closed lists and descriptions are theirs. It knows shapes and words; whether a joint exists, a number can be read or
// a load lies on its member is known to Read alone.
func Schema() []byte {
	whole := problemFields.schema(schemaOfFile())
	whole["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	whole["title"] = "A problem of unpin"
	whole["description"] = "A plane frame with its supports and loads, and what is asked of the student."
	var out bytes.Buffer
	w := json.NewEncoder(&out)
	w.SetEscapeHTML(false)
	w.SetIndent("", " ")
	if err := w.Encode(whole); err != nil {
		panic("internal error: the schema is no JSON") // a test makes it
	}
	return out.Bytes()
}

// schema is an object with these fields and no others. Inner schemas say what the shapes alone do not.
func (fs fields) schema(inner map[string]schema) schema {
	properties, need := map[string]any{}, []string{}
	for _, f := range fs {
		properties[f.name] = f.schema(inner[f.name])
		if f.need {
			need = append(need, f.name)
		}
	}
	s := schema{"type": "object", "properties": properties, "additionalProperties": false}
	if len(need) > 0 {
		s["required"] = need
	}
	return s
}

// schema is what the value of a field may be, with its description. The inner schema has the value's form where the table has
// only its shape.
func (f field) schema(inner schema) schema {
	s := schema{}
	words := slices.Concat(f.words, f.same)
	switch {
	case inner != nil:
		for name, value := range inner {
			s[name] = value
		}
	case f.of != nil:
		s = f.of.schema(nil)
	case words != nil && slices.Contains(f.shapes, list):
		s = listOf(schema{"enum": words})
		s["uniqueItems"] = true
	case words != nil:
		s["enum"] = words
	default:
		s["anyOf"] = shapeSchemas(f.shapes)
	}
	s["description"] = f.doc + " Example: " + f.name + ": " + f.like
	return s
}

// shapeSchemas are the forms of the shapes.
func shapeSchemas(shapes []shape) []schema {
	var all []schema
	for _, s := range shapes {
		switch s {
		case scalar:
			all = append(all, number)
		case list:
			all = append(all, listOf(number))
		case table:
			all = append(all, schema{"type": "object"})
		}
	}
	return all
}

// The forms that values have. A number may be a text: arithmetic with names, or a number with its unit.
var (
	number = schema{"type": []string{"number", "string"}}
	word   = schema{"type": "string", "minLength": 1}
	pair   = schema{"type": "array", "items": number, "minItems": 2, "maxItems": 2}
	along  = schema{"anyOf": []schema{{"enum": directionWords}, {"type": "string", "pattern": directionPattern}, pair}}
)

func listOf(s schema) schema { return schema{"type": "array", "items": s} }

// byName is an object whose names have a pattern and whose values a form.
func byName(pattern string, value schema) schema {
	return schema{"type": "object", "propertyNames": schema{"pattern": pattern}, "additionalProperties": value}
}

// directionWords are the directions that are words; besides, a direction is an angle, two numbers, or, of a slot or sleeve, a member.
var directionWords = []string{"up", "down", "left", "right", "along", "normal"}

const directionPattern = `^(.*(deg|°)|[A-Z].*)$`

const givenPattern = `^\p{L}[\p{L}\p{N}_]*$`

// schemaOfFile has the forms of the fields of a file.
func schemaOfFile() map[string]schema {
	// which pieces are hinged at each joint: a word for all of them or a list of members, walks and lists
	pinTable := byName(jointPattern, schema{"anyOf": []schema{word, listOf(schema{"anyOf": []schema{word, listOf(word)}})}})
	slideForms := map[string]schema{"free": listOf(word), "along": along}
	whereSchema := schema{"anyOf": []schema{word, listOf(word)}, "description": "What the numbers of variants keep to. Example: where: ['h < w']"}
	variationSchema := schema{"anyOf": []schema{{"type": "string", "pattern": `\.\..* by `}, {"type": "array", "items": number, "minItems": 2, "uniqueItems": true}}}
	return map[string]schema{
		"title":    {"type": "string", "minLength": 1, "maxLength": maxTitle},
		"text":     {"type": "string", "minLength": 1, "maxLength": maxText},
		"units":    unitsSchema(),
		"given":    byName(givenPattern, number),
		"joints":   {"type": "object", "propertyNames": schema{"pattern": jointPattern}, "additionalProperties": pair, "minProperties": 1, "maxProperties": maxJoints},
		"members":  {"type": "array", "items": word, "minItems": 1, "maxItems": maxMembers},
		"pins":     {"anyOf": []schema{listOf(schema{"anyOf": []schema{word, pinTable}}), pinTable}},
		"slots":    byName(jointPattern, slideFields.schema(slideForms)),
		"sleeves":  byName(jointPattern, slideFields.schema(slideForms)),
		"supports": byName(jointPattern, supportSchema()),
		"loads":    {"type": "array", "items": schema{"anyOf": loadSchemas()}, "maxItems": maxLoads},
		"vary":     {"type": "object", "properties": map[string]any{whereWord: whereSchema}, "additionalProperties": variationSchema, "propertyNames": schema{"pattern": givenPattern}},
		"grade":    {"type": "integer", "minimum": 1, "maximum": 6},
		"ask":      askFields.schema(map[string]schema{"figures": {"type": "integer", "minimum": notation.LeastFigures, "maximum": notation.MostFigures}}),
	}
}

// unitsSchema is a unit of force and one of length, or the letters; a comma between them is read too.
func unitsSchema() schema {
	pairs := notation.UnitPairs()
	return schema{"anyOf": []schema{{"enum": pairs}, {"type": "string", "pattern": `^\s*(` + strings.ReplaceAll(strings.Join(pairs, "|"), " ", `[\s,]+`) + `)\s*$`}}}
}

// supportSchema is the form of a support: a word, or one kind with what belongs to it.
func supportSchema() schema {
	all := []schema{{"enum": supportWords}}
	forms := map[string]schema{"pin": word, "fixed": word, "roller": along, "guide": along, "on": word}
	for _, kind := range supportKinds {
		own := fields{}
		for _, f := range supportFields {
			if f.name == kind || f.name == "on" && !slices.Contains(supportWords, kind) {
				f.need = f.name == kind
				own = append(own, f)
			}
		}
		all = append(all, own.schema(forms))
	}
	return schema{"anyOf": all}
}

// loadSchemas are the forms of the kinds of load.
func loadSchemas() []schema {
	var all []schema
	for _, kind := range loadKinds {
		forms := map[string]schema{"ramp": pair}
		switch kind {
		case "couple":
		case "pulley":
			forms["pulley"] = word
			forms["to"] = schema{"type": "array", "items": along, "minItems": 2, "maxItems": 2}
		default:
			forms["to"] = along
		}
		if _, spread := loadFields[kind].find("per"); spread {
			forms["on"] = schema{"anyOf": []schema{word, listOf(word)}}
		} else {
			forms["on"], forms["joint"] = word, word
		}
		s := loadFields[kind].schema(forms)
		if _, anywhere := loadFields[kind].find("joint"); anywhere {
			s["anyOf"] = []schema{{"required": []string{"joint"}}, {"required": []string{"on", "at"}}}
		}
		s["title"] = kindWords[kind]
		all = append(all, s)
	}
	return all
}
