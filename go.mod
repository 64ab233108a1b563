module unpin

go 1.26

require github.com/shopspring/decimal v1.6.0

require (
	github.com/inconshreveable/mousetrap v1.1.0 // indirect
	github.com/rogpeppe/go-internal v1.16.0 // indirect
	github.com/spf13/cobra v1.10.2 // indirect
	github.com/spf13/pflag v1.0.9 // indirect
	golang.org/x/tools v0.30.0 // indirect
	gonum.org/v1/gonum v0.17.0 // indirect
)

require (
	github.com/goccy/go-yaml v1.19.2 // indirect
	pgregory.net/rapid v1.3.0
)
