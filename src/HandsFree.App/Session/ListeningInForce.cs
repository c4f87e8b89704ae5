using HandsFree.Core.Dialogue;

namespace HandsFree.App.Session;

/// <summary>What is listened for now.</summary>
/// <param name="Number">Counts the listenings of the session.</param>
/// <param name="For">What the dialogue asked for.</param>
/// <param name="Since">Speech that began before is not for this one.</param>
internal sealed record ListeningInForce(int Number, Listening For, DateTimeOffset Since);
