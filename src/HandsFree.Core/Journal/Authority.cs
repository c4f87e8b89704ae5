using HandsFree.Core.People;
using HandsFree.Core.Reports;

namespace HandsFree.Core.Journal;

/// <summary>Which events need the signature of the person in whose name they are, and what her role must be. Asked where such an event is
/// made and again wherever it is read: whoever may open the journal could write anything into it with a program of her own.</summary>
public static class Authority
{
    /// <summary>The least role that may write such an event, under her own signature; null for what anybody at work writes.</summary>
    public static Role? Least(JournalEvent happened) => happened switch
    {
        ReportAcknowledged or ReportClosed or PlanMade or PlanWithdrawn => Role.Nurse,
        RecordTakenOut or RecordDelivered or ReadingImported or OrderProposed or ProposalSettled => Role.Nurse,
        ReportTold { Whom: not Told.Nurse } => Role.Nurse,
        RosterKept => Role.Nurse,
        ReportTold or ReportNoted or ReadingAmended or EnteredInError or EmergencyOpened => Role.Aide,
        PinChanged changed => changed.Who == changed.Person ? Role.Aide : Role.Supervisor,
        SpokenDigitsSet set => set.Who == set.Person ? Role.Aide : Role.Supervisor,
        PersonAdded or PersonRemoved or RecoveryKeyMade or JournalRestored or JournalAccepted or HomeFileKept or EmergencyKeyMade or DeviceRetired => Role.Supervisor,
        _ => null,
    };

    /// <summary>Why an event is not believed; null where it is.</summary>
    /// <param name="happened">The event.</param>
    /// <param name="writer">Who wrote it and the role that she had then, by the journal; null where nobody was set up.</param>
    /// <param name="hasSigned">Whether it bears her signature; asked only where it matters.</param>
    public static string? WhyNot(JournalEvent happened, (string Person, Role Role)? writer, Func<bool> hasSigned)
    {
        ArgumentNullException.ThrowIfNull(happened);
        ArgumentNullException.ThrowIfNull(hasSigned);
        return writer is not var (person, role) || Least(happened) is not { } least ? null
            : person != happened.Person ? $"written by {person}, not by {happened.Person}"
            : role < least ? $"written by {Named(role)}; it takes {Named(least)}"
            : !hasSigned() ? $"not signed by {person}"
            : null;
    }

    private static string Named(Role role) => role switch
    {
        Role.Aide => "an aide",
        Role.Nurse => "a nurse",
        Role.Supervisor => "a supervisor",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "no such role"),
    };
}
