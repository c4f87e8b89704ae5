using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Imports;

/// <summary>Limits that another system has: a nurse looks at each, and takes it or not.</summary>
internal sealed class ProposalDesk
{
    private readonly HomeJournal journal;
    private readonly Home home;
    private readonly CommandHost host;

    private ProposalDesk(HomeJournal journal, Home home, CommandHost host) => (this.journal, this.home, this.host) = (journal, home, host);

    /// <summary>Does the work on the home's journal.</summary>
    public static int With(IServiceProvider services, CommandHost host, Func<ProposalDesk, int> work)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        return !opening.TryGet(out Home? home)
            ? host.RefuseHome(opening)
            : JournalFile.Reading(services, host, journal => work(new ProposalDesk(journal, home, host)));
    }

    /// <summary>Lists those that nobody has looked at.</summary>
    public int List()
    {
        journal.Desk.Viewed("import proposals");
        IReadOnlyList<(int Number, OrderProposed Proposal)> open = Open();
        foreach ((int number, OrderProposed proposal) in open)
        {
            host.Surroundings.Out.WriteLine($"{number,3}  {Words(proposal)}");
        }

        if (open.Count == 0)
        {
            host.Surroundings.Out.WriteLine("No proposed limits.");
        }

        return ExitCodes.Done;
    }

    /// <summary>Takes one: from here on it is an ordered limit of the resident. What stood on its side before is said first.</summary>
    /// <param name="number">As the list shows it.</param>
    /// <param name="yes">Does not ask.</param>
    public int Accept(int number, bool yes)
    {
        (OrderProposed? proposal, string? wrong) = Found(number);
        if (proposal is null)
        {
            return host.Refuse(wrong!);
        }

        if (home.Roster.ById(proposal.Resident) is not { } resident)
        {
            return host.Refuse($"resident {proposal.Resident} is not on the roster any more; refuse the proposal");
        }

        foreach (OrderedLimit present in resident.OrderedLimits.Where(o => o.Value == proposal.Limit.Value))
        {
            host.Surroundings.Out.WriteLine($"stands now: {PlanTexts.InFigures(present)}, ordered by {present.OrderedBy} on {present.OrderedOn:yyyy-MM-dd}; the later order counts on each side");
        }

        host.Surroundings.Out.WriteLine(Words(proposal));
        if (!yes && !Asked())
        {
            return host.Refuse("not confirmed; nothing was changed");
        }

        Resident after = resident with { OrderedLimits = [proposal.Limit, .. resident.OrderedLimits] };
        Roster roster = new([.. home.Roster.Residents.Select(r => r.Id == resident.Id ? after : r)]);
        journal.Desk.KeepRoster(home, roster);
        if (!Home.IsSealed(home.Folder) && new RosterWriter(home.Settings).Write(home.Folder.RosterFile, roster) is { } unwritten)
        {
            return host.Refuse($"{unwritten}; the limit was not taken");
        }

        return Settle(proposal, accepted: true, null);
    }

    /// <summary>Does not take one.</summary>
    /// <param name="number">As the list shows it.</param>
    /// <param name="because">Why.</param>
    public int Refuse(int number, string because)
    {
        (OrderProposed? proposal, string? wrong) = Found(number);
        return proposal is null ? host.Refuse(wrong!)
            : because.Trim().Length == 0 ? host.Refuse("--because is empty; write why the limit is not taken, it stands in the journal")
            : Settle(proposal, accepted: false, because.Trim());
    }

    private (OrderProposed? Proposal, string? Wrong) Found(int number) =>
        journal.Holder is { Role: Role.Aide } ? (null, "only a nurse or a supervisor settles a proposed limit")
        : Open().FirstOrDefault(p => p.Number == number).Proposal is { } proposal ? (proposal, null)
        : (null, $"there is no open proposal {number}; \"handsfree import proposals\" lists them");

    /// <summary>A proposal keeps its number: the one in the order in which all were made.</summary>
    private IReadOnlyList<(int Number, OrderProposed Proposal)> Open()
    {
        IReadOnlyList<JournalEvent> all = journal.All();
        List<OrderProposed> every = [.. all.OfType<OrderProposed>()];
        return [.. Proposals.Open(all).Select(p => (every.FindIndex(e => e.Id == p.Id) + 1, p))];
    }

    private int Settle(OrderProposed proposal, bool accepted, string? reason)
    {
        journal.Desk.Write((id, at) => new ProposalSettled(id, journal.Holder?.Person ?? home.Settings.Aide, at, proposal.Id, accepted, reason));
        host.Surroundings.Out.WriteLine(accepted ? "accepted; it counts from the next reading on" : "refused");
        return ExitCodes.Done;
    }

    private bool Asked()
    {
        host.Surroundings.Out.Write("Type yes to take it as an order: ");
        return host.Surroundings.In.ReadLine()?.Trim() == "yes";
    }

    private string Words(OrderProposed proposal)
    {
        string who = home.Roster.ById(proposal.Resident) is { } resident ? RosterFaults.Place(resident) : "not on the roster";
        return $"resident {proposal.Resident} ({who}): {PlanTexts.InFigures(proposal.Limit)}, ordered by {proposal.Limit.OrderedBy} on {proposal.Limit.OrderedOn:yyyy-MM-dd}; from {proposal.Source}";
    }
}
