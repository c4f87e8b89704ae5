namespace HandsFree.Core.Dialogue;

/// <summary>Whether a sleeping resident woke to the voice (safety 17).</summary>
internal enum Sleeping
{
    /// <summary>Not asleep, or not asked.</summary>
    NotAsked,

    /// <summary>Woke.</summary>
    Woke,

    /// <summary>Did not wake: report now.</summary>
    DidNotWake,

    /// <summary>The question was not answered: report this shift.</summary>
    NotKnown,
}
