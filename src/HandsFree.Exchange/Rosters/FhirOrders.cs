using System.Globalization;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Rosters;

/// <summary>The Flags and ServiceRequests of a bundle: isolation, and an ordered posture test.</summary>
/// <remarks>R4 binds no code for either. A Flag is one of isolation where its code or category says "isolation" or "precaution" in
/// words, a ServiceRequest is the posture test where its code says "orthostatic" (common practice, no source). Resources that are not
/// active say nothing.</remarks>
internal sealed class FhirOrders(Bundle bundle)
{
    private readonly List<Flag> flags = [.. bundle.Entry.Select(e => e.Resource).OfType<Flag>()];
    private readonly List<ServiceRequest> requests = [.. bundle.Entry.Select(e => e.Resource).OfType<ServiceRequest>()];

    /// <summary>The columns of <see cref="RosterColumns"/> that the bundle speaks of: those of whose resources it has any.</summary>
    public IEnumerable<string> Given =>
    [
        .. flags.Count > 0 ? [RosterColumns.Isolation] : Array.Empty<string>(),
        .. requests.Count > 0 ? [RosterColumns.PostureTest] : Array.Empty<string>(),
    ];

    /// <summary>What is wrong with a resource that says it of nobody in the bundle; null where nothing is.</summary>
    public string? Stray(Resource resource) => resource switch
    {
        Flag flag when IsIsolation(flag) => Nobody(flag.Subject),
        ServiceRequest request when IsPostureTest(request) => Nobody(request.Subject),
        _ => null,
    };

    /// <summary>The isolation in its own words, or null.</summary>
    public string? Isolation(Patient patient) =>
        flags.Find(f => IsIsolation(f) && bundle.Named(f.Subject?.Reference) == patient)?.Code.Words().FirstOrDefault();

    /// <summary>The ordered posture test, or what is wrong with it.</summary>
    public (Core.Residents.OrderedTest? Test, string? Wrong) PostureTest(Patient patient)
    {
        if (requests.Find(r => IsPostureTest(r) && bundle.Named(r.Subject?.Reference) == patient) is not { } request)
        {
            return (null, null);
        }

        string name = $"ServiceRequest/{request.Id}";
        string who = Requester(request);
        bool dated = DateOnly.TryParseExact(
            request.AuthoredOn is { Length: >= 10 } on ? on[..10] : "", "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day);
        return who.Length == 0 ? (null, $"the {name} does not say who ordered it; a requester with a display, or a Practitioner of the Bundle, is needed")
            : dated ? (new(who, day), null)
            : (null, $"the {name} does not say when it was ordered; authoredOn with year, month and day is needed");
    }

    private string? Nobody(ResourceReference? subject) => bundle.Named(subject?.Reference) is Patient
        ? null
        : $"its subject \"{subject?.Reference}\" is no Patient of the Bundle; export the Patient with it, or leave it out";

    private string Requester(ServiceRequest request) => request.Requester switch
    {
        null => "",
        { Display: { Length: > 0 } display } => display,
        var reference => bundle.Named(reference.Reference) is Practitioner { Name: [var name, ..] } ? RosterFhir.Words(name) : "",
    };

    private static bool IsIsolation(Flag flag) =>
        flag.Status == Flag.FlagStatus.Active && flag.Category.Append(flag.Code).Any(c => Says(c, "isolation") || Says(c, "precaution"));

    private static bool IsPostureTest(ServiceRequest request) => request.Status == RequestStatus.Active && Says(request.Code, "orthostatic");

    private static bool Says(CodeableConcept? code, string word) => code.Words().Any(w => w.Contains(word, StringComparison.OrdinalIgnoreCase));
}
