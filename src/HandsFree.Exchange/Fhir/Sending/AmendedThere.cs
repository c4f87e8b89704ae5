using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Outgoing;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>Before an amended Observation is written: has the receiver changed the one that it has? What it changed is not written over; what it
/// did not is written over only as long as it is the one that was looked at (If-Match).</summary>
internal static class AmendedThere
{
    /// <summary>The bundle as it may be sent.</summary>
    public static async Task<(Bundle? Bundle, IReadOnlyList<string> ChangedThere, string? Error)> Look(FhirClient client, OutgoingBundle outgoing)
    {
        Bundle bundle = (Bundle)outgoing.Bundle.DeepCopy();
        List<string> changed = [];
        foreach ((string url, IReadOnlyList<Observation> states) in outgoing.Earlier)
        {
            Bundle.EntryComponent entry = bundle.Entry.Single(e => e.FullUrl == url);
            (ServerAnswer? answer, string? error) = await client.Get(entry.Request!.Url!).ConfigureAwait(false);
            if (answer is null || answer.Status != System.Net.HttpStatusCode.OK || answer.Body is not Bundle found)
            {
                return (null, [], error ?? $"the receiver does not let it be looked for what it has ({answer!.Words})");
            }

            Observation[] there = [.. found.Entry.Select(e => e.Resource).OfType<Observation>()];
            if (there.Length > 1)
            {
                return (null, [], $"the receiver has {there.Length} Observations with the identifier {url}; somebody there must remove all but one");
            }

            if (there is not [{ } one])
            {
                continue;
            }

            if (states.Any(state => KeptFacts.Of(state) == KeptFacts.Of(one)))
            {
                entry.Resource!.Id = one.Id;
                entry.Request = new() { Method = Bundle.HTTPVerb.PUT, Url = $"Observation/{one.Id}", IfMatch = one.VersionId is { } version ? $"W/\"{version}\"" : null };
            }
            else
            {
                changed.Add($"Observation/{one.Id} ({url}) was changed at the receiver and is not written over; look at both records");
                LeaveOut(bundle, url, $"Observation/{one.Id}");
            }
        }

        return (bundle, changed, null);
    }

    private static void LeaveOut(Bundle bundle, string url, string there)
    {
        bundle.Entry.RemoveAll(e => e.FullUrl == url || (e.Resource is Provenance provenance && provenance.Target.Exists(t => t.Reference == url)));
        foreach (ResourceReference reference in bundle.Entry.SelectMany(e => Parts.Within(e.Resource!)).OfType<ResourceReference>().Where(r => r.Reference == url))
        {
            reference.Reference = there;
        }
    }
}
