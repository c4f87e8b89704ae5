using HandsFree.App.Composition;
using HandsFree.Store.Keys;

namespace HandsFree.App.Unlocking;

/// <summary>The recovery key: from the file that HANDSFREE_RECOVERY_FILE names, else typed.</summary>
internal static class RecoveryText
{
    private const string Variable = "HANDSFREE_RECOVERY_FILE";

    public static (RecoveryKey? Key, string? Error) Read(Surroundings surroundings)
    {
        (string? text, string? unread) = SecretText.Given(surroundings, null, "", Variable);
        text ??= unread is null ? SecretText.Asked(surroundings, "Recovery key: ") : null;
        return text is null
            ? (null, unread ?? $"the recovery key is needed; type it at a terminal, or name a file with {Variable}")
            : RecoveryKey.TryParse(text, out RecoveryKey? key, out string? wrong) ? (key, null) : (null, wrong);
    }
}
