package main

import (
	"context"
	"errors"
	"fmt"
	"net"
	"net/http"
	"os"
	"os/signal"
	"syscall"
	"time"

	"github.com/spf13/cobra"

	"unpin/tutor/host"
)

// serve serves until a signal; a second one ends it at once.
func (o hosting) serve(cmd *cobra.Command, h *host.Host) error {
	return unwatched(func() error {
		ctx, stop := signal.NotifyContext(cmd.Context(), os.Interrupt, syscall.SIGTERM)
		defer stop()
		context.AfterFunc(ctx, stop)
		at, err := o.listens(ctx, cmd)
		if err != nil {
			return fmt.Errorf("unpin: %s cannot be served at: %w", o.listen, err)
		}
		watched, err := o.watched(ctx, cmd, h)
		if err != nil {
			return errors.Join(fmt.Errorf("unpin: %s cannot be served at: %w", o.health, err), at.Close())
		}
		defer watched()
		_, port, _ := net.SplitHostPort(at.Addr().String())
		if o.log != "json" { // which has no other lines; the one on serving tells both
			fmt.Fprintf(cmd.ErrOrStderr(), "Learners type: ssh -p %s class@ADDRESS, with the address of this computer.\nTheir first visit shows the key %s\n", port, h.Fingerprint())
		}
		if err := h.Serve(ctx, at); err != nil {
			return fmt.Errorf("unpin: %w", err)
		}
		return nil
	})
}

// handover is how long a host waits for an earlier one to leave its address.
const handover = 15 * time.Second

// listens listens at the address; while an earlier host still has it, as at an upgrade, it is waited for.
func (o hosting) listens(ctx context.Context, cmd *cobra.Command) (net.Listener, error) {
	for late, told := time.Now().Add(handover), false; ; {
		at, err := net.Listen("tcp", o.listen)
		if !errors.Is(err, syscall.EADDRINUSE) || time.Now().After(late) || ctx.Err() != nil {
			return at, err
		}
		if !told {
			told = true
			o.logger(cmd.ErrOrStderr()).Info("the address is in use: waiting for an earlier host to leave", "address", o.listen, "for", handover.String())
		}
		time.Sleep(100 * time.Millisecond)
	}
}

// watched answers who asks how the host is, if that is wanted, until the function is called that it returns. There is no password, so
// only this computer may ask.
func (o hosting) watched(ctx context.Context, cmd *cobra.Command, h *host.Host) (stop func(), err error) {
	if o.health == "" {
		return func() {}, nil
	}
	at, err := net.Listen("tcp", o.health)
	if err != nil {
		return nil, err
	}
	if tcp, _ := at.Addr().(*net.TCPAddr); tcp == nil || !tcp.IP.IsLoopback() {
		return nil, errors.Join(errors.New("figures are told to this computer only: name 127.0.0.1 or [::1], and a port"), at.Close())
	}
	server := &http.Server{Handler: h.Watch(), ReadHeaderTimeout: 5 * time.Second, BaseContext: func(net.Listener) context.Context { return ctx }}
	o.logger(cmd.ErrOrStderr()).Info("tells how it is", "address", at.Addr().String())
	go server.Serve(at)
	return func() { server.Close() }, nil
}
