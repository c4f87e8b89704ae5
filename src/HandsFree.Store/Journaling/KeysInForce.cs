using System.Security.Cryptography;
using HandsFree.Core.People;
using HandsFree.Store.Keys;
using HandsFree.Store.Sealing;

namespace HandsFree.Store.Journaling;

/// <summary>Who may open a journal at one moment, who opened it, and the data keys that she gets at.</summary>
internal sealed class KeysInForce : IDisposable
{
    private KeysInForce(KeyringChain chain, HolderKeys? holderKeys, DataKeys data, IReadOnlyDictionary<int, string> names) =>
        (Chain, HolderKeys, Data, Names) = (chain, holderKeys, data, names);

    public KeyringChain Chain { get; }

    /// <summary>The keys of who opened it; null where nobody is set up.</summary>
    public HolderKeys? HolderKeys { get; }

    public DataKeys Data { get; }

    /// <summary>The ids of all members that there ever were, by their number.</summary>
    public IReadOnlyDictionary<int, string> Names { get; }

    /// <summary>Who opened it; null where nobody is set up.</summary>
    public Holder? Holder => HolderKeys is { } keys ? new Holder(keys.Person, Chain.Current!.ByNumber(keys.Number)!.Role) : null;

    /// <summary>As long as nobody is set up.</summary>
    public static KeysInForce OfDevice(KeyringChain none, DataKey key) => new(none, null, new DataKeys(new() { [1] = key }), new Dictionary<int, string>());

    /// <summary>What a holder gets at; null where she is in the keyring no more, or a box or name is not as it was sealed.</summary>
    public static KeysInForce? Of(KeyringChain chain, HolderKeys holder, byte[] journal)
    {
        if (chain.Current?.ByNumber(holder.Number) is not { } member
            || KeyBox.Open(member.Box, holder, journal, chain.Current.Generation) is not { } current
            || Older(chain, current, journal) is not { } data)
        {
            return null;
        }

        Dictionary<int, string> names = [];
        foreach (Keyring keyring in chain.All)
        {
            if (SealedNames.Open(keyring, data, journal) is not { } found)
            {
                data.Dispose();
                return null;
            }

            foreach ((int number, string name) in found)
            {
                names[number] = name;
            }
        }

        return new KeysInForce(chain, holder, data, names);
    }

    /// <summary>The same holder's under a later keyring; null where she is in it no more.</summary>
    public KeysInForce? Following(KeyringChain chain, byte[] journal) => HolderKeys is null ? null : Of(chain, HolderKeys, journal);

    /// <summary>The member who wrote an event, with the role that she had then; null where there is none.</summary>
    public Holder? WriterOf(long keyring, long number) =>
        Chain.Of(keyring)?.ByNumber((int)number) is { } member && Names.TryGetValue(member.Number, out string? name) ? new Holder(name, member.Role) : null;

    public void Dispose()
    {
        Data.Dispose();
        HolderKeys?.Dispose();
    }

    // From the key in force back, each sealed by the one after it.
    private static DataKeys? Older(KeyringChain chain, DataKey current, byte[] journal)
    {
        Dictionary<int, DataKey> keys = new() { [chain.Current!.Generation] = current };
        foreach (Keyring beginning in chain.All.Where(keyring => keyring.Older is not null).Reverse())
        {
            if (OlderKey.Open(beginning.Older!, keys[beginning.Generation], journal, beginning.Generation) is not { } older)
            {
                foreach (DataKey key in keys.Values)
                {
                    key.Dispose();
                }

                return null;
            }

            keys[beginning.Generation - 1] = older;
        }

        return new DataKeys(keys);
    }
}
