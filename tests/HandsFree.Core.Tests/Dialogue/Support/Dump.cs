using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Everything that a record holds, its private parts too, as text: two that are the same have the same text.</summary>
internal static class Dump
{
    public static string Of(object? thing, params string[] without)
    {
        StringBuilder text = new();
        Write(text, thing, without.ToHashSet(), 0);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? thing, HashSet<string> without, int depth)
    {
        switch (thing)
        {
            case null:
                text.Append("null");
                break;
            case string or bool or Enum or DateOnly or TimeOnly or TimeSpan or Type:
                text.Append(thing);
                break;
            case DateTimeOffset at:
                text.Append(at.ToString("O", CultureInfo.InvariantCulture));
                break;
            case IFormattable number when thing.GetType().IsPrimitive || thing is decimal:
                text.Append(number.ToString(null, CultureInfo.InvariantCulture));
                break;
            case IDictionary map:
                Many(text, map.Keys.Cast<object>().Select(k => (Key: Of(k), Value: map[k])).OrderBy(p => p.Key, StringComparer.Ordinal), without, depth);
                break;
            case IEnumerable many when thing.GetType().Name.Contains("HashSet", StringComparison.Ordinal):
                text.Append('[').AppendJoin(", ", many.Cast<object>().Select(each => Of(each)).Order(StringComparer.Ordinal)).Append(']');
                break;
            case IEnumerable many:
                Many(text, many.Cast<object?>().Select((each, i) => (Key: "", Value: each)), without, depth);
                break;
            default:
                text.Append(thing.GetType().Name);
                Many(text, Parts(thing).Where(p => !without.Contains(p.Key)), without, depth);
                break;
        }
    }

    private static void Many(StringBuilder text, IEnumerable<(string Key, object? Value)> items, HashSet<string> without, int depth)
    {
        text.Append('{');
        foreach ((string key, object? value) in items)
        {
            text.Append('\n').Append(' ', depth + 1).Append(key).Append(": ");
            Write(text, value, without, depth + 1);
        }

        text.Append('}');
    }

    private static IEnumerable<(string Key, object? Value)> Parts(object thing) => thing.GetType()
        .GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
        .Where(p => p.GetIndexParameters().Length == 0 && p.Name != "EqualityContract" && p.CanWrite | p.GetMethod!.IsPublic | p.GetMethod.IsAssembly)
        .OrderBy(p => p.Name, StringComparer.Ordinal).Select(p => (p.Name, p.GetValue(thing)));
}
