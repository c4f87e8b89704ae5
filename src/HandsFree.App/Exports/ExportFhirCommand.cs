using System.CommandLine;
using HandsFree.App.Commands;

namespace HandsFree.App.Exports;

/// <summary>"handsfree export fhir": the record as transactions of FHIR R4, into a file or to a server.</summary>
internal static class ExportFhirCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string?> file = new("--out") { Description = "The file to write, .json; must not be there yet. A long record becomes several files: FILE-0001.json and so on", HelpName = "FILE" };
        Option<string?> to = new("--to") { Description = "The base of the FHIR R4 server to send it to, such as https://server.example/fhir; what it has is read back, and the next time it goes on from there", HelpName = "URL" };
        Option<string?> token = new("--token-file") { Description = "With --to: a file with a bearer token, which only this user may read", HelpName = "FILE" };
        Option<string?> certificate = new("--certificate") { Description = "With --to: the certificate of the authority that vouches for the server, where this machine does not know it", HelpName = "FILE" };
        Option<long?> since = new("--since") { Description = "The number of the last entry that the receiver has (default: with --to what the journal knows, else 0, the whole record)", HelpName = "N" };
        Option<bool> newPatients = new("--new-patients")
        {
            Description = "Brings the residents along as Patients, made at the receiver where it has none with the identifier; else it must know them, and refuses a bundle in which it does not",
        };
        ExportOptions options = new();
        Command command = new("fhir", "Transactions of FHIR R4: Observations, reports as Communications, and the Provenance of each; sent twice they arrive once")
        {
            file, to, token, certificate, since, newPatients,
        };
        return host.Runs(options.AddTo(command), (parsed, services) => (parsed.GetValue(file), parsed.GetValue(to), parsed.GetValue(since)) switch
        {
            (_, _, < 0) => host.Refuse($"--since is {parsed.GetValue(since)}; it is the number of an entry, or 0"),
            (null, null, _) or ({ }, { }, _) => host.Refuse("export fhir wants one of --out FILE and --to URL"),
            ({ } path, null, var after) => ExportDesk.With(services, host, parsed.GetValue(options.Because)!, desk =>
                desk.Fhir(path, parsed.GetValue(options.Unit), after ?? 0, parsed.GetValue(newPatients))),
            (null, { } address, var after) => ExportDesk.With(services, host, parsed.GetValue(options.Because)!, desk =>
                new Sending(desk, host).Run(new(address, parsed.GetValue(token), parsed.GetValue(certificate), parsed.GetValue(options.Unit), after, parsed.GetValue(newPatients)))),
        });
    }
}
