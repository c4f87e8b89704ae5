using HandsFree.Core.Files;
using HandsFree.Core.Residents;

namespace HandsFree.App.Homes;

/// <summary>Numbers of roster.json, from the home's units to those of the rules.</summary>
internal sealed class ValueReader(string path, RosterUnits units, ICollection<FileError> errors)
{
    /// <summary>The number of a field in degrees Fahrenheit, pounds, or what the value has; null where the field is not there, and where it
    /// can't be.</summary>
    /// <param name="item">With the field "value", which says what it is a number of.</param>
    /// <param name="name">The field.</param>
    public decimal? Exact(LocatedNode item, string name)
    {
        if (item[name] is not { } field)
        {
            return null;
        }

        (decimal? kept, string? wrong) = units.Kept(RosterWords.Values[item.TextOf("value")!], field.Number);
        if (wrong is not null)
        {
            errors.Add(new(path, field.Line, $"\"{name}\" is {field.InWords}, {wrong}"));
        }

        return kept;
    }
}
