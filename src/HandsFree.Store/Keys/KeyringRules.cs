using HandsFree.Core.People;

namespace HandsFree.Store.Keys;

/// <summary>Which change of a keyring who may make. Looked at where it is made and wherever a journal is opened or verified.</summary>
internal static class KeyringRules
{
    /// <summary>Why the first keyring is none; null where it is one.</summary>
    public static string? WhyNotFirst(Keyring first, int signer, byte[] journal) =>
        first.Version != 1 || !first.Before.AsSpan().SequenceEqual(Keyring.None(journal)) ? "does not begin"
        : first.Generation != 2 || first.Older is null ? "does not change the data key"
        : first.ByNumber(signer) is not { Kind: KeySlotKind.Person, Role: Role.Supervisor } ? "is not a supervisor's"
        : Twice(first) ? "names a member twice"
        : null;

    /// <summary>Why a keyring may not follow another; null where it may.</summary>
    /// <param name="before">The one before.</param>
    /// <param name="hash">Its hash.</param>
    /// <param name="next">The next one.</param>
    /// <param name="signer">Who signed it: a member of the one before.</param>
    /// <param name="highest">The highest number that a member ever had.</param>
    public static string? WhyNot(Keyring before, byte[] hash, Keyring next, Member signer, int highest)
    {
        if (next.Version != before.Version + 1 || !next.Before.AsSpan().SequenceEqual(hash))
        {
            return "does not follow the one before";
        }

        bool begins = next.Generation == before.Generation + 1;
        if ((!begins && next.Generation != before.Generation) || begins != next.Older is not null || Twice(next))
        {
            return "does not fit together";
        }

        if (next.Members.Any(member => before.ByNumber(member.Number) is null && member.Number <= highest))
        {
            return "brings a member back who was removed";
        }

        if (!begins && before.Members.Any(member => next.ByNumber(member.Number) is null))
        {
            return "removes a member and keeps the data key";
        }

        return signer.Role == Role.Supervisor || IsOwnPin(before, next, signer) ? null : "is signed by somebody who may not change it";
    }

    private static bool Twice(Keyring keyring) => keyring.Members.DistinctBy(member => member.Number).Count() != keyring.Members.Count;

    // Everybody may give herself another PIN: her slot is another, and nothing else.
    private static bool IsOwnPin(Keyring before, Keyring next, Member signer) =>
        signer.Kind == KeySlotKind.Person
        && next.ByNumber(signer.Number) is { } own
        && Same(before with { Version = next.Version, Before = next.Before, Older = null, Members = [.. before.Members.Select(m => m.Number == own.Number ? m with { Slot = own.Slot } : m)] }, next);

    private static bool Same(Keyring one, Keyring other) => one.Bytes().AsSpan().SequenceEqual(other.Bytes());
}
