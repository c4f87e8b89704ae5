using System.Globalization;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>What must be the same in a resource that was sent and the one that the receiver has. What a server may write in its own way
/// (references, versions, narrative, the zone of a time) is not in it.</summary>
internal static class KeptFacts
{
    /// <summary>The facts as a text.</summary>
    public static string Of(Resource resource) => resource switch
    {
        Observation o => string.Join(
            '|',
            [
                .. o.Identifier.Select(i => i.Value), $"{o.Status}", .. Codes(o.Code), Value(o.Value), .. Codes(o.DataAbsentReason), Moment((o.Effective as FhirDateTime)?.Value),
                .. o.Component.SelectMany(c => (string?[])[.. Codes(c.Code), Value(c.Value), .. Codes(c.DataAbsentReason)]),
            ]),
        Communication c => string.Join('|', [.. c.Identifier.Select(i => i.Value), $"{c.Status}", Moment(c.Received), .. c.Payload.Select(p => (p.Content as FhirString)?.Value)]),
        Provenance p => string.Join('|', [p.Id, .. Codes(p.Activity), .. p.Reason.Select(r => r.Text)]),
        Patient p => string.Join('|', p.Identifier.Select(i => i.Value)),
        _ => resource.TypeName,
    };

    private static IEnumerable<string?> Codes(CodeableConcept? concept) => concept?.Coding.Select(c => c.Code) ?? [];

    private static string? Value(DataType? value) => value is Quantity { Value: { } number } quantity
        ? string.Create(CultureInfo.InvariantCulture, $"{number:0.######} {quantity.Code}")
        : null;

    private static string? Moment(string? text) =>
        DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset at) ? at.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture) : text;
}
