using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir;

/// <summary>A resource with all that is in it.</summary>
internal static class Parts
{
    /// <summary>The element itself, then everything below it.</summary>
    public static IEnumerable<Base> Within(Base all)
    {
        yield return all;
        foreach (object child in all.EnumerateElements().Select(e => e.Value))
        {
            IEnumerable<Base> below = child switch { Base one => [one], IEnumerable<Base> many => many, _ => [] };
            foreach (Base each in below.SelectMany(Within))
            {
                yield return each;
            }
        }
    }
}
