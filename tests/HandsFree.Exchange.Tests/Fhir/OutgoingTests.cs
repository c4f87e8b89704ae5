using FsCheck.Xunit;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Residents;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Observations;
using HandsFree.Exchange.Fhir.Outgoing;
using Hl7.Fhir.Model;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir;

public sealed class OutgoingTests
{
    [Property(Arbitrary = [typeof(AnyReading)], MaxTest = 300)]
    public void Any_reading_comes_back_as_it_was_with_codes_of_the_table(Reading reading)
    {
        Observation observation = ObservationWriter.Of(reading);
        observation.Effective = new FhirDateTime("2026-03-03T08:05:30-06:00");
        CodeCheck.Of(observation).ShouldBeEmpty();
        if (reading.How.Observed)
        {
            return; // no LOINC code means a pain that was observed
        }

        Reading read = ObservationReader.Of(observation, Made.Chicago).Read!.Reading;
        read.Value.ShouldBe(reading.Value);
        (read.How.Site, read.How.Arm, read.How.Position).ShouldBe((reading.How.Site, reading.How.Arm, reading.How.Position));
        read.How.Oxygen.ShouldBe(reading.How.Oxygen is { LitresPerMinute: null } ? null : reading.How.Oxygen);
    }

    [Fact]
    public void The_same_record_gives_the_same_bundles_byte_for_byte()
    {
        JournalEvent[] events = [.. Shapes.All["report through its life"]];
        FhirText.Bytes(Outgoing.Bundles(events)[0].Bundle).ShouldBe(FhirText.Bytes(Outgoing.Bundles(events)[0].Bundle));
    }

    [Fact]
    public void Another_home_has_other_ids_for_an_event_of_the_same_id()
    {
        new FhirIds("one").Urn("event/a").ShouldNotBe(new FhirIds("another").Urn("event/a"));
        Guid.Parse(new FhirIds("one").Uuid("event/a")).Version.ShouldBe(8);
    }

    [Fact]
    public void A_bundle_has_at_most_500_entries_and_all_together_have_every_reading_once()
    {
        JournalEvent[] events = [.. Enumerable.Range(0, 700).Select(i => Made.Recorded($"e-{i}", Made.Pulse(72), Made.At.AddMinutes(i), i % 2 == 0 ? "r1" : "r2"))];

        OutgoingBundle[] bundles = Outgoing.Bundles(events);

        bundles.Length.ShouldBe(3);
        bundles.ShouldAllBe(b => b.Bundle.Entry.Count <= OutgoingRecord.MostEntries);
        bundles.Select(b => b.Through).ShouldBe([249, 498, 700]);
        bundles.SelectMany(b => b.Bundle.Entry).Select(e => e.Resource).OfType<Observation>().Select(o => o.Identifier[0].Value).Distinct().Count().ShouldBe(700);
        bundles.ShouldAllBe(b => b.Bundle.Entry.Count(e => e.Resource is Patient) == 2);
        bundles.ShouldAllBe(b => b.Bundle.Entry.Select(e => e.FullUrl).Distinct().Count() == b.Bundle.Entry.Count);
    }

    [Fact]
    public void What_was_touched_after_an_entry_goes_as_a_whole_and_nothing_else()
    {
        JournalEvent[] events = [Made.Recorded("a", Made.Pulse(27)), Made.Recorded("x", Made.Pulse(80)), Made.Recorded("b", Made.Pulse(72), amends: "a")];

        OutgoingBundle bundle = Outgoing.Bundles(events, since: 2).ShouldHaveSingleItem();

        bundle.Through.ShouldBe(3);
        bundle.Bundle.Entry.Select(e => e.Resource).OfType<Observation>().Single().Identifier[0].Value.ShouldBe(Outgoing.Ids.Urn("event/a"));
        bundle.Bundle.Entry.Count(e => e.Resource is Provenance).ShouldBe(2);
        bundle.Earlier.Single().Value.Count.ShouldBe(2);
        Outgoing.Bundles(events, since: 3).ShouldBeEmpty();
    }

    [Fact]
    public void A_report_travels_with_the_readings_on_which_it_rests()
    {
        Resource[] all = Outgoing.Resources(Shapes.All["report through its life"]);
        Communication report = all.OfType<Communication>().ShouldHaveSingleItem();
        report.Status.ShouldBe(EventStatus.Completed);
        report.ReasonReference.Single().Reference.ShouldBe(all.OfType<Observation>().Single().Identifier[0].Value);
        (report.Sent, report.Received).ShouldBe(("2026-03-03T08:08:30-06:00", "2026-03-03T08:10:30-06:00"));
        report.Recipient.Single().Identifier!.Value.ShouldBe("nurse-1");
        report.Note.Select(n => n.Text).ShouldContain("Advised and read back: count again at noon");
        report.Note.Select(n => n.Text).ShouldNotContain(t => t!.Contains("Dr Example", StringComparison.Ordinal));
        all.OfType<Provenance>().Count().ShouldBe(9);
    }

    [Theory]
    [InlineData(72, "N", null)]
    [InlineData(136, "HH", "report now")]
    [InlineData(102, "H", "report this shift")]
    [InlineData(45, "LL", "report now")]
    public void The_rules_are_the_interpretation_and_the_limits_the_range(int pulse, string code, string? words)
    {
        Observation observation = Outgoing.Observation(Made.Recorded("a", Made.Pulse(pulse)));
        observation.Interpretation.Single().Coding[0].Code.ShouldBe(code);
        observation.ReferenceRange.ShouldHaveSingleItem().Text!.ShouldContain("A nurse is told");
        observation.ReferenceRange[0].High!.Code.ShouldBe("/min");
        observation.Note.Any(n => words is not null && n.Text!.Contains(words, StringComparison.Ordinal)).ShouldBe(words is not null);
    }

    [Fact]
    public void An_ordered_limit_is_the_range_and_says_who_ordered_it()
    {
        Roster roster = new([Made.Ada with { OrderedLimits = [new(LimitedValue.Pulse, 45, 120, "Dr Example", new(2026, 2, 1))] }]);
        Observation observation = Outgoing.Bundles([Made.Recorded("a", Made.Pulse(72))], roster: roster)[0].Bundle.Entry.Select(e => e.Resource).OfType<Observation>().Single();
        (observation.ReferenceRange[0].Low!.Value, observation.ReferenceRange[0].High!.Value).ShouldBe((45, 120));
        observation.ReferenceRange[0].Text!.ShouldContain("ordered by Dr Example");
    }

    [Fact]
    public void Without_new_patients_a_bundle_names_them_by_identifier_alone()
    {
        OutgoingBundle bundle = Outgoing.Bundles([Made.Recorded("a", Made.Pulse(72))], newPatients: false)[0];
        bundle.Bundle.Entry.ShouldAllBe(e => !(e.Resource is Patient));
        bundle.Bundle.Entry.Select(e => e.Resource).OfType<Observation>().Single().Subject!.Reference
            .ShouldBe("Patient?identifier=https%3A%2F%2Fhome.example%2Fresidents%7Cr1");
        FhirText.Bytes(bundle.Bundle).AsSpan().IndexOf("Quill"u8).ShouldBe(-1);
    }

    [Fact]
    public void Only_the_residents_that_are_asked_for_are_in_it()
    {
        JournalEvent[] events = [Made.Recorded("a", Made.Pulse(72)), Made.Recorded("b", Made.Pulse(72), resident: "r2")];
        Outgoing.Bundles(events, residents: new HashSet<string> { "r2" })[0].Bundle.Entry.Select(e => e.Resource).OfType<Observation>()
            .Single().Subject!.Identifier!.Value.ShouldBe("r2");
    }

    [Fact]
    public void What_is_no_reading_no_report_and_no_amendment_is_not_passed_on() =>
        Outgoing.Bundles(
        [
            new RoundStarted("1", "aide-7", Made.At, "hash"), new ResidentIdentified("2", "aide-7", Made.At, "r1", SecondIdentifier.BandNumber),
            new LeftOpen("3", "aide-7", Made.At, "r1", Core.Quantities.VitalSign.Pulse),
            new AttemptDiscarded("4", "aide-7", Made.At, "r1", Made.Heard("pulse", Made.At), Made.Pulse(27), null, "no"),
            new RecheckAsked("5", "aide-7", Made.At, "r1", Core.Quantities.VitalSign.Pulse, "x", "rule", "Again.", Made.At),
            new EnteredInError("6", "aide-7", Made.At, "r1", "5", "undo"), new RecordViewed("7", "nurse-1", Made.At, "handover"),
        ]).ShouldBeEmpty();
}
