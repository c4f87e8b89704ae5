using HandsFree.Core.People;
using HandsFree.Store.Devices;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Shouldly;
using Xunit;

namespace HandsFree.Store.Tests.Attacks;

/// <summary>Threat 10: guessing is counted.</summary>
public sealed class GuessingTests : IDisposable
{
    private readonly AttackedHome home = new AttackedHome().WithPeople().Home;

    public void Dispose() => home.Dispose();

    [Fact]
    public void Eight_tries_at_once_count_as_eight()
    {
        JournalError[] errors = new JournalError[8];
        Thread[] threads = [.. Enumerable.Range(0, 8).Select(i => new Thread(() => errors[i] = home.Refused(Guess(i))))];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());

        // Three are free; what came after the third was not looked at.
        errors.Count(error => error.Problem == JournalProblem.WrongPin).ShouldBe(3);
        errors.Count(error => error.Problem == JournalProblem.LockedOut).ShouldBe(5);
        home.Refused(AttackedHome.Bea).Problem.ShouldBe(JournalProblem.LockedOut);
    }

    [Fact]
    public void The_count_deleted_makes_everybody_wait_an_hour()
    {
        home.Refused(Guess(1));
        File.Delete(home.StateFile("tries"));

        home.Refused(AttackedHome.Bea).Message.ShouldContain("wait 60 minutes");
        home.Time.Advance(TimeSpan.FromMinutes(61));
        Failed().ShouldContain(failed => failed.What == "the count of wrong PINs was gone or put back");
    }

    [Fact]
    public void An_older_count_put_back_makes_everybody_wait_an_hour()
    {
        byte[] fresh = File.ReadAllBytes(home.StateFile("tries"));
        home.Refused(Guess(1));
        home.Refused(Guess(2));
        File.WriteAllBytes(home.StateFile("tries"), fresh);

        home.Refused(AttackedHome.Bea).Message.ShouldContain("wait 60 minutes");
    }

    [Fact]
    public void After_twelve_wrong_tries_only_a_new_PIN_helps()
    {
        for (int i = 0; i < Lockout.MostTries; i++)
        {
            home.Refused(Guess(i)).Problem.ShouldBe(JournalProblem.WrongPin);
            home.Time.Advance(TimeSpan.FromHours(2));
        }

        home.Refused(AttackedHome.Bea).Message.ShouldContain("closed for this person after 12 wrong PINs");
        using (Journal ann = home.Open(AttackedHome.Ann))
        {
            ann.People.Set("bea", AttackedHome.Person("bea", "582046").Pin, Role.Aide, "a new PIN"u8.ToArray());
        }

        home.Texts(AttackedHome.Person("bea", "582046"))[^1].ShouldBe("a new PIN");
    }

    [Fact]
    public void Trying_everybody_in_turn_is_counted_together()
    {
        int tried = 0;
        for (int i = 0; i < 40; i++)
        {
            tried += home.Refused(AttackedHome.Person($"somebody-{i}", "582046")).Problem == JournalProblem.WrongPin ? 1 : 0;
        }

        tried.ShouldBe(20);
        home.Refused(AttackedHome.Bea).Problem.ShouldBe(JournalProblem.LockedOut);
    }

    [Fact]
    public void Every_failure_is_given_out_once_to_be_written_and_a_PIN_typed_as_a_name_is_not()
    {
        home.Refused(Guess(1));
        home.Refused(AttackedHome.Person("719284", "582046"));

        IReadOnlyList<FailedOpening> failed = Failed();
        failed.Select(each => (each.Who, each.What)).ShouldBe([("bea", "PIN"), (null, "PIN")]);
        Failed().ShouldBeEmpty();
    }

    private static Credential.Person Guess(int number) => AttackedHome.Person("bea", $"91748{number % 10}");

    private IReadOnlyList<FailedOpening> Failed()
    {
        IReadOnlyList<FailedOpening> all = [];
        using Journal journal = home.Open(AttackedHome.Ann);
        journal.People.TakeFailedOpenings(failed => all = failed);
        return all;
    }
}
