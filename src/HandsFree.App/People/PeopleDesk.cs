using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.People;

/// <summary>What "handsfree people" does. A change and the event that tells of it are written in one piece.</summary>
internal sealed class PeopleDesk(HomeJournal journal, CommandHost host)
{
    private string Doer => journal.Holder?.Person ?? "device";

    private bool MayManage => journal.Holder is null or { Role: Role.Supervisor };

    private bool IsPaper => journal.Holder?.Person == JournalPeople.RecoveryName;

    /// <summary>Does the work with the journal of the home; a home without journal gets one.</summary>
    public static int With(IServiceProvider services, CommandHost host, Func<PeopleDesk, int> work)
    {
        HomeFolder folder = services.GetRequiredService<HomeFolder>();
        bool wasSealed = Home.IsSealed(folder);
        HomeOpening? files = wasSealed ? null : Home.Open(folder, host.Surroundings.Time.LocalTimeZone);
        if (files is { Home: null })
        {
            return host.RefuseHome(files);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, services.GetRequiredService<Unlocker>());
        using HomeJournal? journal = opened;
        return Guarded(host, journal, error, desk =>
        {
            int code = work(desk);
            if (files?.Home is { } home && journal!.People.Any)
            {
                HomeChange.TakeIn(home, journal);
                host.Surroundings.Error.WriteLine("handsfree: roster, settings and rules are in the sealed journal now; their files are deleted.");
            }

            return code;
        });
    }

    /// <summary>Gives a supervisor a new PIN with the recovery key.</summary>
    public static int Recover(IServiceProvider services, CommandHost host, string person)
    {
        HomeFolder folder = services.GetRequiredService<HomeFolder>();
        if (!JournalFile.IsBegun(folder))
        {
            return host.Refuse($"{folder.JournalFile}: there is no journal yet; name another folder with --home");
        }

        (RecoveryKey? key, string? wrong) = RecoveryText.Read(host.Surroundings);
        if (key is null)
        {
            return host.Refuse(wrong!);
        }

        (HomeJournal? opened, string? error) = HomeJournal.Open(folder, services.GetRequiredService<Unlocker>(), new Credential.Recovery(key));
        using HomeJournal? journal = opened;
        return Guarded(host, journal, error, desk => desk.SetPin(person, Role.Supervisor));
    }

    /// <summary>Sets a person up.</summary>
    public int Add(string person, Role role, string? name)
    {
        bool first = !journal.People.Any;
        if (!MayManage)
        {
            return Refuse("only a supervisor sets people up");
        }

        if (first && role != Role.Supervisor)
        {
            return Refuse("the first person to be set up is a supervisor: without one nobody can help who forgets a PIN");
        }

        if (person.Length == 0 || person.Any(c => char.IsWhiteSpace(c) || char.IsControl(c)) || person is JournalPeople.RecoveryName or JournalPeople.EmergencyName)
        {
            return Refuse($"a person's id is a word without blanks, and neither {JournalPeople.RecoveryName} nor {JournalPeople.EmergencyName}");
        }

        if (journal.People.Has(person))
        {
            return Refuse($"{person} is set up already; \"handsfree people pin {person}\" gives another PIN");
        }

        (Pin? pin, string? error) = NewPin.Read(host.Surroundings, person, role);
        if (pin is null)
        {
            return Refuse(error!);
        }

        journal.People.Set(person, pin, role, journal.Desk.Encoded((id, at) => new PersonAdded(id, first ? person : Doer, at, person, name, role)));
        host.Surroundings.Out.WriteLine($"{person} is set up.");
        return first ? MakeRecovery() : ExitCodes.Done;
    }

    /// <summary>Gives a person another PIN.</summary>
    public int ChangePin(string person)
    {
        if (PersonLine.Of(journal).FirstOrDefault(line => line.Id == person) is not { } found)
        {
            return Refuse($"nobody with the id {person} is set up; \"handsfree people list\" shows who is");
        }

        return MayManage || Doer == person
            ? SetPin(person, found.Role)
            : Refuse("only a supervisor changes somebody else's PIN");
    }

    /// <summary>Sets the digits that unlock a person's locked session when she says them.</summary>
    public int SetDigits(string person)
    {
        if (!journal.People.Has(person))
        {
            return Refuse($"nobody with the id {person} is set up; \"handsfree people list\" shows who is");
        }

        if (!MayManage && Doer != person)
        {
            return Refuse("only a supervisor sets somebody else's digits");
        }

        (string? digits, string? error) = NewSecret.Read(host.Surroundings, "digits", "HANDSFREE_NEW_DIGITS_FILE");
        error ??= SpokenDigits.Fault(digits!);
        if (error is not null)
        {
            return Refuse(error);
        }

        (string salt, string hash) = SpokenDigits.Kept(digits!);
        journal.Desk.Write((id, at) => new SpokenDigitsSet(id, Doer, at, person, salt, hash));
        host.Surroundings.Out.WriteLine($"{person} can unlock her session with these digits where home.json allows it (\"lock\": \"spokenDigits\").");
        return ExitCodes.Done;
    }

    /// <summary>Lets a person unlock no more.</summary>
    public int Remove(string person)
    {
        IReadOnlyList<PersonLine> people = PersonLine.Of(journal);
        if (!MayManage)
        {
            return Refuse("only a supervisor removes people");
        }

        if (!people.Any(line => line.Id == person))
        {
            return Refuse($"nobody with the id {person} is set up; \"handsfree people list\" shows who is");
        }

        if (!people.Any(line => line.Id != person && line.Role == Role.Supervisor))
        {
            return Refuse($"{person} is the last supervisor; set another one up first");
        }

        if (person == Doer)
        {
            return Refuse($"{person} can't remove herself; another supervisor does");
        }

        journal.People.Remove(person, journal.Desk.Encoded((id, at) => new PersonRemoved(id, Doer, at, person)));
        host.Surroundings.Out.WriteLine($"{person} can unlock no more.");
        return ExitCodes.Done;
    }

    /// <summary>Makes a recovery key and shows it.</summary>
    public int MakeRecovery()
    {
        if (!MayManage || !journal.People.Any)
        {
            return Refuse(journal.People.Any ? "only a supervisor makes a recovery key" : "set a supervisor up first (handsfree people add)");
        }

        if (IsPaper)
        {
            return Refuse("the recovery key makes no other one; give a supervisor a new passphrase with it (handsfree people recover), she makes one");
        }

        RecoveryKey key = journal.People.MakeRecovery(journal.Desk.Encoded((id, at) => new RecoveryKeyMade(id, Doer, at)));
        host.Surroundings.Out.WriteLine("Recovery key. It is shown this once: write it on paper and lock the paper away.");
        host.Surroundings.Out.WriteLine($"  {key.ForPaper()}");
        return ExitCodes.Done;
    }

    /// <summary>Makes an emergency key and shows it.</summary>
    public int MakeEmergency()
    {
        if (journal.Holder is not { Role: Role.Supervisor } || IsPaper)
        {
            return Refuse("only a supervisor makes an emergency key");
        }

        RecoveryKey key = journal.People.MakeEmergency(journal.Desk.Encoded((id, at) => new EmergencyKeyMade(id, Doer, at)));
        host.Surroundings.Out.WriteLine("Emergency key. It is shown this once: write it on paper, seal it in an envelope, sign across the flap, keep it where a nurse finds it at night.");
        host.Surroundings.Out.WriteLine($"  {key.ForPaper()}");
        return ExitCodes.Done;
    }

    private int SetPin(string person, Role role)
    {
        (Pin? pin, string? error) = NewPin.Read(host.Surroundings, person, role);
        if (pin is null)
        {
            return Refuse(error!);
        }

        bool isNew = !journal.People.All.Contains(new Holder(person, role));
        journal.People.Set(person, pin, role, journal.Desk.Encoded((id, at) =>
            isNew ? new PersonAdded(id, Doer, at, person, null, role) : new PinChanged(id, Doer, at, person, IsPaper)));
        host.Surroundings.Out.WriteLine($"{person} has a new {(role == Role.Aide ? "PIN" : "passphrase")}.");
        return ExitCodes.Done;
    }

    private static int Guarded(CommandHost host, HomeJournal? journal, string? error, Func<PeopleDesk, int> work)
    {
        if (journal is null)
        {
            return host.Refuse(error!);
        }

        try
        {
            return work(new PeopleDesk(journal, host));
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return host.Refuse(wrong.Message);
        }
    }

    private int Refuse(string line) => host.Refuse(line);
}
