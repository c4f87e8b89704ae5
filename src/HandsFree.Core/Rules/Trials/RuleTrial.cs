using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Trials;

/// <summary>What a rulebook would have made of past readings. Each reading is decided with what was known when it was taken: the earlier
/// readings of its resident and today's roster. A report that waits for a recheck is counted as a recheck and as a report, for nobody
/// knows what the recheck would have shown.</summary>
/// <param name="Sets">How many sets there were: readings of one resident less than an hour apart.</param>
/// <param name="Readings">How many readings.</param>
/// <param name="All">All rules together; a reading of which several rules would report is one report.</param>
/// <param name="Rules">Each rule that decided something; a reading counts for every rule that decided it.</param>
public sealed record RuleTrial(int Sets, int Readings, RuleCount All, IReadOnlyDictionary<string, RuleCount> Rules)
{
    /// <summary>Readings of one resident less than this apart are one set (common practice, no source).</summary>
    private static readonly TimeSpan SameSet = Journal.RecheckChains.OneSet;

    /// <summary>Tries a rulebook.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="past">The readings, in any order of residents; those of one resident oldest first.</param>
    /// <param name="resident">The resident of an id, for orders and usual values.</param>
    public static RuleTrial Of(IRulebook rules, IEnumerable<TrialReading> past, Func<string, Resident> resident)
    {
        int sets = 0;
        int readings = 0;
        RuleCount all = RuleCount.None;
        Dictionary<string, RuleCount> each = new(StringComparer.Ordinal);
        foreach (IGrouping<string, TrialReading> hers in past.GroupBy(r => r.Resident))
        {
            List<PastReading> earlier = [];
            Dictionary<VitalSign, int> rechecks = [];
            Resident who = resident(hers.Key);
            foreach (TrialReading reading in hers)
            {
                VitalSign sign = reading.Past.Reading.Value.Sign;
                sets += earlier.Count == 0 || reading.Past.MeasuredAt - earlier[^1].MeasuredAt >= SameSet ? 1 : 0;
                rechecks[sign] = reading.IsRecheck ? rechecks.GetValueOrDefault(sign) + 1 : 0;
                Decision decision = rules.Decide(reading.Past.Reading, new(who, earlier, rechecks[sign], reading.Past.MeasuredAt, reading.Symptoms));
                readings++;
                all += Count(decision, r => true);
                foreach (string rule in Makers(decision))
                {
                    each[rule] = each.GetValueOrDefault(rule, RuleCount.None) + Count(decision, r => r == rule);
                }

                earlier.Add(reading.Past);
            }
        }

        return new(sets, readings, all, each);
    }

    private static IEnumerable<string> Makers(Decision decision) =>
        decision.Reasons.Where(r => decision.Outcome != Outcome.Accept && r.Outcome == decision.Outcome).Select(r => r.Rule)
            .Concat(decision.Recheck is { } recheck ? [recheck.Rule] : []).Distinct();

    private static RuleCount Count(Decision decision, Func<string, bool> concerns)
    {
        bool decides = decision.Reasons.Any(r => r.Outcome == decision.Outcome && concerns(r.Rule));
        return new(
            decision.Recheck is { } recheck && concerns(recheck.Rule) ? 1 : 0,
            decides && decision.Outcome == Outcome.ReportThisShift ? 1 : 0,
            decides && decision.Outcome == Outcome.ReportNow ? 1 : 0,
            decides && decision.Outcome == Outcome.AskAgain ? 1 : 0);
    }
}
