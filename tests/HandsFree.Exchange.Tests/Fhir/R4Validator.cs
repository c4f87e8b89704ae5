using Firely.Fhir.Validation;
using Hl7.Fhir.Model;
using Hl7.Fhir.Specification.Source;
using Hl7.Fhir.Specification.Terminology;
using HandsFree.Exchange.Fhir.Codes;

namespace HandsFree.Exchange.Tests.Fhir;

/// <summary>HL7's R4 definitions (package Hl7.Fhir.Specification.Data.R4) in Firely's validator, without any network, and our own table of
/// codes, which knows what the validator does not. On a thread of its own: in the thread pool it starves.</summary>
internal static class R4Validator
{
    private static readonly Lazy<Validator> Firely = new(() =>
    {
        CachedResolver definitions = new(ZipSource.CreateValidationSource());
        return new Validator(definitions, new LocalTerminologyService(definitions), null, null);
    });

    /// <summary>Everything that is wrong by the profiles that a resource claims; empty where nothing is.</summary>
    public static IReadOnlyList<string> Profiles(Resource resource)
    {
        string[] found = [];
        Exception? failed = null;
        Thread thread = new(() =>
        {
            try
            {
                lock (Firely)
                {
                    found =
                    [
                        .. Firely.Value.Validate(resource).Issue
                            .Where(i => i.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal)
                            .Select(i => $"{i.Details?.Text} at {string.Join(", ", i.Expression)}"),
                    ];
                }
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                failed = e;
            }
        });
        thread.Start();
        thread.Join();
        return failed is null ? found : throw new InvalidOperationException("the validator failed", failed);
    }

    /// <summary>Everything that is wrong by profiles and codes.</summary>
    public static IReadOnlyList<string> All(Resource resource) =>
        [.. Profiles(resource), .. (resource is Bundle bundle ? bundle.Entry.Select(e => e.Resource!) : [resource]).SelectMany(CodeCheck.Of)];
}
