using HandsFree.App.Composition;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.App.Demo;

/// <summary>The one person of the made-up home. Her passphrase is no secret: it is printed and lies beside the journal.</summary>
internal static class DemoPerson
{
    /// <summary>Her passphrase.</summary>
    public const string Passphrase = "a made-up home";

    /// <summary>The file with her id and passphrase, for --unlock-fd and HANDSFREE_PIN_FILE.</summary>
    public const string FileName = "demo.pin";

    /// <summary>What unlocks the made-up home.</summary>
    public static Credential.Person CredentialOf(string person) => Pin.TryParse(Passphrase, out Pin? pin, out string? wrong)
        ? new Credential.Person(person, pin)
        : throw new InvalidOperationException(wrong);

    /// <summary>Makes the home's journal, sets the person up, and opens it again as she, as a round would.</summary>
    /// <param name="folder">The made-up home.</param>
    /// <param name="person">Her id.</param>
    /// <param name="surroundings">For the clock.</param>
    public static (HomeJournal? Journal, string? Error) SetUp(HomeFolder folder, string person, Surroundings surroundings)
    {
        Credential.Person credential = CredentialOf(person);
        Unlocker unlocker = new(surroundings, null);
        HomeOpening files = Home.Open(folder, surroundings.Time.LocalTimeZone);
        if (!files.TryGet(out Home? home))
        {
            return (null, string.Join("; ", files.Errors));
        }

        (HomeJournal? made, string? error) = HomeJournal.Open(folder, unlocker, new Credential.Device());
        if (made is null)
        {
            return (null, error);
        }

        using (made)
        {
            try
            {
                made.People.Set(
                    person, credential.Pin, Role.Supervisor, made.Desk.Encoded((id, at) => new PersonAdded(id, person, at, person, null, Role.Supervisor)));
                HomeChange.TakeIn(home, made);
                File.WriteAllText(Path.Combine(folder.Path, FileName), $"{person} {Passphrase}\n");
            }
            catch (Exception failure) when (failure is JournalWriteException or IOException or UnauthorizedAccessException)
            {
                return (null, failure.Message.ReplaceLineEndings(" "));
            }
        }

        return HomeJournal.Open(folder, unlocker, credential, forSession: true);
    }
}
