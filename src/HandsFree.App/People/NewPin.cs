using HandsFree.App.Composition;
using HandsFree.App.Unlocking;
using HandsFree.Store.Keys;

namespace HandsFree.App.People;

/// <summary>A new PIN: from the file that HANDSFREE_NEW_PIN_FILE names, else typed twice.</summary>
internal static class NewPin
{
    private const string Variable = "HANDSFREE_NEW_PIN_FILE";

    public static (Pin? Pin, string? Error) Read(Surroundings surroundings)
    {
        (string? text, string? error) = SecretText.Given(surroundings, null, "", Variable);
        if (error is not null)
        {
            return (null, error);
        }

        if (text is null)
        {
            text = SecretText.Asked(surroundings, "New PIN: ");
            if (text is null)
            {
                return (null, $"a new PIN is needed; type it at a terminal, or name a file with {Variable}");
            }

            if (SecretText.Asked(surroundings, "Again: ") != text)
            {
                return (null, "the two differ; nothing was changed");
            }
        }

        return Pin.TryParse(text, out Pin? pin, out string? wrong) ? (pin, null) : (null, wrong);
    }
}
