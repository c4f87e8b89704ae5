using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;

namespace HandsFree.Simulation.Rounds;

/// <summary>What the rules may know of one resident: her earlier readings, and whether a report of hers is open.</summary>
internal sealed class Chart(Resident resident)
{
    private const int KeptOfSign = 20;
    private const int KeptWeights = 40;
    private readonly Dictionary<VitalSign, List<PastReading>> past = [];

    /// <summary>Whose it is.</summary>
    public Resident Resident => resident;

    /// <summary>Until when a report of hers is open.</summary>
    public DateTimeOffset ReportOpenUntil { get; set; }

    /// <summary>What a decision at that moment may look at.</summary>
    public DecisionContext Context(DateTimeOffset at, int rechecksDone) =>
        new(resident, [.. past.Values.SelectMany(p => p).OrderBy(p => p.MeasuredAt)], rechecksDone, at, new HashSet<string>());

    /// <summary>Notes a reading.</summary>
    public void Add(Reading reading, DateTimeOffset at, bool reported)
    {
        if (!past.TryGetValue(reading.Value.Sign, out List<PastReading>? list))
        {
            past[reading.Value.Sign] = list = [];
        }

        list.Add(new PastReading(reading, at) { CountsAsUsual = !reported && at > ReportOpenUntil });
        if (list.Count > (reading.Value.Sign == VitalSign.Weight ? KeptWeights : KeptOfSign))
        {
            list.RemoveAt(0);
        }
    }
}
