namespace HandsFree.Core.Journal;

/// <summary>Whose record an event belongs to.</summary>
public static class JournalResident
{
    /// <summary>The id of the resident that an event names; null for an event of the round, of a person or of the journal.</summary>
    public static string? ResidentId(this JournalEvent happened) => happened switch
    {
        ResidentIdentified e => e.Resident,
        IdentificationFailed e => e.Resident,
        ReadingRecorded e => e.Resident,
        NotTakenRecorded e => e.Resident,
        AttemptDiscarded e => e.Resident,
        LeftOpen e => e.Resident,
        RecheckAsked e => e.Resident,
        ReportOpened e => e.Resident,
        EnteredInError e => e.Resident,
        ReadingAmended e => e.Resident,
        ReportNoted e => e.Resident,
        PlanMade e => e.Resident,
        PlanWithdrawn e => e.Resident,
        ReadingImported e => e.Resident,
        OrderProposed e => e.Resident,
        _ => null,
    };
}
