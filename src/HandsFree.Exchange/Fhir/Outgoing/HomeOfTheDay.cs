using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Core.Rules.Limits;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>What was in force when an entry was written: rules, residents with their orders, plans. It goes through the record with whoever
/// reads it. What the record does not keep is today's: residents always, rules only where they are the same ones.</summary>
/// <param name="roster">Today's residents.</param>
/// <param name="rules">The rules in force.</param>
/// <param name="read">Reads a roster that was kept; null where it can't be read.</param>
public sealed class HomeOfTheDay(Roster roster, Rulebook rules, Func<RosterKept, Roster?> read)
{
    private readonly Dictionary<string, Rulebook?> books = new(StringComparer.Ordinal) { [rules.Hash] = rules };
    private readonly Dictionary<string, Roster?> rosters = new(StringComparer.Ordinal);
    private readonly List<PlanMade> plans = [];
    private Dictionary<string, Resident> residents = ById(roster);

    /// <summary>Takes the next entry.</summary>
    public void Take(JournalEvent happened)
    {
        switch (happened)
        {
            case RulesKept kept:
                books[kept.Hash] = kept.Load().Rulebook ?? books.GetValueOrDefault(kept.Hash);
                break;
            case RosterKept kept:
                if (kept.Content is not null)
                {
                    rosters[kept.Hash] = read(kept);
                }

                residents = rosters.GetValueOrDefault(kept.Hash) is { } then ? ById(then) : residents;
                break;
            case PlanMade plan:
                plans.Add(plan);
                break;
            case PlanWithdrawn withdrawn:
                plans.RemoveAll(p => p.Id == withdrawn.Plan);
                break;
            case EnteredInError gone:
                plans.RemoveAll(p => p.Id == gone.Event);
                break;
            default:
                break;
        }
    }

    /// <summary>The resident as the roster of the day has her, or null.</summary>
    public Resident? Resident(string id) => residents.GetValueOrDefault(id);

    /// <summary>The lines beyond which a nurse is told of each number of a reading; none where rules or resident of the day are not known.</summary>
    public IReadOnlyDictionary<LimitedValue, ReportLimits> Limits(ReadingRecorded reading)
    {
        if (books.GetValueOrDefault(reading.Decision.RulesHash) is not { } book || Resident(reading.Resident) is not { } resident)
        {
            return new Dictionary<LimitedValue, ReportLimits>();
        }

        DateTimeOffset at = reading.Confirmed.By.MeasuredAt;
        DecisionContext context = new(resident.WithPlans(plans, at), [], 0, at, new HashSet<string>());
        decimal? Usual(LimitedValue value) => resident.UsualValues.FirstOrDefault(u => u.Value == value)?.Median;
        return Numbers(reading.Confirmed.Reading.Value).ToDictionary(n => n.Key, n => book.LimitsOf(n.Key, context, Usual(n.Key)));
    }

    /// <summary>The numbers of a quantity, each in the unit in which it is limited.</summary>
    public static IReadOnlyDictionary<LimitedValue, decimal> Numbers(Quantity quantity) => quantity switch
    {
        BodyTemperature v => new Dictionary<LimitedValue, decimal> { [LimitedValue.TemperatureFahrenheit] = v.Fahrenheit },
        HeartRate v => new Dictionary<LimitedValue, decimal> { [LimitedValue.Pulse] = v.PerMinute },
        RespiratoryRate v => new Dictionary<LimitedValue, decimal> { [LimitedValue.Respirations] = v.PerMinute },
        BloodPressure v => new Dictionary<LimitedValue, decimal> { [LimitedValue.Systolic] = v.Systolic, [LimitedValue.Diastolic] = v.Diastolic },
        OxygenSaturation v => new Dictionary<LimitedValue, decimal> { [LimitedValue.OxygenSaturation] = v.Percent },
        BodyWeight v => new Dictionary<LimitedValue, decimal> { [LimitedValue.WeightPounds] = v.Pounds },
        PainScore v => new Dictionary<LimitedValue, decimal> { [LimitedValue.Pain] = v.OfTen },
        _ => throw new InvalidOperationException($"no limits for a {quantity.GetType().Name}"),
    };

    private static Dictionary<string, Resident> ById(Roster roster) => roster.Residents.ToDictionary(r => r.Id, StringComparer.Ordinal);
}
