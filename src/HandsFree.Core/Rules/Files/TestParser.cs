using System.Text.Json;
using HandsFree.Core.Rules.Evaluation;
using HandsFree.Core.Rules.Figures;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads figure, side, threshold and unit of a test.</summary>
internal static class TestParser
{
    private const decimal Least = -1000;
    private const decimal Greatest = 1000;

    /// <summary>The test, or null with the error added.</summary>
    public static RuleTest? Parse(ObjectReader from, bool orderedFile, bool sideNeeded)
    {
        string name = from.RequiredText("of");
        foreach (string word in RuleVocabulary.Sides.Keys.Append("unit"))
        {
            from.Any(word);
        }

        if (!FigureTable.ByName.TryGetValue(name, out var figure))
        {
            if (name.Length > 0)
            {
                from.Fault($"\"of\" names \"{name}\", which is no value that a rule can stand on; known: {string.Join(", ", FigureTable.ByName.Keys)}", from.LineOf("of"));
            }

            return null;
        }

        var sides = RuleVocabulary.Sides.Where(s => from.Has(s.Key)).ToList();
        if (sides.Count == 0)
        {
            if (sideNeeded)
            {
                from.Fault($"a threshold is missing; write one of: {string.Join(", ", RuleVocabulary.Sides.Keys)}");
            }

            return new(figure);
        }

        if (sides.Count > 1)
        {
            from.Fault($"\"{sides[0].Key}\" and \"{sides[1].Key}\" together; write one rule for each side");
            return null;
        }

        if (!figure.HasNumber)
        {
            from.Fault($"\"{figure.Name}\" is no number and can have no threshold; name one that is, such as systolic", from.LineOf(sides[0].Key));
            return null;
        }

        CheckUnit(from, figure);
        var test = new RuleTest(figure) { Side = sides[0].Value };
        return orderedFile ? Ordered(from, test, sides[0].Key) : Threshold(from, test, sides[0].Key);
    }

    /// <summary>A threshold names its unit, and it is the figure's.</summary>
    public static void CheckUnit(ObjectReader from, FigureKind figure)
    {
        string? unit = from.Text("unit");
        if (figure.IsTemperature && unit is not null)
        {
            from.Fault("a temperature has its units at its thresholds; leave \"unit\" out", from.LineOf("unit"));
        }
        else if (!figure.IsTemperature && unit != figure.Unit)
        {
            string what = unit is null ? "\"unit\" is missing" : $"\"unit\" is \"{unit}\"";
            from.Fault($"{what}; \"{figure.Name}\" is in \"{figure.Unit}\"", from.LineOf("unit"));
        }
    }

    /// <summary>The test with the threshold of a field: a number, or one for each unit of a temperature.</summary>
    public static RuleTest? Threshold(ObjectReader from, RuleTest test, string field)
    {
        if (!test.Of.IsTemperature)
        {
            return from.Number(field, Least, Greatest) is { } number ? test with { Number = number } : null;
        }

        if (from.Any(field) is { Kind: not JsonValueKind.Object } wrong)
        {
            from.Fault($"\"{field}\" of a temperature must be {{ \"[degF]\": …, \"Cel\": … }}, is {wrong.KindInWords}: a value is held against the threshold of the unit that was spoken", wrong.Line);
            return null;
        }

        var both = from.Object(field)!;
        decimal? fahrenheit = both.Number("[degF]", Least, Greatest);
        decimal? celsius = both.Number("Cel", Least, Greatest);
        both.NothingElse();
        if (fahrenheit is { } f && celsius is { } c)
        {
            return test with { Number = f, Celsius = c };
        }

        both.Fault("both \"[degF]\" and \"Cel\" are needed");
        return null;
    }

    private static RuleTest? Ordered(ObjectReader from, RuleTest test, string field)
    {
        if (from.Text(field) != "ordered")
        {
            from.Fault($"\"{field}\" must be \"ordered\" in a file of ordered limits", from.LineOf(field));
            return null;
        }

        if (test.Of.Limits is null)
        {
            from.Fault($"no limit can be ordered for \"{test.Of.Name}\"; leave this rule out", from.LineOf("of"));
            return null;
        }

        return test with { Ordered = true };
    }
}
