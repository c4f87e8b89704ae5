using HandsFree.Language.Meaning;

namespace HandsFree.Core.Meanings;

/// <summary>A number or a pair of numbers from a grammar's tags.</summary>
internal static class SpokenNumberMap
{
    public static SpokenNumber? From(SemanticValue value) => value switch
    {
        SemanticNumber number => new SpokenNumber(number.Value),
        SemanticList { Items: [SemanticNumber first, SemanticNumber second] } => new SpokenNumber(first.Value, second.Value),
        _ => null,
    };
}
