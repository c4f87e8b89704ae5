using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Language.Meaning;

namespace HandsFree.Core.Meanings;

/// <summary>A whole reading from a grammar's tags.</summary>
internal static class ReadingMap
{
    private static readonly Dictionary<string, VitalSign> Kinds = new()
    {
        ["pulse"] = VitalSign.Pulse,
        ["respirations"] = VitalSign.Respirations,
        ["oxygen"] = VitalSign.OxygenSaturation,
        ["pain"] = VitalSign.Pain,
        ["temperature"] = VitalSign.Temperature,
        ["blood pressure"] = VitalSign.BloodPressure,
        ["weight"] = VitalSign.Weight,
    };

    public static VitalSign? Sign(SemanticValue? kind) =>
        kind is SemanticText text && Kinds.TryGetValue(text.Value, out VitalSign sign) ? sign : null;

    public static Meaning? From(string kind, SemanticRecord record, WeightUnit weightUnit)
    {
        if (!Kinds.TryGetValue(kind, out VitalSign sign) || How(record["qualifiers"]) is not { } how)
        {
            return null;
        }

        if (record["counted"] is SemanticNumber counted && record["seconds"] is SemanticNumber seconds)
        {
            return Counts.Reading(sign, counted.Value, seconds.Value, how);
        }

        if (record["value"] is not { } said || SpokenNumberMap.From(said) is not { } number)
        {
            return null;
        }

        string? unit = (record["unit"] as SemanticText)?.Value ?? (sign == VitalSign.Weight ? QuantityFrom.Text(weightUnit) : null);
        return QuantityFrom.Number(sign, number, unit) is { } quantity
            ? new Meaning.ReadingSaid(new Reading(quantity, how))
            : new Meaning.NotPossible(sign, number, $"no {kind} can be this number");
    }

    private static Circumstances? How(SemanticValue? qualifiers)
    {
        Circumstances how = Circumstances.Unsaid;
        SemanticValue[] items = qualifiers switch
        {
            null => [],
            SemanticList list => [.. list.Items.Where(i => i is not SemanticNothing)],
            _ => [qualifiers],
        };
        foreach (SemanticValue item in items)
        {
            if (One(item) is not { } one)
            {
                return null;
            }

            how = how.With(one);
        }

        return how;
    }

    private static Circumstances? One(SemanticValue item) => item switch
    {
        SemanticText text => Qualifiers.From(text.Value, null),
        SemanticRecord record when record["qualifier"] is SemanticText text =>
            Qualifiers.From(text.Value, (record["litres"] as SemanticNumber)?.Value),
        _ => null,
    };
}
