using System.Security.Cryptography.X509Certificates;
using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Exchange.Tests.Fhir.Server;
using HandsFree.Scenarios.CommandLine;
using Hl7.Fhir.Model;
using Shouldly;
using Xunit;
using Task = System.Threading.Tasks.Task;

namespace HandsFree.Scenarios.Exports;

public sealed class SendingTests
{
    [Fact]
    public async Task Sent_twice_it_is_there_once_and_the_journal_knows_how_far()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home();

        CommandRun first = Send(home, server);
        first.Code.ShouldBe(ExitCodes.Done, first.Error);
        first.Out.ShouldBe($"{server.Address} has everything up to entry 5: 8 resources sent and read back.{Environment.NewLine}");
        int kept = server.Kept.Count;
        int posts = server.Posts;

        Send(home, server).Out.ShouldBe($"{server.Address} has everything up to entry 5; there is nothing to send.{Environment.NewLine}");
        server.Posts.ShouldBe(posts);
        Send(home, server, "--since", "0").Code.ShouldBe(ExitCodes.Done);
        server.Kept.Count.ShouldBe(kept);
        Events(home).OfType<RecordDelivered>().First().Through.ShouldBe(5);
        Events(home).OfType<RecordTakenOut>().Count().ShouldBe(3);
    }

    [Fact]
    public async Task After_a_fault_in_the_middle_it_goes_on_where_it_was()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home().WithJournal([.. Enumerable.Range(0, 600).Select(i => InventedHome.Pulse($"p-{i}", "r1", 72, CommandRun.Now.AddMinutes(i - 700)))]);
        server.Next.Enqueue(Behaviour.Good);
        server.Next.Enqueue(Behaviour.Refuses);

        CommandRun broken = Send(home, server);
        broken.Code.ShouldBe(ExitCodes.BadInput);
        broken.ErrorLines.ShouldHaveSingleItem().ShouldContain("run it again, it goes on there, and nothing arrives twice");
        int there = server.All<Observation>().Count();
        there.ShouldBeInRange(200, 250);

        CommandRun rest = Send(home, server);
        rest.Code.ShouldBe(ExitCodes.Done, rest.Error);
        server.All<Observation>().Count().ShouldBe(602);
        server.All<Observation>().Select(o => o.Identifier[0].Value).Distinct().Count().ShouldBe(602);
        server.All<Patient>().Count().ShouldBe(2);
    }

    [Fact]
    public async Task What_arrived_before_the_journal_knew_arrives_once()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home();
        for (int i = 0; i < 6; i++)
        {
            server.Next.Enqueue(Behaviour.HangsUp); // the receiver has it, and we never hear so: as if the machine had died
        }

        Send(home, server).Code.ShouldBe(ExitCodes.BadInput);
        Events(home).OfType<RecordDelivered>().ShouldBeEmpty();
        int kept = server.Kept.Count;
        Send(home, server).Code.ShouldBe(ExitCodes.Done);
        server.Kept.Count.ShouldBe(kept);
    }

    [Fact]
    public async Task A_server_that_says_yes_and_keeps_nothing_is_named_and_nothing_counts_as_delivered()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home();
        server.Next.Enqueue(Behaviour.KeepsNothing);
        CommandRun run = Send(home, server);
        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("said yes and has not kept");
        Events(home).OfType<RecordDelivered>().ShouldBeEmpty();
    }

    [Fact]
    public async Task What_the_receiver_changed_is_named_and_the_check_fails()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home();
        Send(home, server).Code.ShouldBe(ExitCodes.Done);
        ((Quantity)server.All<Observation>().Single(o => o.Value is Quantity).Value!).Value = 99;
        home.WithJournal(new EnteredInError("u-1", "aide-7", CommandRun.Now, "r1", "s-3", "wrong resident"));
        CommandRun run = Send(home, server);
        run.Code.ShouldBe(ExitCodes.CheckFailed, run.Error);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("was changed at the receiver and is not written over");
    }

    [Fact]
    public async Task Without_a_system_of_identifiers_nobody_is_sent_to_be_guessed()
    {
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = InventedHome.AfterTheRound();
        CommandRun run = CommandRun.Of(home, "export", "fhir", "--to", server.Address.ToString(), "--because", "a test");
        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("home.json does not say under which system");
        (server.Posts, Events(home).OfType<RecordTakenOut>().Count()).ShouldBe((0, 0));
    }

    [Fact]
    public async Task A_token_that_others_may_read_is_not_used()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such mode");
        await using TestServer server = await TestServer.Start();
        using TemporaryHome home = Home();
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(home.At("token"), UnixFileMode.UserRead | UnixFileMode.OtherRead);
        }

        CommandRun run = Send(home, server);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain("others may read the token");
        run.Error.ShouldNotContain(TestServer.Token);
        server.Posts.ShouldBe(0);
    }

    [Fact]
    public async Task Over_TLS_with_the_certificate_that_the_home_names()
    {
        await using TestServer server = await TestServer.Start(tls: true);
        using TemporaryHome home = Home().With("authority.pem", server.Certificate!.ExportCertificatePem());
        Send(home, server, "--certificate", home.At("authority.pem")).Code.ShouldBe(ExitCodes.Done);
        server.All<Observation>().Count().ShouldBe(2);
        home.With("authority.pem", "no certificate");
        Send(home, server, "--certificate", home.At("authority.pem")).ErrorLines.ShouldHaveSingleItem().ShouldContain("is no certificate that can be read");
    }

    [Theory]
    [InlineData("export fhir wants one of", "--because", "x")]
    [InlineData("export fhir wants one of", "--because", "x", "--out", "a.json", "--to", "https://server.example")]
    [InlineData("is not encrypted", "--because", "x", "--to", "http://server.example/fhir")]
    public void What_is_wrong_is_said_in_one_line(string words, params string[] args)
    {
        using TemporaryHome home = Home();
        CommandRun run = CommandRun.Of(home, ["export", "fhir", .. args]);
        run.Code.ShouldBe(ExitCodes.BadInput);
        run.ErrorLines.ShouldHaveSingleItem().ShouldContain(words);
    }

    private static TemporaryHome Home()
    {
        TemporaryHome home = InventedHome.AfterTheRound()
            .With("home.json", """{ "timeZone": "America/Chicago", "aide": "aide-7", "exchange": { "residents": "https://home.example/residents" } }""")
            .With("token", TestServer.Token + "\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(home.At("token"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        return home;
    }

    private static CommandRun Send(TemporaryHome home, TestServer server, params string[] more) => CommandRun.With(
        home,
        surroundings => surroundings with { Time = new QuickTime() },
        ["export", "fhir", "--to", server.Address.ToString(), "--token-file", home.At("token"), "--new-patients", "--because", "the family doctor's system", .. more]);

    private static IReadOnlyList<JournalEvent> Events(TemporaryHome home)
    {
        using HomeJournal journal = HomeJournal.Open(home.Folder, new Unlocker(CommandRun.Quiet, null)).Journal!;
        return journal.All();
    }
}
