using System.Globalization;
using System.Text;
using System.Text.Json;
using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>One event of the journal as a line.</summary>
internal static class JournalLine
{
    /// <summary>The event's own JSON with its number before it: {"sequence":1,"schema":1,"entry":{…}}.</summary>
    public static string Json(JournalEntry entry) =>
        string.Create(CultureInfo.InvariantCulture, $"{{\"sequence\":{entry.Sequence},{Encoding.UTF8.GetString(entry.Body.Span)[1..]}");

    /// <summary>The kind of event, as its JSON names it: "reading recorded".</summary>
    public static string Kind(JournalEntry entry)
    {
        using JsonDocument json = JsonDocument.Parse(entry.Body);
        return json.RootElement.GetProperty("entry").GetProperty("type").GetString()!;
    }

    /// <summary>Number, time, room and bed, what happened.</summary>
    public static string Text(long sequence, JournalEvent happened, Home home)
    {
        string when = home.Settings.Here(happened.At).ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
        string where = happened.ResidentId() is { } id ? $" {Place(home.Roster.ById(id), id)}" : "";
        return $"{sequence,6} {when}{where}: {home.Settings.Wording.Of(What(happened))}";
    }

    private static string Place(Resident? resident, string id) => resident switch
    {
        null => $"resident {id}",
        { Bed: { } bed } => $"room {resident.Room} bed {bed.ToUpperInvariant()}",
        _ => $"room {resident.Room}",
    };

    private static string Amended(ReadingAmended e) => string.Join(", ", new[]
    {
        e.Event is { } was ? $"was {was}" : null,
        e.Becomes is { } becomes ? $"is {becomes}" : null,
        e.MovedTo is { } to ? $"moved to resident {to}" : null,
    }.OfType<string>());

    /// <summary>What happened, without when and where.</summary>
    public static string What(JournalEvent happened) => happened switch
    {
        RoundStarted => "round started",
        RoundEnded => "round ended",
        RoundResumed => "round resumed",
        DialogueTold => "told",
        ResidentIdentified => "resident identified",
        IdentificationFailed e => $"not identified: {e.Why}",
        ReadingRecorded e => $"{(e.IsRecheck ? "recheck saved" : "saved")}: {ReadBackTexts.Of(e.Confirmed.Reading)} ({EnumWords.Of(e.Decision.Outcome)})",
        NotTakenRecorded e => $"not taken: {(e.Sign is { } sign ? EnumWords.Of(sign) : "all that was open")}, {EnumWords.Of(e.Reason)}",
        AttemptDiscarded e => $"discarded: {e.Why}",
        LeftOpen e => $"left open: {EnumWords.Of(e.Sign)}",
        RecheckAsked e => $"recheck asked: {EnumWords.Of(e.Sign)}, {e.Instruction}",
        ReportOpened e => $"report opened ({EnumWords.Of(e.Urgency)}): {e.Situation}",
        ReportTold e => $"report told: {e.Report}, {EnumWords.Of(e.Whom)}{(e.Who is { } who ? $" ({who})" : "")}, {EnumWords.Of(e.How)}, by {e.Person}",
        ReportAcknowledged e => $"report acknowledged: {e.Report}, by {e.Person}{(e.Advised is { } advised ? $", advised and read back: {advised}" : "")}",
        ReportClosed e => $"report closed: {e.Report}, by {e.Person}: {e.Outcome}",
        PlanMade e => $"plan by {e.Person} for report {e.Report}: {PlanTexts.InFigures(e)}, until {e.Until.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}{(e.OrderedBy is { } ordered ? $", ordered by {ordered}" : "")}{(e.Text.Length > 0 ? $", {e.Text}" : "")}",
        PlanWithdrawn e => $"plan {e.Plan} withdrawn by {e.Person}: {e.Why}",
        EnteredInError e => $"entered in error: {e.Event}, {e.Reason}",
        ReadingAmended e => $"amended by {e.Person} ({EnumWords.Of(e.Kind)}): {Amended(e)}, because: {e.Reason}",
        ReportNoted e => $"noted on report {e.Report}: {e.Text}",
        PersonAdded e => $"person added: {e.Who}, {EnumWords.Of(e.Role)}, by {e.Person}",
        PersonRemoved e => $"person removed: {e.Who}, by {e.Person}",
        PinChanged e => $"new PIN: {e.Who}, by {e.Person}{(e.ByRecoveryKey ? " with the recovery key" : "")}",
        RecoveryKeyMade e => $"recovery key made by {e.Person}",
        RecordViewed e => $"viewed by {e.Person}: {e.What}",
        JournalRestored e => $"restored from a backup of {e.Events} events{(e.OtherDevice ? " of another device" : "")}{(e.Lost > 0 ? $"; {e.Lost} events that were there are not in it" : "")}, by {e.Person}",
        JournalAccepted e => $"taken as it is, {e.Events} events, by {e.Person}: {e.Why}",
        OpeningFailed e => $"opening failed at {e.When.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture)}: {e.What}{(e.Who is { } tried ? $" of {tried}" : "")}",
        EmergencyKeyMade e => $"emergency key made by {e.Person}",
        EmergencyOpened e => $"OPENED WITH THE EMERGENCY KEY: {e.Why}",
        DeviceRetired e => $"device retired by {e.Person}: {e.Why}",
        HomeFileKept e => $"{e.File} {(e.Content is null ? "taken away" : "changed")} by {e.Person}",
        NotBelieved e => $"NOT BELIEVED, nothing follows from it: {e.What} in the name of {e.Person}, {e.Why}",
        RulesKept e => $"rules kept: {e.Hash[..Math.Min(12, e.Hash.Length)]}, {e.Files.Count} files",
        RosterKept e => $"roster in force: {e.Hash[..Math.Min(12, e.Hash.Length)]}{(e.Content is null ? "" : ", kept")}",
        SessionLocked e => $"session of {e.Person} locked",
        SessionUnlocked e => $"session of {e.Person} unlocked: {EnumWords.Of(e.By)}",
        UnlockFailed e => $"session of {e.Person}: a try to unlock it failed",
        SpokenDigitsSet e => $"spoken digits set: {e.Who}, by {e.Person}",
        AudioKept e => $"recording kept: {e.Clip[..Math.Min(12, e.Clip.Length)]}, for {e.For}",
        AudioDeleted e => $"recording deleted by {e.Person}: {e.Clip[..Math.Min(12, e.Clip.Length)]}, {e.Why}",
        RecordTakenOut e => $"taken out by {e.Person}: {e.What}, to {e.To}, because: {e.Why}",
        ReadingImported e => $"imported: {ReadBackTexts.Of(e.Reading)}, measured {e.MeasuredAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}, from {e.Source}",
        OrderProposed e => $"limit proposed: {PlanTexts.InFigures(e.Limit)}, ordered by {e.Limit.OrderedBy}, from {e.Source}",
        ProposalSettled e => $"proposed limit {(e.Accepted ? "accepted" : "refused")} by {e.Person}: {e.Proposal}{(e.Reason is { } reason ? $", {reason}" : "")}",
        RecordDelivered e => $"delivered to {e.To}{(e.Unit is { } unit ? $", unit {unit}" : "")}: up to entry {e.Through}",
        _ => throw new InvalidOperationException($"no line for {happened.GetType().Name}"),
    };
}
