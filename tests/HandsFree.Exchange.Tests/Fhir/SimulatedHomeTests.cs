using HandsFree.Core.Journal;
using HandsFree.Exchange.Fhir;
using HandsFree.Exchange.Fhir.Codes;
using HandsFree.Exchange.Fhir.Outgoing;
using HandsFree.Simulation;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Fhir;

public sealed class SimulatedHomeTests
{
    private const int Sampled = 25;

    // Three weeks: reports, rechecks, amendments, what was not taken.
    [Fact]
    public void A_sample_of_a_simulated_home_is_valid_and_all_of_it_has_codes_of_the_table()
    {
        SimulatedHome home = new(new SimulationPlan(new(2026, 3, 3, 16, 0, 0, TimeSpan.Zero)) { Residents = 20, Days = 21 }, Made.Rules);
        JournalEvent[] events = [.. home.Events()];
        Resource[] all = [.. Outgoing.Bundles(events, roster: home.Roster).SelectMany(b => b.Bundle.Entry).Select(e => e.Resource!)];

        all.OfType<Observation>().Select(o => o.Identifier[0].Value).Distinct().Count()
            .ShouldBe(events.OfType<ReadingRecorded>().Count(r => r.Amends is null) + events.OfType<NotTakenRecorded>().Count());
        all.OfType<Communication>().Count().ShouldBe(events.OfType<ReportOpened>().Count());
        all.SelectMany(CodeCheck.Of).ShouldBeEmpty();
        foreach (var kind in all.GroupBy(r => r.TypeName))
        {
            Resource[] of = [.. kind];
            foreach (Resource resource in of.Where((_, i) => i % Math.Max(1, of.Length / Sampled) == 0))
            {
                R4Validator.Profiles(resource).ShouldBeEmpty(FhirText.Bytes(resource) is var json ? System.Text.Encoding.UTF8.GetString(json) : "");
            }
        }
    }

    /// <summary>Any files that "export fhir" wrote, such as those of the made-up home: HANDSFREE_BUNDLES names their folder.</summary>
    [Fact]
    public void Bundles_in_a_folder_are_valid()
    {
        string? folder = Environment.GetEnvironmentVariable("HANDSFREE_BUNDLES");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "HANDSFREE_BUNDLES names no folder with bundles");
        string[] files = Directory.GetFiles(folder!, "*.json");
        files.ShouldNotBeEmpty();
        foreach (string file in files)
        {
            R4Validator.All(new FhirJsonDeserializer().Deserialize<Bundle>(File.ReadAllText(file))).ShouldBeEmpty(file);
        }
    }
}
