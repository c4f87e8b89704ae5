using System.Globalization;
using HandsFree.App.Composition;
using HandsFree.Core.Journal;

namespace HandsFree.App.Auditing;

/// <summary>What a supervisor wants to know of a journal: who opened it and who tried to, who looked at whom, what was changed of people, roster
/// and settings, what left the program, and what does not fit (45 CFR 164.312(b), audit controls; cited from memory).</summary>
internal sealed class Audit
{
    /// <summary>A clock that goes back by less is no finding: it is set by the network all the time (a proposal: common practice, no source).</summary>
    private static readonly TimeSpan Backward = TimeSpan.FromMinutes(2);

    private readonly List<AuditLine> lines = [];

    /// <summary>All lines, in the order of their groups, the latest last.</summary>
    public IReadOnlyList<AuditLine> Lines => [.. lines.OrderBy(line => line.Group)];

    /// <summary>The audit of some events.</summary>
    /// <param name="events">With their numbers, oldest first.</param>
    public static Audit Of(IEnumerable<(long Sequence, JournalEvent Event)> events)
    {
        Audit audit = new();
        DateTimeOffset? latest = null;
        foreach ((long sequence, JournalEvent happened) in events)
        {
            if (latest is { } before && happened.At < before - Backward)
            {
                audit.Add(AuditGroup.Alarming, happened, null, $"The clock was set back by {Words(before - happened.At)} before entry {sequence}: times around it may be wrong.");
            }

            latest = happened.At;
            audit.Take(sequence, happened);
        }

        return audit;
    }

    private void Take(long sequence, JournalEvent happened)
    {
        switch (happened)
        {
            case NotBelieved e:
                Add(AuditGroup.Alarming, e, e.Person, $"Entry {sequence} was not believed and nothing follows from it: {e.What} in the name of {e.Person}, {e.Why}.");
                break;
            case EmergencyOpened e:
                Add(AuditGroup.Alarming, e, e.Person, $"The record was opened with the emergency key: {e.Why}");
                break;
            case JournalRestored e:
                Add(AuditGroup.Alarming, e, e.Person, $"{e.Person} restored a backup of {e.Events} entries{(e.OtherDevice ? " of another device" : "")}{(e.Lost > 0 ? $"; {e.Lost} entries that were there are not in it" : "")}.");
                break;
            case JournalAccepted e:
                Add(AuditGroup.Alarming, e, e.Person, $"{e.Person} took the record as it lay there, with {e.Events} entries: {e.Why}");
                break;
            case DeviceRetired e:
                Add(AuditGroup.Alarming, e, e.Person, $"{e.Person} retired this device: {e.Why}");
                break;
            case OpeningFailed e:
                lines.Add(new AuditLine(AuditGroup.Failed, e.When, e.Who, $"Somebody tried to open the record and did not: {e.What}{(e.Who is { } who ? $" of {who}" : "")}."));
                break;
            case UnlockFailed e:
                Add(AuditGroup.Failed, e, e.Person, $"Somebody tried to unlock the session of {e.Person} and did not.");
                break;
            case PersonAdded e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} set {e.Who} up as {EnumWords.Of(e.Role)}.");
                break;
            case PersonRemoved e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} removed {e.Who}.");
                break;
            case PinChanged e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} gave {(e.Who == e.Person ? "herself" : e.Who)} a new PIN or passphrase.");
                break;
            case SpokenDigitsSet e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} set spoken digits for {(e.Who == e.Person ? "herself" : e.Who)}.");
                break;
            case RecoveryKeyMade e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} made a new recovery key.");
                break;
            case EmergencyKeyMade e:
                Add(AuditGroup.People, e, e.Person, $"{e.Person} made a new emergency key.");
                break;
            case RosterKept e:
                Add(AuditGroup.Home, e, e.Person, $"{e.Person} changed the roster or the ordered limits.");
                break;
            case HomeFileKept e:
                Add(AuditGroup.Home, e, e.Person, $"{e.Person} changed {e.File}.");
                break;
            case RecordTakenOut e:
                Add(AuditGroup.Out, e, e.Person, $"{e.Person} took out {e.What}, to {e.To}: {e.Why}");
                break;
            case RecordViewed e:
                Add(AuditGroup.Looks, e, e.Person, $"{e.Person} looked at: {e.What}.");
                break;
            case ResidentIdentified e:
                Add(AuditGroup.Looks, e, e.Person, $"{e.Person} worked with resident {e.Resident} in a round.");
                break;
            default:
                break;
        }
    }

    private void Add(AuditGroup group, JournalEvent happened, string? person, string text) => lines.Add(new AuditLine(group, happened.At, person, text));

    private static string Words(TimeSpan back) => back.TotalDays >= 2 ? string.Create(CultureInfo.InvariantCulture, $"{back.TotalDays:0} days")
        : back.TotalHours >= 2 ? string.Create(CultureInfo.InvariantCulture, $"{back.TotalHours:0} hours")
        : string.Create(CultureInfo.InvariantCulture, $"{back.TotalMinutes:0} minutes");
}
