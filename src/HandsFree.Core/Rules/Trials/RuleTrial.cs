using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Rules.Trials;

/// <summary>What a rulebook would have made of past readings. Each reading is decided with what was known when it was taken: the earlier
/// readings of its resident, the rechecks that these rules would have asked for, and today's roster. Where the recheck is among the
/// readings, the recheck decides about the report; where it is not, the report is counted, for it would have come when the aide left.</summary>
/// <param name="Sets">How many sets there were: readings of one resident less than an hour apart.</param>
/// <param name="Readings">How many readings.</param>
/// <param name="All">All rules together; a recheck or a report for which several rules ask is one.</param>
/// <param name="Rules">Each rule that decided something; what several rules ask for counts for each of them.</param>
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
        RuleCounter counter = new();
        foreach (IGrouping<string, TrialReading> hers in past.GroupBy(r => r.Resident))
        {
            List<PastReading> earlier = [];
            Dictionary<VitalSign, TrialChain> chains = [];
            Resident who = resident(hers.Key);
            foreach (TrialReading reading in hers)
            {
                DateTimeOffset at = reading.Past.MeasuredAt;
                VitalSign sign = reading.Past.Reading.Value.Sign;
                sets += earlier.Count == 0 || at - earlier[^1].MeasuredAt >= SameSet ? 1 : 0;
                TrialChain? before = chains.GetValueOrDefault(sign);
                TrialChain chain = before?.Takes(at) == true ? before : new TrialChain();
                counter.Report(chain == before ? null : before?.Waiting);
                chains[sign] = chain;
                Decision decision = rules.Decide(reading.Past.Reading, new(who, earlier, chain.Asked, at, reading.Symptoms));
                (bool recheck, Decision? report) = chain.Take(at, decision);
                counter.Recheck(recheck ? decision : null);
                counter.AskAgain(decision);
                counter.Report(report);
                readings++;
                earlier.Add(reading.Past);
            }

            foreach (TrialChain chain in chains.Values)
            {
                counter.Report(chain.Waiting);
            }
        }

        return new(sets, readings, counter.All, counter.Rules);
    }
}
