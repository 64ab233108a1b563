package problems

import (
	"bytes"
	"encoding/json"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"go.yaml.in/yaml/v4"
)

// compiled is the schema as an independent validator has it.
func compiled(t *testing.T) *jsonschema.Schema {
	t.Helper()
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("unpin.schema.json", document); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("unpin.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// instance is a problem file as a validator takes it; ok is false where it is no YAML.
func instance(data []byte) (value any, ok bool) {
	var read any
	src, _ := newSource(data)
	if yaml.Unmarshal([]byte(src.text), &read) != nil {
		return nil, false
	}
	text, err := json.Marshal(read)
	if err != nil {
		return nil, false
	}
	value, err = jsonschema.UnmarshalJSON(bytes.NewReader(text))
	return value, err == nil
}

// Every file that is read without fault keeps to the schema.
func TestSchemaTakesGoodFiles(t *testing.T) {
	t.Parallel()
	s := compiled(t)
	for path := range filesRead(t) {
		value, ok := instance(readFile(t, path))
		if !ok {
			t.Errorf("%s is no YAML", path)
		} else if err := s.Validate(value); err != nil {
			t.Errorf("%s: %v", path, err)
		}
	}
}

// Of the broken files those that a schema can know are refused; which they are, with the place, stands in testdata/schema.txt.
func TestSchemaRefusesBrokenFiles(t *testing.T) {
	s := compiled(t)
	var text strings.Builder
	refused := 0
	for _, path := range brokenFiles(t) {
		value, ok := instance(readFile(t, path))
		if !ok {
			continue
		}
		err := s.Validate(value)
		if err == nil {
			fmt.Fprintf(&text, "%s: passes\n", filepath.Base(path))
			continue
		}
		refused++
		fmt.Fprintf(&text, "%s: refused at %s\n", filepath.Base(path), places(err))
	}
	if refused < 30 {
		t.Errorf("only %d broken files are refused", refused)
	}
	compare(t, "testdata/schema.txt", text.String())
}

// places are where a value does not keep to the schema, the deepest that the validator tells.
func places(err error) string {
	e, ok := err.(*jsonschema.ValidationError)
	if !ok {
		return err.Error()
	}
	deepest := map[string]bool{}
	var list []string
	var walk func(e *jsonschema.ValidationError)
	walk = func(e *jsonschema.ValidationError) {
		for _, cause := range e.Causes {
			walk(cause)
		}
		if at := "/" + strings.Join(e.InstanceLocation, "/"); len(e.Causes) == 0 && !deepest[at] {
			deepest[at] = true
			list = append(list, at)
		}
	}
	walk(e)
	slices.Sort(list)
	return strings.Join(list[:min(3, len(list))], " ")
}

// Every field of the format is in the schema, each with a description, and nothing else is.
func TestSchemaDescribesFields(t *testing.T) {
	t.Parallel()
	var document any
	if err := json.Unmarshal(Schema(), &document); err != nil {
		t.Fatal(err)
	}
	described := map[string]bool{}
	var walk func(value any)
	walk = func(value any) {
		switch v := value.(type) {
		case []any:
			for _, item := range v {
				walk(item)
			}
		case map[string]any:
			properties, _ := v["properties"].(map[string]any)
			for name, property := range properties {
				text, _ := property.(map[string]any)["description"].(string)
				if described[name] = true; len(text) < 10 {
					t.Errorf("%s has the description %q", name, text)
				}
			}
			for _, inner := range v {
				walk(inner)
			}
		}
	}
	walk(document)
	for _, name := range FieldNames() {
		if !described[name] {
			t.Errorf("%s is not in the schema", name)
		}
		delete(described, name)
	}
	if delete(described, whereWord); len(described) > 0 {
		t.Errorf("the schema has fields that no file has: %v", described)
	}
}
