namespace HandsFree.Store.Keys;

/// <summary>Whose slot it is; the numbers stand in the file.</summary>
internal enum KeySlotKind
{
    /// <summary>The device alone.</summary>
    Device = 0,

    /// <summary>A person with a PIN.</summary>
    Person = 1,

    /// <summary>The recovery key on paper.</summary>
    Recovery = 2,
}
