package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"log/slog"
	"net"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"unpin/problems"
	"unpin/problems/variant"
	"unpin/statics/wording"
	"unpin/tutor/host"
	"unpin/tutor/host/backup"
	"unpin/tutor/marking"
	"unpin/tutor/record/database"
	"unpin/tutor/screen"
)

// newHost serves a class.
func newHost() *cobra.Command {
	var h hosting
	cmd := &cobra.Command{
		Use:   "host FOLDER",
		Short: "Serve lessons to a class over SSH.",
		Long: "Serve lessons to a class over SSH: nobody has to install anything, and what each learner does is kept here. FOLDER holds\n" +
			"roster.csv, with a line for each learner; if wanted problem files, which are offered besides the library, and the file\n" +
			"instructors, with the public keys of those who see the board of who does what. Beside them unpin keeps class.db, what the\n" +
			"learners do, and host-key, by which their computers know this one again.\n\n" +
			"First make the personal codes, print and hand them out: unpin host FOLDER --codes codes.csv. Then serve: a learner types\n" +
			"ssh -p 2222 class@ADDRESS, and the code, once for each key. ctrl+c stops; whoever is there is told, and nothing is lost.",
		Args: func(cmd *cobra.Command, args []string) error {
			if h.demo != (len(args) == 0) || len(args) > 1 {
				return usageFault(cmd, "host takes one folder, or --demo")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if h.demo {
				return h.show(cmd)
			}
			return h.run(cmd, args[0])
		},
	}
	cmd.Flags().StringVar(&h.listen, "listen", ":2222", "the `ADDRESS` to serve at")
	cmd.Flags().StringVar(&h.store, "store", "", "keep what learners do in the PostgreSQL at this `ADDRESS`, as postgres://USER@HOST/NAME, for several hosts; if absent in class.db")
	cmd.Flags().StringVar(&h.codes, "codes", "", "make a code for each learner who has none, list them in `FILE` (CSV), and end")
	cmd.Flags().BoolVar(&h.anew, "anew", false, "with --codes: a new code for everybody; the earlier ones are void")
	cmd.AddCommand(newBackup(), newRestore(), newVerify())
	cmd.Flags().Var(oneOf(&h.log, "text", []string{"text", "json"}), "log", "the `FORMAT` of what is told on standard error: text or json, a line each")
	cmd.Flags().StringVar(&h.health, "health", "", "answer at this `ADDRESS` of this computer, as 127.0.0.1:9222, how the host is (/health) and figures of use (/metrics, OpenMetrics)")
	cmd.Flags().BoolVar(&h.demo, "demo", false, "serve three invented learners from this computer to itself, with nothing prepared and nothing kept")
	return cmd
}

// hosting is what is asked of host.
type hosting struct {
	listen, store, codes, log, health string
	anew, demo                        bool
}

// run serves a folder, or makes its codes.
func (o hosting) run(cmd *cobra.Command, folder string) (err error) {
	if o.anew && o.codes == "" {
		return usageFault(cmd, "--anew has no effect without --codes")
	}
	if err := notOver(cmd, o.codes, []string{filepath.Join(folder, "roster.csv")}); err != nil {
		return err
	}
	roster, err := readRoster(cmd, filepath.Join(folder, "roster.csv"))
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%w; a class needs one: a first line id,name, then a line for each learner", err)
	}
	if err != nil {
		return err
	}
	h, data, err := o.host(cmd, folder, roster)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, data.Close()) }()
	if o.codes != "" {
		return o.makeCodes(h, roster, cmd)
	}
	return o.serve(cmd, h)
}

// host opens what is kept of a class.
func (o hosting) host(cmd *cobra.Command, folder string, roster *variant.Roster) (*host.Host, *database.DB, error) {
	at := o.store
	if at == "" {
		at = filepath.Join(folder, backup.DatabaseName)
	}
	data, err := openStore(cmd, at)
	if err != nil {
		return nil, nil, err
	}
	sets, err := ownSets(cmd, folder)
	if err != nil {
		return nil, nil, errors.Join(err, data.Close())
	}
	keys, err := instructors(filepath.Join(folder, "instructors"))
	if err != nil {
		return nil, nil, errors.Join(err, data.Close())
	}
	options := host.Options{
		Title: filepath.Base(absolute(folder)), Students: roster.Students, Keys: keys, Problems: ownProblems(cmd, folder), Sets: sets, Data: data,
		Key: filepath.Join(folder, "host-key"), Name: hostName(o.listen), Log: o.logger(cmd.ErrOrStderr()),
	}
	h, err := host.New(options)
	if err != nil {
		return nil, nil, errors.Join(fmt.Errorf("unpin: %w", err), data.Close())
	}
	return h, data, nil
}

// logger writes what happens, a line each.
func (o hosting) logger(to io.Writer) *slog.Logger {
	var handler slog.Handler = slog.NewTextHandler(to, nil)
	if o.log == "json" {
		handler = slog.NewJSONHandler(to, nil)
	}
	if o.store != "" {
		return slog.New(handler).With("host", hostName(o.listen))
	}
	return slog.New(handler)
}

// openStore opens what is kept of a class.
func openStore(cmd *cobra.Command, at string) (*database.DB, error) {
	data, err := database.Open(cmd.Context(), at)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s: %w", databaseName(at), err)
	}
	return data, nil
}

// hostName is how other hosts know this one: the name of the machine, and the port where it is served.
func hostName(listen string) string {
	name, err := os.Hostname()
	if err != nil {
		name = "host"
	}
	if _, port, err := net.SplitHostPort(listen); err == nil && port != "0" {
		return name + ":" + port
	}
	return fmt.Sprint(name, " ", os.Getpid())
}

// instructors are the keys in a file, none where there is no such file.
func instructors(path string) ([]string, error) {
	text, err := os.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", path, plainReason(err))
	}
	return host.ReadKeys(path, text)
}

// databaseName names a database without the password that its address may hold.
func databaseName(address string) string {
	if _, err := os.Stat(address); errors.Is(err, fs.ErrNotExist) && len(address) > 8 && address[:8] == "postgres" {
		return "the PostgreSQL of --store"
	}
	return address
}

// absolute is a path from the root, or as it is where that cannot be told.
func absolute(path string) string {
	if whole, err := filepath.Abs(path); err == nil {
		return whole
	}
	return path
}

// ownProblems are those of a folder; files that are none are told.
func ownProblems(cmd *cobra.Command, folder string) []*problems.Problem {
	var all []*problems.Problem
	for _, e := range screen.Folder(folder) {
		if e.Problem == nil {
			fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s is not offered: %s\n", e.Name, e.Fault)
			continue
		}
		all = append(all, e.Problem)
	}
	return all
}

// ownSets are the sets of a folder, each with its scheme; files that are none for some fault are told.
func ownSets(cmd *cobra.Command, folder string) ([]host.Set, error) {
	files, err := os.ReadDir(folder)
	if err != nil {
		return nil, fmt.Errorf("unpin: %s cannot be read: %w", folder, plainReason(err))
	}
	var all []host.Set
	places := map[string]string{}
	for _, f := range files {
		path := filepath.Join(folder, f.Name())
		if ending := filepath.Ext(path); ending != ".yaml" && ending != ".yml" || !problems.IsSet(path) {
			continue
		}
		m, err := meaningOf(path, nil)
		scheme := (*marking.Scheme)(nil)
		if err == nil {
			scheme, err = m.scheme(path)
		}
		if err != nil {
			fmt.Fprintf(cmd.ErrOrStderr(), "warning: %s is not offered: %s\n", f.Name(), err)
			continue
		}
		m.warn(cmd)
		if other, twice := places[m.set.ID]; twice {
			return nil, fmt.Errorf("unpin: %s and %s are both called %s: give one of them another id", other, f.Name(), m.set.ID)
		}
		places[m.set.ID] = f.Name()
		all = append(all, host.Set{Set: m.set, Scheme: scheme})
	}
	return all, nil
}

// makeCodes makes codes and lists them.
func (o hosting) makeCodes(h *host.Host, roster *variant.Roster, cmd *cobra.Command) error {
	made, codes, err := h.NewCodes(o.anew)
	if err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	if len(made) == 0 {
		return fmt.Errorf("unpin: everybody has a code already, and codes are kept as digests only: --anew makes new ones")
	}
	names := map[string]string{}
	for _, s := range roster.Students {
		names[s.ID] = s.Name
	}
	rows := [][]string{{"id", "name", "code"}}
	for i, id := range made {
		rows = append(rows, []string{id, names[id], codes[i]})
	}
	if err := deliverPrivate(variant.WriteCSV(rows), o.codes, cmd.OutOrStdout()); err != nil {
		return err
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "Made %s. They cannot be read again: hand them out, then remove the list.\n", wording.Counted(len(made), "code"))
	return nil
}

// show serves invented learners.
func (o hosting) show(cmd *cobra.Command) (err error) {
	if o.codes != "" || o.store != "" || o.anew || cmd.Flags().Changed("listen") {
		return usageFault(cmd, "--demo goes alone")
	}
	folder, err := os.MkdirTemp("", "unpin-host-")
	if err != nil {
		return fmt.Errorf("unpin: %w", plainReason(err))
	}
	defer func() { err = errors.Join(err, os.RemoveAll(folder)) }()
	roster := &variant.Roster{Students: []variant.Student{{ID: "amber"}, {ID: "birch"}, {ID: "cedar"}}}
	h, data, err := o.host(cmd, folder, roster)
	if err != nil {
		return err
	}
	defer data.Close()
	made, codes, err := h.NewCodes(true)
	if err != nil {
		return fmt.Errorf("unpin: %w", err)
	}
	for i, id := range made {
		fmt.Fprintf(cmd.OutOrStdout(), "%s has the code %s\n", id, codes[i])
	}
	o.listen = "127.0.0.1:2222"
	fmt.Fprintln(cmd.OutOrStdout(), "In another window: ssh -p 2222 class@127.0.0.1. ctrl+c stops, and nothing is kept.")
	return o.serve(cmd, h)
}
