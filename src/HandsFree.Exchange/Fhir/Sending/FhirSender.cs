using System.Net;
using HandsFree.Exchange.Fhir.Outgoing;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>Sends a bundle, and makes sure that the receiver has it: a yes alone is not believed, everything is read back.</summary>
public sealed class FhirSender(FhirClient client)
{
    private const int MostLooks = 2;

    /// <summary>Sends it. Repeating is harmless.</summary>
    public async Task<SendResult> Send(OutgoingBundle outgoing)
    {
        for (int look = 1; ; look++)
        {
            (Bundle? bundle, IReadOnlyList<string> changed, string? wrong) = await AmendedThere.Look(client, outgoing).ConfigureAwait(false);
            if (bundle is null)
            {
                return new(wrong, []);
            }

            if (bundle.Entry.Count == 0)
            {
                return new(null, changed);
            }

            (ServerAnswer? answer, string? unreached) = await client.Post(bundle).ConfigureAwait(false);
            if (answer is { Status: HttpStatusCode.PreconditionFailed } && look < MostLooks)
            {
                continue; // somebody there was faster: look again
            }

            string? error = unreached ?? Refused(answer!) ?? await NotKept(bundle, (Bundle)answer!.Body!).ConfigureAwait(false);
            return new(error, error is null ? changed : []);
        }
    }

    private static string? Refused(ServerAnswer answer) => answer switch
    {
        { Status: HttpStatusCode.Unauthorized or HttpStatusCode.Forbidden } => $"the receiver refused the token, or nobody may write with it ({answer.Words}); ask whoever runs it for another",
        { Status: HttpStatusCode.OK, Body: Bundle { Type: Bundle.BundleType.TransactionResponse } } => null,
        { Status: HttpStatusCode.OK } => "the receiver answered with something else than what it did with a transaction; is the address the base of a FHIR R4 server?",
        _ => $"the receiver refused the bundle, so nothing of it is there ({answer.Words})",
    };

    /// <summary>Reads back all that was sent.</summary>
    private async Task<string?> NotKept(Bundle sent, Bundle said)
    {
        if (said.Entry.Count != sent.Entry.Count)
        {
            return $"the receiver says what became of {said.Entry.Count} of {sent.Entry.Count} resources; nothing of it counts as arrived";
        }

        string?[] places = [.. said.Entry.Select((e, i) => Place(e.Response, sent.Entry[i].Resource!.TypeName))];
        if (Array.FindIndex(places, p => p is null) is var without and >= 0)
        {
            return $"the receiver says \"{said.Entry[without].Response?.Status}\" of a {sent.Entry[without].Resource!.TypeName}, and not where it is; nothing of the bundle counts as arrived";
        }

        Bundle asked = new() { Type = Bundle.BundleType.Batch, Entry = [.. places.Select(p => new Bundle.EntryComponent { Request = new() { Method = Bundle.HTTPVerb.GET, Url = p } })] };
        (ServerAnswer? answer, string? unreached) = await client.Post(asked).ConfigureAwait(false);
        if (answer is not { Status: HttpStatusCode.OK, Body: Bundle kept } || kept.Entry.Count != sent.Entry.Count)
        {
            return unreached ?? $"the receiver said yes, and does not let what it has be read back ({answer!.Words})";
        }

        int[] missing = [.. Enumerable.Range(0, sent.Entry.Count).Where(i => kept.Entry[i].Resource is not { } there || KeptFacts.Of(there) != KeptFacts.Of(sent.Entry[i].Resource!) && !IsKnownPatient(sent.Entry[i], there))];
        return missing.Length == 0 ? null
            : $"the receiver said yes and has not kept {missing.Length} of {sent.Entry.Count} resources as they were sent, the first a {sent.Entry[missing[0]].Resource!.TypeName} ({places[missing[0]]}); whoever runs it must look";
    }

    /// <summary>A Patient that the receiver had already is as it likes, with our identifier among others.</summary>
    private static bool IsKnownPatient(Bundle.EntryComponent sent, Resource there) =>
        sent.Resource is Patient ours && there is Patient theirs && ours.Identifier.TrueForAll(i => theirs.Identifier.Exists(t => t.System == i.System && t.Value == i.Value));

    private static string? Place(Bundle.ResponseComponent? response, string type)
    {
        string[] parts = response?.Status is { } status && (status.StartsWith("200", StringComparison.Ordinal) || status.StartsWith("201", StringComparison.Ordinal))
            ? (response.Location ?? "").Split('/')
            : [];
        int at = Array.LastIndexOf(parts, type);
        return at >= 0 && at + 1 < parts.Length ? $"{type}/{parts[at + 1]}" : null;
    }
}
