namespace HandsFree.Core.Meanings;

/// <summary>The texts that the grammars' tags carry, and what each stands for.</summary>
internal static class Words
{
    public static readonly IReadOnlyDictionary<string, CommandWord> Commands = new Dictionary<string, CommandWord>
    {
        ["repeat"] = CommandWord.Repeat,
        ["read back"] = CommandWord.Repeat,
        ["help"] = CommandWord.Help,
        ["options"] = CommandWord.Options,
        ["go back"] = CommandWord.GoBack,
        ["cancel"] = CommandWord.Cancel,
        ["stop"] = CommandWord.Stop,
        ["pause"] = CommandWord.Pause,
        ["continue"] = CommandWord.Continue,
        ["next resident"] = CommandWord.NextResident,
        ["done"] = CommandWord.Done,
        ["wrong resident"] = CommandWord.WrongResident,
        ["undo"] = CommandWord.Undo,
        ["goodbye"] = CommandWord.Goodbye,
        ["call the nurse"] = CommandWord.NurseNeeded,
        ["nurse needed"] = CommandWord.NurseNeeded,
        ["next"] = CommandWord.Next,
        ["previous"] = CommandWord.Previous,
        ["dizzy"] = CommandWord.Unwell,
        ["chest pain"] = CommandWord.ChestPain,
    };

    public static readonly IReadOnlyDictionary<string, NotTakenReason> Reasons = new Dictionary<string, NotTakenReason>
    {
        ["not taken"] = NotTakenReason.Unsaid,
        ["refused"] = NotTakenReason.Refused,
        ["declined"] = NotTakenReason.Declined,
        ["asleep"] = NotTakenReason.Asleep,
        ["not in the room"] = NotTakenReason.NotInRoom,
        ["not available"] = NotTakenReason.NotInRoom,
        ["isolated"] = NotTakenReason.Isolated,
        ["no equipment"] = NotTakenReason.NoEquipment,
        ["could not obtain"] = NotTakenReason.CouldNotObtain,
    };

    public static readonly IReadOnlyDictionary<string, CountWord> Counting = new Dictionary<string, CountWord>
    {
        ["count"] = CountWord.Start,
        ["start counting"] = CountWord.Start,
        ["count pulse"] = CountWord.StartPulse,
        ["thirty seconds"] = CountWord.ThirtySeconds,
        ["sixty seconds"] = CountWord.SixtySeconds,
        ["irregular"] = CountWord.Uneven,
        ["uneven"] = CountWord.Uneven,
    };

    public static readonly IReadOnlyDictionary<string, RoundWord> Round = new Dictionary<string, RoundWord>
    {
        ["machine"] = RoundWord.Machine,
        ["by hand"] = RoundWord.ByHand,
        ["pressure"] = RoundWord.Cuff,
        ["was resting"] = RoundWord.WasResting,
        ["was active"] = RoundWord.WasActive,
        ["private"] = RoundWord.Private,
        ["posture test"] = RoundWord.PostureTest,
        ["who is next"] = RoundWord.WhoIsNext,
    };

    public static readonly IReadOnlyDictionary<string, QueryKind> Queries = new Dictionary<string, QueryKind>
    {
        ["handover"] = QueryKind.Handover,
        ["shift list"] = QueryKind.Handover,
        ["who needs a recheck"] = QueryKind.WhoNeedsARecheck,
        ["open reports"] = QueryKind.OpenReports,
        ["next"] = QueryKind.Next,
        ["repeat"] = QueryKind.Repeat,
        ["previous"] = QueryKind.Previous,
        ["details"] = QueryKind.Details,
        ["who was not taken"] = QueryKind.WhoWasNotTaken,
        ["who refused"] = QueryKind.WhoRefused,
        ["who has a fever"] = QueryKind.WhoHasAFever,
        ["last pulse"] = QueryKind.LastValue,
        ["last"] = QueryKind.LastValue,
        ["who is new or changed"] = QueryKind.WhoIsNewOrChanged,
        ["how many are left"] = QueryKind.HowManyAreLeft,
        ["since when"] = QueryKind.SinceWhen,
        ["since"] = QueryKind.Since,
        ["room"] = QueryKind.Room,
        ["goodbye"] = QueryKind.Goodbye,
    };
}
