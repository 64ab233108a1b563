module unpin

go 1.26

require (
	github.com/rogpeppe/go-internal v1.16.0
	github.com/shopspring/decimal v1.6.0
	github.com/spf13/cobra v1.10.2
	github.com/spf13/pflag v1.0.9
	golang.org/x/tools v0.30.0
)

require (
	github.com/inconshreveable/mousetrap v1.1.0 // indirect
	golang.org/x/sys v0.30.0 // indirect
)

require (
	github.com/goccy/go-yaml v1.19.2
	pgregory.net/rapid v1.3.0
)
