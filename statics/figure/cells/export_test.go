package cells

// ASCIIText is asciiText for the tests outside the package.
var ASCIIText = asciiText
