using System.Collections.Concurrent;
using HandsFree.Core.Dialogue;
using HandsFree.Core.Journal;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Rules;
using Shouldly;
using Xunit;

namespace HandsFree.Core.Tests.Dialogue;

/// <summary>Any conversation, cut off at any step, restored and gone on with, is the one that was not cut. HANDSFREE_CONVERSATIONS says how
/// many; 2,000 in CI, 200 elsewhere unless set.</summary>
public sealed class CutAnywhereTests
{
    private static readonly IRulebook Real = Rulebook.Load().Rulebook.ShouldNotBeNull();

    private static int Conversations =>
        int.TryParse(Environment.GetEnvironmentVariable("HANDSFREE_CONVERSATIONS"), out int asked) ? asked
        : Environment.GetEnvironmentVariable("CI") is { Length: > 0 } ? 2000
        : 200;

    [Fact]
    public void Any_conversation_cut_anywhere_is_the_one_that_was_not_cut()
    {
        int cuts = 0;
        int other = 0;
        ConcurrentBag<(int Seed, string What)> differences = [];
        Parallel.For(0, Conversations, seed =>
        {
            Random chance = new(seed);
            CutConversation talk = new(seed, seed % 4 == 0 ? Real : new TestRules());
            CutConversation.Outcome whole = talk.Run();
            CutConversation.Outcome cut = talk.Run([.. Enumerable.Range(0, chance.Next(1, 4)).Select(_ => chance.Next(2 * talk.Length))], powerCut: seed % 3 == 0);
            if (cut.IsAnother)
            {
                Interlocked.Increment(ref other);
            }
            else if (Difference(whole.Journal, cut.Journal) + Difference(whole.State, cut.State) is { Length: > 0 } difference)
            {
                differences.Add((seed, difference));
            }

            cut.Events.Select(e => e.Id).ShouldBeUnique($"seed {seed}");
            Interlocked.Add(ref cuts, cut.Cuts);
        });
        Assert.True(differences.IsEmpty, $"{differences.Count} of {Conversations} differ; seed {differences.OrderBy(d => d.Seed).FirstOrDefault()}");
        cuts.ShouldBeGreaterThan(Conversations / 2);
        other.ShouldBeLessThan(Conversations / 5);
    }

    // The first line that differs, with those before it.
    private static string Difference(string one, string other)
    {
        string[] left = one.Split('\n');
        string[] right = other.Split('\n');
        int first = left.Zip(right).TakeWhile(two => two.First == two.Second).Count();
        return one == other ? "" : $"{string.Join('\n', left.Skip(first - 8).Take(10))}\n--- cut:\n{string.Join('\n', right.Skip(first).Take(3))}";
    }

    [Fact]
    public void Every_value_that_must_be_told_has_a_report_or_a_recheck_that_waits_or_was_settled_by_one()
    {
        Parallel.For(0, Conversations, seed =>
        {
            Random chance = new(seed);
            CutConversation talk = new(seed, seed % 2 == 0 ? Real : new TestRules());
            CutConversation.Outcome cut = talk.Run([chance.Next(talk.Length)], powerCut: seed % 3 == 0);
            HashSet<string> gone = [.. cut.Events.OfType<EnteredInError>().Select(e => e.Event)];
            ReadingRecorded[] readings = [.. PastReadings.Standing(cut.Events)];
            foreach (ReadingRecorded reading in readings.Where(r => r.Decision.Outcome is not Outcome.Accept))
            {
                VitalSign sign = reading.Confirmed.Reading.Value.Sign;
                bool reported = cut.Events.OfType<ReportOpened>().Any(r => r.Resident == reading.Resident && r.Sign == sign && !gone.Contains(r.Id));
                bool waits = RecheckChains.Waiting(cut.Events).Any(c => c.Readings.Contains(reading));
                bool settled = readings.SkipWhile(r => r != reading).Skip(1)
                    .Any(r => r.IsRecheck && r.Resident == reading.Resident && r.Confirmed.Reading.Value.Sign == sign);
                (reported || waits || settled).ShouldBeTrue($"seed {seed}: {reading.Confirmed.ReadBack.Text} {reading.Decision.Outcome} is forgotten");
            }
        });
    }
}
