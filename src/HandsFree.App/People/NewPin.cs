using HandsFree.App.Composition;
using HandsFree.Core.People;
using HandsFree.Store.Keys;

namespace HandsFree.App.People;

/// <summary>A new PIN or passphrase: from the file that HANDSFREE_NEW_PIN_FILE names, else typed twice.</summary>
internal static class NewPin
{
    private const string Variable = "HANDSFREE_NEW_PIN_FILE";

    /// <summary>What was given, or one line that says what is wrong with it.</summary>
    /// <param name="surroundings">Environment and terminal.</param>
    /// <param name="person">Whose.</param>
    /// <param name="role">What she may do: nurses and supervisors need a passphrase.</param>
    public static (Pin? Pin, string? Error) Read(Surroundings surroundings, string person, Role role)
    {
        (string? text, string? error) = NewSecret.Read(surroundings, role == Role.Aide ? "PIN" : "passphrase", Variable);
        return text is null ? (null, error)
            : !Pin.TryParse(text, out Pin? pin, out string? wrong) ? (null, wrong)
            : pin.WhyTooWeak(person, role) is { } weak ? (null, weak)
            : (pin, null);
    }
}
