using System.Security.Cryptography;

namespace HandsFree.Store.Keys;

/// <summary>All keyrings that a journal had, each checked against the one before.</summary>
internal sealed class KeyringChain
{
    private readonly List<(Keyring Keyring, byte[] Hash)> all;
    private readonly byte[] none;

    private KeyringChain(List<(Keyring, byte[])> all, byte[] journal) => (this.all, none) = (all, Keyring.None(journal));

    /// <summary>The one in force; null as long as nobody is set up.</summary>
    public Keyring? Current => all.Count == 0 ? null : all[^1].Keyring;

    /// <summary>Its number, 0 where there is none.</summary>
    public int Version => all.Count;

    /// <summary>The highest number that a member ever had.</summary>
    public int HighestNumber => all.SelectMany(each => each.Keyring.Members).Select(member => member.Number).DefaultIfEmpty(0).Max();

    /// <summary>All of them, the oldest first.</summary>
    public IEnumerable<Keyring> All => all.Select(each => each.Keyring);

    /// <summary>The SHA-256 of the key that signed the first one.</summary>
    public byte[]? Founder { get; private init; }

    /// <summary>Checks the rows; the chain, or what is wrong.</summary>
    public static (KeyringChain? Chain, string? Wrong) Read(IReadOnlyList<KeyringRow> rows, byte[] journal)
    {
        List<(Keyring Keyring, byte[] Hash)> all = [];
        byte[]? founder = null;
        int highest = 0;
        foreach (KeyringRow row in rows)
        {
            Keyring? next = Keyring.Read(row.Body);
            (Keyring Keyring, byte[] Hash)? last = all.Count == 0 ? null : all[^1];
            Member? signer = (last?.Keyring ?? next)?.ByNumber(row.Signer);
            string? wrong = next is null || row.Version != next.Version ? "can't be read"
                : signer is null ? "is signed by nobody who is known"
                : last is var (before, hash) ? KeyringRules.WhyNot(before, hash, next, signer, highest)
                : KeyringRules.WhyNotFirst(next, row.Signer, journal);
            wrong ??= PublicKeys.HasSigned(signer!.Signs, Keyring.Signed(journal, row.Body), row.Signature) ? null : "is not signed as it says";
            if (wrong is not null)
            {
                return (null, $"the list of who may open, {row.Version}, {wrong}");
            }

            founder ??= SHA256.HashData(signer!.Signs);
            highest = Math.Max(highest, next!.Members.Select(member => member.Number).DefaultIfEmpty(0).Max());
            all.Add((next, SHA256.HashData(row.Body)));
        }

        return (new KeyringChain(all, journal) { Founder = founder }, null);
    }

    /// <summary>The keyring of a number, or null.</summary>
    public Keyring? Of(long version) => version >= 1 && version <= all.Count ? all[(int)version - 1].Keyring : null;

    /// <summary>The hash of a number, that of none for 0; null where there is no such keyring.</summary>
    public byte[]? HashOf(long version) => version == 0 ? none : version >= 1 && version <= all.Count ? all[(int)version - 1].Hash : null;

    /// <summary>The data key's generation under a keyring.</summary>
    public int GenerationOf(long version) => Of(version)?.Generation ?? 1;
}
