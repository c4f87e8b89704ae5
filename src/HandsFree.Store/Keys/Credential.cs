namespace HandsFree.Store.Keys;

/// <summary>What unlocks a journal.</summary>
public abstract record Credential
{
    private Credential()
    {
    }

    /// <summary>The device alone: enough as long as no person is set up.</summary>
    public sealed record Device : Credential;

    /// <summary>A person's PIN or passphrase, on this device.</summary>
    /// <param name="Id">The person's id.</param>
    /// <param name="Pin">PIN or passphrase.</param>
    public sealed record Person(string Id, Pin Pin) : Credential;

    /// <summary>The supervisor's key on paper, on any device.</summary>
    /// <param name="Key">The key.</param>
    public sealed record Recovery(RecoveryKey Key) : Credential;

    /// <summary>The key in the sealed envelope, for when nobody who has a PIN is there.</summary>
    /// <param name="Key">The key.</param>
    public sealed record Emergency(RecoveryKey Key) : Credential;
}
