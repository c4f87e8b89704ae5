namespace HandsFree.App.ResidentDesk;

/// <summary>What an import does with a resident.</summary>
internal enum RosterChangeKind
{
    /// <summary>She was not in the roster.</summary>
    New,

    /// <summary>Something of her is another.</summary>
    Changed,

    /// <summary>She is not in the file: she lives there no more.</summary>
    Gone,
}
