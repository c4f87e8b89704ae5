using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Journal.Amending;
using HandsFree.Core.Meanings;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Simulation.Bodies;

namespace HandsFree.Simulation.Rounds;

/// <summary>One visit to one resident as the events that the program would have written.</summary>
/// <param name="rules">Decide what follows from a value.</param>
/// <param name="chart">What is known of the resident.</param>
/// <param name="body">What is measured.</param>
/// <param name="aide">The id of who measures.</param>
/// <param name="chance">The chance of this visit.</param>
/// <param name="zone">The home's.</param>
/// <param name="nextId">An id that no other event has.</param>
internal sealed class VisitWriter(
    IRulebook rules, Chart chart, Body body, string aide, Chance chance, TimeZoneInfo zone, Func<string> nextId)
{
    private const int MostRechecks = 2;
    private static readonly TimeSpan Bedside = TimeSpan.FromHours(1);
    private readonly List<JournalEvent> written = [];

    private string Id => chart.Resident.Id;

    /// <summary>The events, oldest first.</summary>
    public List<JournalEvent> Write(IReadOnlyList<VitalSign> due, DateTimeOffset begins)
    {
        if (chance.Happens(0.015))
        {
            NotTakenReason reason = chance.Of([NotTakenReason.Refused, NotTakenReason.NotInRoom, NotTakenReason.Asleep, NotTakenReason.Isolated]);
            written.Add(new NotTakenRecorded(nextId(), aide, begins, Id, null, reason, Said("not taken", begins), "Not taken."));
            return written;
        }

        written.Add(new ResidentIdentified(nextId(), aide, begins, Id, SecondIdentifier.BirthDayAndMonth));
        DateTimeOffset at = begins.AddSeconds(30);
        foreach (VitalSign sign in due)
        {
            at = at.AddSeconds(chance.Between(25, 70));
            at = chance.Happens(0.01) ? NotTaken(sign, at) : chance.Happens(0.003) ? LeftOpen(sign, at) : Take(sign, at, 0, []);
        }

        return [.. written.OrderBy(e => e.At)];
    }

    private DateTimeOffset NotTaken(VitalSign sign, DateTimeOffset at)
    {
        NotTakenReason reason = chance.Of([NotTakenReason.Refused, NotTakenReason.Declined, NotTakenReason.NoEquipment, NotTakenReason.CouldNotObtain]);
        written.Add(new NotTakenRecorded(nextId(), aide, at, Id, sign, reason, Said("refused", at), "Not taken."));
        return at;
    }

    private DateTimeOffset LeftOpen(VitalSign sign, DateTimeOffset at)
    {
        written.Add(new LeftOpen(nextId(), aide, at, Id, sign));
        return at;
    }

    /// <summary>Measures, and measures again where a rule asks for it.</summary>
    private DateTimeOffset Take(VitalSign sign, DateTimeOffset at, int rechecksDone, IReadOnlyList<string> chain)
    {
        double hour = TimeZoneInfo.ConvertTime(at, zone).TimeOfDay.TotalHours;
        Reading reading = body.Measure(sign, at, hour, chance, recheck: rechecksDone > 0);
        Decision decision = rules.Decide(reading, chart.Context(at, rechecksDone));
        if (decision.Outcome == Outcome.AskAgain)
        {
            written.Add(new LeftOpen(nextId(), aide, at, Id, sign));
            return at;
        }

        ReadingRecorded recorded = new(nextId(), aide, at, Id, Confirm(reading, at), decision, rechecksDone > 0, null);
        written.Add(recorded);
        IReadOnlyList<string> together = [.. chain, recorded.Id];
        Recheck? recheck = rechecksDone < MostRechecks ? decision.Recheck : null;
        bool reports = decision.Outcome != Outcome.Accept && (recheck is null || decision.Danger);
        chart.Add(reading, at, reports);
        if (reports)
        {
            Report(sign, decision, together, at);
        }

        if (recheck is not null)
        {
            return AskedAgain(recorded, recheck, rechecksDone, together, at);
        }

        if (chain.Count == 0 && chance.Happens(0.002))
        {
            Correct(recorded, hour, at.AddMinutes(chance.Between(2, 60)));
        }

        return at;
    }

    private DateTimeOffset AskedAgain(ReadingRecorded recorded, Recheck recheck, int rechecksDone, IReadOnlyList<string> together, DateTimeOffset at)
    {
        VitalSign sign = recorded.Confirmed.Reading.Value.Sign;
        written.Add(new RecheckAsked(nextId(), aide, at, Id, sign, recorded.Id, recheck.Rule, recheck.Instruction, at + recheck.After));
        if (recheck.After >= Bedside)
        {
            if (chance.Happens(0.75))
            {
                Take(sign, at + recheck.After + TimeSpan.FromMinutes(chance.Between(-20, 40)), rechecksDone + 1, []);
            }

            return at;
        }

        return chance.Happens(0.97) ? Take(sign, at + recheck.After + TimeSpan.FromSeconds(chance.Between(70, 130)), rechecksDone + 1, together) : at;
    }

    private void Report(VitalSign sign, Decision decision, IReadOnlyList<string> readings, DateTimeOffset at)
    {
        ReportUrgency urgency = decision.Outcome == Outcome.ReportNow ? ReportUrgency.Now : ReportUrgency.ThisShift;
        string situation = string.Join("; ", decision.Reasons.Select(r => r.Text));
        ReportOpened report = new(nextId(), aide, at, Id, urgency, sign, readings, situation, [.. decision.Reasons.Select(r => r.Rule)]);
        written.Add(report);
        Acknowledge(report);
    }

    private void Acknowledge(ReportOpened report)
    {
        DateTimeOffset known = report.At.AddMinutes(report.Urgency == ReportUrgency.Now ? chance.Between(3, 25) : chance.Between(20, 240));
        written.Add(new ReportAcknowledged(nextId(), "nurse-invented", known, report.Id));
        chart.ReportOpenUntil = known > chart.ReportOpenUntil ? known : chart.ReportOpenUntil;
    }

    /// <summary>A slip of the aide, found and put right.</summary>
    private void Correct(ReadingRecorded wrong, double hour, DateTimeOffset at)
    {
        Reading right = body.Measure(wrong.Confirmed.Reading.Value.Sign, wrong.At, hour, chance, recheck: false);
        AmendmentContext context = new([.. written], new Roster([chart.Resident]), rules, aide, at, nextId, "read from the wrong line");
        IReadOnlyList<JournalEvent> amended = Amendments.Corrected(context, wrong, Back(right, at));
        written.AddRange(amended);
        foreach (ReportOpened report in amended.OfType<ReportOpened>())
        {
            Acknowledge(report);
        }
    }

    private Confirmed Confirm(Reading reading, DateTimeOffset at) =>
        Back(reading, at).ByYes(Said("yes", at.AddSeconds(4)), new Attribution(aide, at, at.AddSeconds(4)));

    private static ReadBack Back(Reading reading, DateTimeOffset at)
    {
        string text = ReadBackTexts.Of(reading);
        return ReadBack.Of(new Understood(Said(text.Replace(",", "", StringComparison.Ordinal), at), reading), text, at);
    }

    private static Heard Said(string words, DateTimeOffset at) => new(words, 1, null, null, null, Typed: true, at);
}
