using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.Observations;
using HandsFree.Core.People;
using HandsFree.Core.Reports;
using HandsFree.Core.Residents;
using HandsFree.Scenarios.CommandLine;
using HandsFree.Scenarios.Reports;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.Attacks;

/// <summary>Threat 7: a role is more than a line of code. An aide has a PIN and with it the data key, and a program of her own.</summary>
public sealed class ForgedNurseTests : IDisposable
{
    private readonly TemporaryHome home = InventedHome.AfterTheRound().WithPeople();

    public void Dispose() => home.Dispose();

    public static TheoryData<string> Forged => ["acknowledged", "acknowledged by the aide", "closed", "planned", "removed", "amended", "promoted"];

    [Theory]
    [MemberData(nameof(Forged))]
    public void What_an_aide_writes_in_a_nurse_s_or_supervisor_s_place_is_not_believed(string what)
    {
        DateTimeOffset now = CommandRun.Now;
        JournalEvent forged = what switch
        {
            "acknowledged" => new ReportAcknowledged("f", "nurse-1", now, "s-6"),
            "acknowledged by the aide" => new ReportAcknowledged("f", "aide-7", now, "s-6"),
            "closed" => new ReportClosed("f", "nurse-1", now, "s-6", "all well"),
            "planned" => new PlanMade("f", "nurse-1", now, "r1", "s-6", LimitedValue.Systolic, null, 250, now.AddDays(1), ""),
            "removed" => new PersonRemoved("f", "super-1", now, "nurse-1"),
            "amended" => new EnteredInError("f", "nurse-1", now, "r1", "s-3", "wrong"),
            _ => new PersonAdded("f", "super-1", now, "aide-7", null, Role.Supervisor),
        };
        using (HomeJournal journal = Open("aide-7"))
        {
            journal.Events.Append(forged);
        }

        using HomeJournal read = Open("nurse-1");
        read.All()[^1].ShouldBeOfType<NotBelieved>().Person.ShouldBe(forged.Person);
        read.Present()[^1].ShouldBeOfType<NotBelieved>();
        read.Events.ReadFrom(read.Events.Count).Single().Event.ShouldBeOfType<NotBelieved>();
        ReportBook.Of(read.All()).All.ShouldAllBe(report => report.Acknowledged == null && report.Closed == null && report.Plans.Count == 0);
    }

    [Fact]
    public void What_a_nurse_writes_under_her_own_name_is_believed()
    {
        using (HomeJournal journal = Open("nurse-1"))
        {
            journal.Events.Append(new ReportAcknowledged("real", "nurse-1", CommandRun.Now, "s-6"));
        }

        using HomeJournal read = Open("aide-7");
        read.All()[^1].ShouldBeOfType<ReportAcknowledged>();
    }

    private HomeJournal Open(string person) =>
        HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet with { Variable = home.Unlocking(person) }, null)).Journal!;
}
