namespace HandsFree.Store.Keys;

/// <summary>Whose slot it is; the numbers stand in the file.</summary>
internal enum KeySlotKind
{
    /// <summary>The device alone: only as long as nobody was set up.</summary>
    Device = 0,

    /// <summary>A person with PIN or passphrase.</summary>
    Person = 1,

    /// <summary>The recovery key on paper.</summary>
    Recovery = 2,

    /// <summary>The emergency key in its sealed envelope.</summary>
    Emergency = 3,
}
