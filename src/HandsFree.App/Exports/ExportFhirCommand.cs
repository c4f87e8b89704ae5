using System.CommandLine;
using HandsFree.App.Commands;

namespace HandsFree.App.Exports;

/// <summary>"handsfree export fhir": the record as transactions of FHIR R4.</summary>
internal static class ExportFhirCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Option<string> file = new("--out") { Description = "The file to write, .json; must not be there yet. A long record becomes several files: FILE-0001.json and so on", HelpName = "FILE", Required = true };
        Option<long> since = new("--since") { Description = "The number of the last entry that the receiver has, as the last export said it (default: 0, the whole record)", HelpName = "N" };
        Option<bool> newPatients = new("--new-patients")
        {
            Description = "Brings the residents along as Patients, made at the receiver where it has none with the identifier; else it must know them, and refuses a bundle in which it does not",
        };
        ExportOptions options = new();
        Command command = new("fhir", "Transactions of FHIR R4: Observations, reports as Communications, and the Provenance of each; sent twice they arrive once") { file, since, newPatients };
        return host.Runs(options.AddTo(command), (parsed, services) => parsed.GetValue(since) < 0
            ? host.Refuse($"--since is {parsed.GetValue(since)}; it is the number of an entry, or 0")
            : ExportDesk.With(services, host, parsed.GetValue(options.Because)!, desk =>
                desk.Fhir(parsed.GetValue(file)!, parsed.GetValue(options.Unit), parsed.GetValue(since), parsed.GetValue(newPatients))));
    }
}
