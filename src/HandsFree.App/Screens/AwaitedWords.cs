using HandsFree.Core.Dialogue;

namespace HandsFree.App.Screens;

/// <summary>What is awaited, in words that tell nothing of the resident.</summary>
internal static class AwaitedWords
{
    public static string Of(Listening listening) => listening.Kind switch
    {
        ListeningKind.Nothing => "",
        ListeningKind.Commands => "paused: continue",
        ListeningKind.Identity => "room and bed",
        ListeningKind.SecondIdentifier => "second identifier",
        ListeningKind.YesNo or ListeningKind.Confirmation => "yes or no",
        ListeningKind.NowOrBefore => "yes, or before",
        ListeningKind.Readings => "readings",
        ListeningKind.Value => "the value",
        ListeningKind.Count => listening.AnswerAwaited ? "the count" : "count",
        ListeningKind.Handover => "handover",
        _ => throw new ArgumentOutOfRangeException(nameof(listening), listening.Kind, "no words for this kind"),
    };
}
