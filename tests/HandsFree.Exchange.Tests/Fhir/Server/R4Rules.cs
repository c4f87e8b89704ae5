using System.Net;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Tests.Fhir.Server;

/// <summary>What a FHIR R4 server does with a transaction (HL7 FHIR R4, http.html#transaction, from memory): all or nothing; references by full URL
/// and by search are replaced; conditional create and update; If-Match; no identity twice.</summary>
internal sealed class R4Rules(Dictionary<string, Resource> kept)
{
    private int numbers = kept.Count;

    /// <summary>Does a transaction on a copy; only a whole one is taken over.</summary>
    /// <returns>The answer, or the status and the reason why nothing was done.</returns>
    public (Bundle? Answer, HttpStatusCode Status, string? Why) Transaction(Bundle bundle)
    {
        Dictionary<string, Resource> draft = new(kept);
        Dictionary<string, string> places = [];
        List<(Bundle.EntryComponent Entry, string Place, bool Old)> work = [];
        foreach (Bundle.EntryComponent entry in bundle.Entry)
        {
            (string? place, bool old, HttpStatusCode status, string? why) = Place(entry, draft);
            if (place is null)
            {
                return (null, status, why);
            }

            if (work.Any(w => w.Place == place))
            {
                return (null, HttpStatusCode.BadRequest, $"{place} stands twice in the transaction");
            }

            work.Add((entry, place, old));
            places[entry.FullUrl!] = place;
        }

        Bundle answer = new() { Type = Bundle.BundleType.TransactionResponse };
        foreach ((Bundle.EntryComponent entry, string place, bool old) in work)
        {
            bool stays = old && entry.Request!.Method == Bundle.HTTPVerb.POST;
            if (!stays)
            {
                Resource resource = (Resource)entry.Resource!.DeepCopy();
                foreach (ResourceReference reference in HandsFree.Exchange.Tests.Fhir.Server.Walk.References(resource))
                {
                    if (Resolved(reference.Reference, places, draft) is not { } resolved)
                    {
                        return (null, HttpStatusCode.PreconditionFailed, $"{reference.Reference} names nothing here");
                    }

                    reference.Reference = resolved.Length == 0 ? null : resolved;
                }

                resource.Id = place.Split('/')[1];
                resource.Meta ??= new Meta();
                resource.Meta.VersionId = $"{(draft.TryGetValue(place, out Resource? before) ? int.Parse(before.VersionId!, System.Globalization.CultureInfo.InvariantCulture) + 1 : 1)}";
                draft[place] = resource;
            }

            answer.Entry.Add(new() { Response = new() { Status = old ? "200 OK" : "201 Created", Location = $"{place}/_history/{draft[place].VersionId}", Etag = $"W/\"{draft[place].VersionId}\"" } });
        }

        kept.Clear();
        foreach ((string place, Resource resource) in draft)
        {
            kept[place] = resource;
        }

        return (answer, HttpStatusCode.OK, null);
    }

    /// <summary>The resources of a type with an identifier.</summary>
    public static IReadOnlyList<(string Place, Resource Resource)> Found(IReadOnlyDictionary<string, Resource> among, string type, string query)
    {
        string[] wanted = Uri.UnescapeDataString(query.Replace("identifier=", "", StringComparison.Ordinal)).Split('|');
        return [.. among.Where(r => r.Value.TypeName == type && Identifiers(r.Value).Any(i => i.System == wanted[0] && i.Value == wanted[1])).Select(r => (r.Key, r.Value))];
    }

    private (string? Place, bool Old, HttpStatusCode Status, string? Why) Place(Bundle.EntryComponent entry, Dictionary<string, Resource> draft)
    {
        Bundle.RequestComponent request = entry.Request!;
        string type = entry.Resource!.TypeName;
        string? search = request.Method == Bundle.HTTPVerb.POST ? request.IfNoneExist : request.Url!.Contains('?', StringComparison.Ordinal) ? request.Url.Split('?')[1] : null;
        if (search is not null)
        {
            var found = Found(draft, type, search);
            return found.Count > 1 ? (null, false, HttpStatusCode.PreconditionFailed, $"{found.Count} {type}s fit {search}")
                : found.Count == 1 ? (found[0].Place, true, HttpStatusCode.OK, null)
                : ($"{type}/{++numbers}", false, HttpStatusCode.OK, null);
        }

        if (request.Method != Bundle.HTTPVerb.PUT)
        {
            return ($"{type}/{++numbers}", false, HttpStatusCode.OK, null);
        }

        string place = request.Url!;
        draft.TryGetValue(place, out Resource? there);
        return entry.Resource.Id != place.Split('/')[1] ? (null, false, HttpStatusCode.BadRequest, $"the id in {place} is not {entry.Resource.Id}")
            : request.IfMatch is { } wanted && wanted != $"W/\"{there?.VersionId}\"" ? (null, false, HttpStatusCode.PreconditionFailed, $"{place} is not of version {wanted}")
            : (place, there is not null, HttpStatusCode.OK, null);
    }

    private static string? Resolved(string? reference, Dictionary<string, string> places, Dictionary<string, Resource> draft)
    {
        if (reference is null)
        {
            return "";
        }

        if (reference.Contains('?', StringComparison.Ordinal))
        {
            var found = Found(draft, reference.Split('?')[0], reference.Split('?')[1]);
            return found.Count == 1 ? found[0].Place : null;
        }

        return places.GetValueOrDefault(reference) ?? (draft.ContainsKey(reference) ? reference : null);
    }

    private static IEnumerable<Identifier> Identifiers(Resource resource) => resource switch
    {
        Observation o => o.Identifier,
        Communication c => c.Identifier,
        Patient p => p.Identifier,
        _ => [],
    };
}
