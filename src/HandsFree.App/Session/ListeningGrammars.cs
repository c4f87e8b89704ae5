using HandsFree.App.Hear;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Quantities;
using HandsFree.Language.Grammars;

namespace HandsFree.App.Session;

/// <summary>The grammar of each listening.</summary>
internal sealed class ListeningGrammars(GrammarShelf shelf)
{
    /// <summary>The grammar, or null where nothing is listened for.</summary>
    public Grammar? For(Listening listening) => listening.Kind switch
    {
        ListeningKind.Nothing => null,
        ListeningKind.Commands => shelf.Of("phrases", "paused"),
        ListeningKind.Identity => shelf.Of("identity"),
        ListeningKind.SecondIdentifier => shelf.Of("identity", "second"),
        ListeningKind.YesNo => shelf.Of("confirmation", "yes_no"),
        ListeningKind.NowOrBefore => shelf.Of("confirmation", "now_or_before"),
        ListeningKind.Readings when listening.Awaited is { } sign => shelf.Of("recheck", RuleOf(sign)),
        ListeningKind.Readings => shelf.Of("readings"),
        ListeningKind.Value => shelf.Of("value", RuleOf(Awaited(listening))),
        ListeningKind.Confirmation => shelf.Of("confirmation", RuleOf(Awaited(listening))),
        ListeningKind.Count => shelf.Of("count"),
        ListeningKind.Handover => shelf.Of("handover"),
        _ => throw new ArgumentOutOfRangeException(nameof(listening), listening.Kind, "no grammar for this kind"),
    };

    /// <summary>Every grammar that a round can need, the first one first.</summary>
    public IEnumerable<Grammar> All()
    {
        ListeningKind[] bySign = [ListeningKind.Readings, ListeningKind.Value, ListeningKind.Confirmation];
        IEnumerable<Listening> plain =
        [
            new(ListeningKind.Identity), new(ListeningKind.SecondIdentifier), new(ListeningKind.YesNo), new(ListeningKind.NowOrBefore), new(ListeningKind.Readings), new(ListeningKind.Count),
            new(ListeningKind.Handover), new(ListeningKind.Commands),
        ];
        return plain.Concat(Enum.GetValues<VitalSign>().SelectMany(sign => bySign.Select(kind => new Listening(kind, sign))))
            .Select(For).OfType<Grammar>();
    }

    /// <summary>Sample phrases of a listening, for the dialogue's "options".</summary>
    public IReadOnlyList<string> Examples(Listening listening) =>
        For(listening) is { } grammar ? Language.Help.Examples.Of(grammar) : [];

    private static VitalSign Awaited(Listening listening) =>
        listening.Awaited ?? throw new ArgumentException($"{listening.Kind} without a vital sign", nameof(listening));

    private static string RuleOf(VitalSign sign) => sign switch
    {
        VitalSign.Temperature => "temperature",
        VitalSign.Pulse => "pulse",
        VitalSign.Respirations => "respirations",
        VitalSign.BloodPressure => "pressure",
        VitalSign.OxygenSaturation => "oxygen",
        VitalSign.Weight => "weight",
        VitalSign.Pain => "pain",
        _ => throw new ArgumentOutOfRangeException(nameof(sign), sign, "no such vital sign"),
    };
}
