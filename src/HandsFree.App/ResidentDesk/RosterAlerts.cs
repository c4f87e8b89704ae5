using HandsFree.Core.Residents;

namespace HandsFree.App.ResidentDesk;

/// <summary>What whoever opens a resident must know, as lines.</summary>
internal static class RosterAlerts
{
    /// <summary>Same names, birthdays that do not tell apart, absences, moves.</summary>
    public static IEnumerable<string> Of(Roster roster, Resident resident, DateOnly today)
    {
        if (roster.SharingName(resident) is { Count: > 0 } others)
        {
            yield return $"same name as {string.Join(", ", others.Select(o => $"{o.Id} in {RosterFaults.Place(o)}"))}";
        }

        if (!roster.BirthdayTellsApart(resident))
        {
            yield return resident.BandNumber is null
                ? "day and month of birth do not tell this resident apart, and there is no band number: give one"
                : "day and month of birth do not tell this resident apart: the number on band or photo does";
        }

        if (resident.Away is { } away && away.On(today))
        {
            yield return $"away: {away.Why}, since {away.From:yyyy-MM-dd}{(away.Until is { } until ? $" until {until:yyyy-MM-dd}" : "")}";
        }

        if (resident.Moved is { } moved && Roster.CameLately(resident, today))
        {
            yield return $"moved here from room {moved.FromRoom}{(moved.FromBed is { } bed ? " bed " + bed : "")} on {moved.On:yyyy-MM-dd}";
        }
    }
}
