using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Tests.Fhir.Server;

/// <summary>The references in a resource.</summary>
internal static class Walk
{
    public static IEnumerable<ResourceReference> References(Base all) => all switch
    {
        ResourceReference reference => [reference],
        _ => all.EnumerateElements().Select(e => e.Value).SelectMany(child => child switch { Base one => [one], IEnumerable<Base> many => many, _ => Array.Empty<Base>() }).SelectMany(References),
    };
}
