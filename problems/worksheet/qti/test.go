package qti

import "strconv"

// A kind of document, which has a schema.
type kind int

const (
	asItem kind = iota
	asTest
	asManifest
)

// schemas are the namespace of each kind of document, and where its schema is published.
var schemas = [...][3][2]string{
	V21: {
		asItem:     {"http://www.imsglobal.org/xsd/imsqti_v2p1", "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd"},
		asTest:     {"http://www.imsglobal.org/xsd/imsqti_v2p1", "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd"},
		asManifest: {"http://www.imsglobal.org/xsd/imscp_v1p1", "http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd"},
	},
	V30: {
		asItem:     {"http://www.imsglobal.org/xsd/imsqtiasi_v3p0", "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"},
		asTest:     {"http://www.imsglobal.org/xsd/imsqtiasi_v3p0", "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"},
		asManifest: {"http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1", "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd"},
	},
}

// namespaces are those of a document.
func (v Version) namespaces(k kind) []attribute {
	space, schema := schemas[v][k][0], schemas[v][k][1]
	return []attribute{at("xmlns", space), at("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance"), at("xsi:schemaLocation", space+" "+schema)}
}

// test is the paper: a section for each place, and the points added up.
func (v Version) test(t Test, sections [][]*Item) *element {
	part := el("testPart", at("identifier", "part"), at("navigationMode", "nonlinear"), at("submissionMode", "individual"))
	for n, all := range sections {
		part.add(section("section-"+strconv.Itoa(n+1), oneLine(t.Sections[n]), all))
	}
	return el("assessmentTest", v.namespaces(asTest), at("identifier", identifier(t.ID)), at("title", oneLine(t.Title)), at("toolName", "unpin"),
		el("outcomeDeclaration", at("identifier", score), at("cardinality", "single"), at("baseType", "float"), el("defaultValue", el("value", "0"))),
		part, el("outcomeProcessing", set(score, el("sum", el("testVariables", at("variableIdentifier", score))))))
}

// section is one place of the paper; of several questions one is drawn.
func section(id, title string, all []*Item) *element {
	s := el("assessmentSection", at("identifier", id), at("title", title), at("visible", "true"))
	if len(all) > 1 {
		s.add(el("selection", at("select", "1")))
	}
	for _, one := range all {
		s.add(el("assessmentItemRef", at("identifier", one.id), at("href", one.document())))
	}
	return s
}

// manifest lists what is in the package.
func (v Version) manifest(sections [][]*Item) *element {
	schema, version, suffix := "QTIv2.1 Package", "1.0.0", "xmlv2p1"
	if v == V30 {
		schema, version, suffix = "QTI Package", "3.0.0", "xmlv3p0"
	}
	test := el("resource", at("identifier", "test"), at("type", "imsqti_test_"+suffix), at("href", "test.xml"), el("file", at("href", "test.xml")))
	all := el("resources", test)
	for _, questions := range sections {
		for _, one := range questions {
			test.add(el("dependency", at("identifierref", "item-"+one.id)))
			all.add(el("resource", at("identifier", "item-"+one.id), at("type", "imsqti_item_"+suffix), at("href", one.document()),
				el("file", at("href", one.document())), el("file", at("href", one.picture()))))
		}
	}
	return el("manifest", v.namespaces(asManifest), at("identifier", "manifest"),
		el("metadata", el("schema", schema), el("schemaversion", version)), el("organizations"), all)
}
