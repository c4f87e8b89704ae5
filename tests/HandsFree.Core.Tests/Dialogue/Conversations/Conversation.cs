using FsCheck;
using FsCheck.Fluent;

namespace HandsFree.Core.Tests.Dialogue.Conversations;

/// <summary>A conversation that FsCheck can make and shorten: the seed decides everything that happens, the steps how much of it.</summary>
/// <param name="Seed">Any integer.</param>
/// <param name="Steps">How many events.</param>
public sealed record Conversation(int Seed, int Steps = Conversation.Long)
{
    public const int Long = 150;
}

/// <summary>Makes conversations. A seed is any integer, whatever the size that FsCheck has reached: its own integers grow with the runs, so
/// that 150 runs gave 66 different conversations.</summary>
public static class AnyConversations
{
    public static Arbitrary<Conversation> Arbitrary() => Arb.From(Seeds.Select(seed => new Conversation(seed)), Shorter);

    private static Gen<int> Seeds =>
        from high in Gen.Choose(short.MinValue, short.MaxValue)
        from low in Gen.Choose(0, ushort.MaxValue)
        select (high << 16) | low;

    // The same conversation, broken off earlier.
    private static IEnumerable<Conversation> Shorter(Conversation conversation)
    {
        for (int less = conversation.Steps / 2; less > 0; less /= 2)
        {
            yield return conversation with { Steps = conversation.Steps - less };
        }
    }
}
