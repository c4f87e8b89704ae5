using System.Globalization;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using HandsFree.App.Commands;
using HandsFree.Exchange.Fhir.Outgoing;
using HandsFree.Exchange.Fhir.Sending;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Exports;

/// <summary>Sends a home's record to a FHIR server, bundle after bundle; after each the journal knows how far the receiver has it.</summary>
/// <param name="desk">The home's record.</param>
/// <param name="host">Says what was done or what is wrong.</param>
internal sealed class Sending(ExportDesk desk, CommandHost host)
{
    private const int MostToken = 16 * 1024;

    /// <summary>Sends what the receiver does not have yet.</summary>
    /// <param name="asked">Where to and with what.</param>
    public int Run(SendingAsked asked)
    {
        (Uri? server, string? wrong) = Connection.Address(asked.To);
        (IReadOnlySet<string>? residents, string? noUnit) = desk.Unit(asked.Unit);
        (string? token, string? noToken) = Token(asked.TokenFile);
        (X509Certificate2? authority, string? noAuthority) = Authority(asked.CertificateFile);
        using X509Certificate2? certificate = authority;
        if ((wrong ?? noUnit ?? noToken ?? noAuthority) is { } line)
        {
            return host.Refuse(line);
        }

        if (desk.Home.Settings.Exchange is null && !asked.NewPatients)
        {
            return host.Refuse("home.json does not say under which system the receiver has the residents' ids (\"exchange\": { \"residents\": \"https://…\" }); ask whoever runs the receiver, or let it make new Patients with --new-patients");
        }

        string to = server!.ToString();
        long since = asked.Since ?? desk.Delivered(to, asked.Unit);
        desk.TakenOut($"FHIR R4{(asked.Unit is null ? "" : $", unit {asked.Unit}")}{(since > 0 ? $", after entry {since}" : "")}", to);
        using HttpClient http = Connection.Open(certificate);
        FhirSender sender = new(new FhirClient(http, server, token, host.Surroundings.Time, Pauses.Usual, said => host.Surroundings.Error.WriteLine($"handsfree: {said}")));
        return Send(sender, to, asked, since, residents);
    }

    private int Send(FhirSender sender, string to, SendingAsked asked, long since, IReadOnlySet<string>? residents)
    {
        (int resources, long through, int changed) = (0, since, 0);
        foreach (OutgoingBundle bundle in new FhirExport(desk.Home, desk.Entries, asked.NewPatients).Bundles(since, residents))
        {
            SendResult result = sender.Send(bundle).GetAwaiter().GetResult();
            if (result.Error is { } error)
            {
                return host.Refuse($"{error}; {Kept(through)}");
            }

            foreach (string line in result.ChangedThere)
            {
                host.Surroundings.Error.WriteLine($"handsfree: {line}");
            }

            (resources, through, changed) = (resources + bundle.Bundle.Entry.Count, bundle.Through, changed + result.ChangedThere.Count);
            try
            {
                desk.HasDelivered(to, asked.Unit, through);
            }
            catch (JournalWriteException unwritten)
            {
                return host.Refuse($"the receiver has everything up to entry {through}, and the journal could not be told ({unwritten.Message.ReplaceLineEndings(" ")}); run it again: what arrived is sent once more and arrives once");
            }
        }

        host.Surroundings.Out.WriteLine(resources == 0
            ? $"{to} has everything up to entry {through}; there is nothing to send."
            : string.Create(CultureInfo.InvariantCulture, $"{to} has everything up to entry {through}: {resources} resources sent and read back."));
        return changed == 0 ? ExitCodes.Done : ExitCodes.CheckFailed;
    }

    private static string Kept(long through) => through == 0
        ? "nothing is lost here; run it again, nothing arrives twice"
        : $"the receiver has everything up to entry {through}; run it again, it goes on there, and nothing arrives twice";

    private static (string? Token, string? Wrong) Token(string? path)
    {
        if (path is null)
        {
            return (null, null);
        }

        try
        {
            if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & (UnixFileMode.GroupRead | UnixFileMode.OtherRead)) != 0)
            {
                return (null, $"{path}: others may read the token; close it to them (chmod 600)");
            }

            string token = new FileInfo(path).Length > MostToken ? "" : File.ReadAllText(path).Trim();
            return token.Length > 0 && token.All(sign => sign is > ' ' and <= '~') ? (token, null) : (null, $"{path}: holds no token; write it there alone, on one line");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, $"{path}: the token can't be read ({e.Message.ReplaceLineEndings(" ")}); check the file and its rights");
        }
    }

    private static (X509Certificate2? Authority, string? Wrong) Authority(string? path)
    {
        try
        {
            return (path is null ? null : X509CertificateLoader.LoadCertificateFromFile(path), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or CryptographicException)
        {
            return (null, $"{path}: is no certificate that can be read ({e.Message.ReplaceLineEndings(" ")}); name one in PEM or DER");
        }
    }
}
