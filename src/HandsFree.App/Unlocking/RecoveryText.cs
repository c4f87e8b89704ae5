using HandsFree.App.Composition;
using HandsFree.Store.Keys;

namespace HandsFree.App.Unlocking;

/// <summary>A key on paper: from the file that an environment variable names, else typed.</summary>
internal static class RecoveryText
{
    /// <summary>The recovery key.</summary>
    public static (RecoveryKey? Key, string? Error) Read(Surroundings surroundings) => Read(surroundings, "recovery key", "HANDSFREE_RECOVERY_FILE");

    /// <summary>A key on paper.</summary>
    /// <param name="surroundings">Environment and terminal.</param>
    /// <param name="what">What it is called.</param>
    /// <param name="variable">Names a file.</param>
    public static (RecoveryKey? Key, string? Error) Read(Surroundings surroundings, string what, string variable)
    {
        (string? text, string? unread) = SecretText.Given(surroundings, null, "", variable);
        text ??= unread is null ? SecretText.Asked(surroundings, $"{char.ToUpperInvariant(what[0])}{what[1..]}: ") : null;
        return text is null
            ? (null, unread ?? $"the {what} is needed; type it at a terminal, or name a file with {variable}")
            : RecoveryKey.TryParse(text, out RecoveryKey? key, out string? wrong) ? (key, null) : (null, wrong);
    }
}
