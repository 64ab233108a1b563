module unpin

go 1.26

require github.com/shopspring/decimal v1.6.0
