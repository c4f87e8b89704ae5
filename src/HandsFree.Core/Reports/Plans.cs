using HandsFree.Core.Journal;
using HandsFree.Core.Residents;

namespace HandsFree.Core.Reports;

/// <summary>The nurses' plans that stand.</summary>
public static class Plans
{
    /// <summary>The plans for a resident that stand at a moment, the latest first.</summary>
    public static IReadOnlyList<PlanMade> Standing(IEnumerable<JournalEvent> journal, string resident, DateTimeOffset at)
    {
        List<PlanMade> made = [];
        HashSet<string> gone = [];
        foreach (JournalEvent happened in journal)
        {
            switch (happened)
            {
                case PlanMade plan when plan.Resident == resident && plan.At <= at && at < plan.Until:
                    made.Insert(0, plan);
                    break;
                case PlanWithdrawn withdrawn when withdrawn.At <= at:
                    gone.Add(withdrawn.Plan);
                    break;
                case EnteredInError error:
                    gone.Add(error.Event);
                    break;
                default:
                    break;
            }
        }

        made.RemoveAll(plan => gone.Contains(plan.Id));
        return made;
    }

    /// <summary>The resident with the plans that stand among her orders: a plan goes before an order that is as old or older.</summary>
    public static Resident WithPlans(this Resident resident, IEnumerable<JournalEvent> journal, DateTimeOffset at) =>
        Standing(journal, resident.Id, at) is { Count: > 0 } plans
            ? resident with { OrderedLimits = [.. plans.Select(plan => plan.ToLimit()), .. resident.OrderedLimits] }
            : resident;
}
