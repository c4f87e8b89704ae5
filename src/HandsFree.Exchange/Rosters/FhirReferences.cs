using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Rosters;

/// <summary>References within a bundle.</summary>
internal static class FhirReferences
{
    /// <summary>The resource of the bundle that a reference names, by its full URL or by type and id; null where it is not in it.</summary>
    public static Resource? Named(this Bundle bundle, string? reference) => reference is null ? null : bundle.Entry.Find(entry =>
        entry.FullUrl == reference
        || (entry.Resource is { Id: { } id } resource && ("/" + reference).EndsWith($"/{resource.TypeName}/{id}", StringComparison.Ordinal)))?.Resource;

    /// <summary>All that a code says in words: its own text, then the displays of its codings.</summary>
    public static IReadOnlyList<string> Words(this CodeableConcept? code) =>
        code is null ? [] : [.. new[] { code.Text }.Concat(code.Coding.Select(c => c.Display)).OfType<string>().Select(w => w.Trim()).Where(w => w.Length > 0)];
}
