using HandsFree.App.Composition;
using HandsFree.Store.Keys;

namespace HandsFree.App.People;

/// <summary>A new PIN: from the file that HANDSFREE_NEW_PIN_FILE names, else typed twice.</summary>
internal static class NewPin
{
    private const string Variable = "HANDSFREE_NEW_PIN_FILE";

    public static (Pin? Pin, string? Error) Read(Surroundings surroundings)
    {
        (string? text, string? error) = NewSecret.Read(surroundings, "PIN", Variable);
        return text is null ? (null, error) : Pin.TryParse(text, out Pin? pin, out string? wrong) ? (pin, null) : (null, wrong);
    }
}
