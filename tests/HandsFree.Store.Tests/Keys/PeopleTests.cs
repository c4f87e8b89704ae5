using System.Text;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using HandsFree.Store.Tests.Journaling;
using Microsoft.Extensions.Time.Testing;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Keys;

public sealed class PeopleTests : IDisposable
{
    private readonly JournalFolder _folder = new();
    private readonly FakeTimeProvider _time = new(new DateTimeOffset(2026, 3, 3, 12, 0, 0, TimeSpan.Zero));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void With_the_first_person_the_device_alone_opens_no_more_and_her_PIN_does()
    {
        SetUp();

        Open(new Credential.Device()).Error!.Problem.ShouldBe(JournalProblem.NeedsPin);
        using Store.Journaling.Journal journal = Open(Ann("heron lamp 24")).Journal!;
        journal.Holder.ShouldBe(new Holder("ann", Role.Supervisor));
        journal.ReadFrom(1).Select(entry => Encoding.UTF8.GetString(entry.Body.Span)).ShouldBe(["\a", "ann", "recovery key"]);
    }

    [Fact]
    public void A_wrong_PIN_changes_nothing_in_the_journal_and_after_three_makes_wait_longer_and_longer()
    {
        SetUp();
        byte[] before = File.ReadAllBytes(_folder.Path);

        Wrong(JournalProblem.WrongPin);
        Wrong(JournalProblem.WrongPin);
        Wrong(JournalProblem.WrongPin).ShouldEndWith("in 30 seconds");
        Open(Ann("heron lamp 24")).Error!.Message.ShouldContain("locked after too many wrong PINs; wait 30 seconds");
        _time.Advance(TimeSpan.FromSeconds(31));
        Wrong(JournalProblem.WrongPin).ShouldEndWith("in 60 seconds");

        // A clock that was set back begins the wait anew; it shortens nothing.
        _time.AdjustTime(_time.GetUtcNow() - TimeSpan.FromHours(2));
        Open(Ann("heron lamp 24")).Error!.Problem.ShouldBe(JournalProblem.LockedOut);
        _time.Advance(TimeSpan.FromSeconds(59));
        Open(Ann("heron lamp 24")).Error!.Problem.ShouldBe(JournalProblem.LockedOut);
        _time.Advance(TimeSpan.FromSeconds(2));
        Open(Ann("heron lamp 24")).Journal!.Dispose();
        File.ReadAllBytes(_folder.Path).ShouldBe(before);
    }

    [Fact]
    public void The_recovery_key_opens_on_another_device_with_a_backup_and_gives_a_supervisor_a_PIN_there()
    {
        string paper = SetUp();
        string backup = _folder.Path + ".backup";
        JournalBackup.Make(_folder.Path, backup, _folder.States).Error.ShouldBeNull();
        string elsewhere = Path.Combine(_folder.Folder, "other.journal");
        string states = Path.Combine(_folder.Folder, "other-state");
        RecoveryKey.TryParse(paper.ToLowerInvariant(), out RecoveryKey? key, out _).ShouldBeTrue();
        Credential.Person bea = new("bea", PinOf("quiet boat 58"));

        (JournalVerdict?, JournalError? Error) Take(Credential credential, Credential.Person? supervisor) =>
            JournalBackup.Restore(backup, elsewhere, new JournalAccess(states, credential, _time), supervisor, JournalFolder.Told);

        Take(new Credential.Device(), null).Error!.Problem.ShouldBe(JournalProblem.OtherDevice);
        Take(new Credential.Recovery(RecoveryKey.New()), bea).Error!.Problem.ShouldBe(JournalProblem.WrongPin);
        File.Exists(elsewhere).ShouldBeFalse();
        Take(new Credential.Recovery(key!), bea).Error.ShouldBeNull();

        using Store.Journaling.Journal journal = Store.Journaling.Journal.Open(elsewhere, new JournalAccess(states, bea, _time)).Journal!;
        journal.ReadFrom(1).First().Body.ToArray().ShouldBe([7]);
        journal.Append(new byte[] { 8 }).ShouldBe(6);
        JournalVerification.Verify(elsewhere, states).Verdict!.Findings.ShouldBeEmpty();
        JournalVerification.Verify(elsewhere, states).Verdict!.Devices.ShouldBe(2);
    }

    [Fact]
    public void A_removed_person_unlocks_no_more()
    {
        SetUp();
        using (Store.Journaling.Journal journal = Open(Ann("heron lamp 24")).Journal!)
        {
            journal.People.Set("bea", PinOf("quiet boat 58"), Role.Nurse, "bea"u8.ToArray());
            journal.People.Remove("bea", "bea went"u8.ToArray());
        }

        Open(new Credential.Person("bea", PinOf("quiet boat 58"))).Error!.Problem.ShouldBe(JournalProblem.WrongPin);
    }

    [Theory]
    [InlineData("12345", "6 to 12 digits")]
    [InlineData("12345a", "6 to 12 digits")]
    [InlineData("1234567890123", "6 to 12 digits")]
    [InlineData("777777", "not digits repeated")]
    [InlineData("121212", "not digits repeated")]
    [InlineData("123123", "not digits repeated")]
    [InlineData("12341234", "not digits repeated")]
    [InlineData("234567", "not a run")]
    [InlineData("987654", "not a run")]
    [InlineData("19310309", "not a year or date")]
    [InlineData("09031931", "not a year or date")]
    [InlineData("short 1", "8 to 64 signs")]
    [InlineData("Password123!", "tried first")]
    [InlineData("p@ssw0rd2026", "tried first")]
    [InlineData("abcabcabc", "tried first")]
    [InlineData("welcomewelcome", "tried first")]
    [InlineData("ababababab", "tried first")]
    public void A_weak_PIN_is_refused_with_a_line_that_does_not_repeat_it(string digits, string says)
    {
        Pin.TryParse(digits, out _, out string? error).ShouldBeFalse();
        error.ShouldContain(says);
        error.Replace("123456", "", StringComparison.Ordinal).Replace("777777, 121212, 123123", "", StringComparison.Ordinal).ShouldNotContain(digits);
    }

    [Fact]
    public void A_recovery_key_on_paper_is_read_back_and_one_wrong_sign_is_found()
    {
        for (int i = 0; i < 50; i++)
        {
            string paper = RecoveryKey.New().ForPaper();
            paper.Length.ShouldBe(39);
            RecoveryKey.TryParse($" {paper.ToLowerInvariant().Replace('-', ' ')} ", out RecoveryKey? key, out _).ShouldBeTrue();
            key!.ForPaper().ShouldBe(paper);
            string wrong = paper[..5] + (paper[5] == '7' ? '8' : '7') + paper[6..];
            RecoveryKey.TryParse(wrong, out _, out string? error).ShouldBeFalse();
            error!.ShouldContain("a sign of it is wrong");
        }
    }

    private static Pin PinOf(string digits) => Pin.TryParse(digits, out Pin? pin, out string? error) ? pin : throw new ArgumentException(error);

    private static Credential.Person Ann(string digits) => new("ann", PinOf(digits));

    private string SetUp()
    {
        using Store.Journaling.Journal journal = Open(new Credential.Device()).Journal!;
        journal.Append(new byte[] { 7 });
        journal.People.Set("ann", PinOf("heron lamp 24"), Role.Supervisor, "ann"u8.ToArray());
        return journal.People.MakeRecovery("recovery key"u8.ToArray()).ForPaper();
    }

    private JournalOpening Open(Credential credential) =>
        Store.Journaling.Journal.Open(_folder.Path, new JournalAccess(_folder.States, credential, _time));

    private string Wrong(JournalProblem problem)
    {
        JournalError error = Open(Ann("another lamp 9")).Error!;
        error.Problem.ShouldBe(problem);
        return error.Message;
    }
}
