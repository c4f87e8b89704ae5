using HandsFree.Core.Journal;
using HandsFree.App.Homes;
using HandsFree.App.Composition;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.App.Unlocking;

/// <summary>Opens a journal with what this run was given: "PERSON PIN" from --unlock-fd, from the file that HANDSFREE_PIN_FILE names, or
/// from the terminal; nothing is asked where nobody is set up.</summary>
/// <param name="surroundings">The environment and the terminal.</param>
/// <param name="descriptor">What --unlock-fd said, or null.</param>
/// <param name="emergency">Who opens with the emergency key and why, as --emergency said; null: nobody does.</param>
internal sealed class Unlocker(Surroundings surroundings, int? descriptor, string? emergency = null)
{
    /// <summary>The environment variable that names a file with "PERSON PIN".</summary>
    public const string Variable = "HANDSFREE_PIN_FILE";

    private const int CommandWaits = 30;

    private (Credential? Credential, string? Error)? given;
    private bool told;

    /// <summary>The clock.</summary>
    public TimeProvider Time => surroundings.Time;

    /// <summary>Whether a PIN was given without asking.</summary>
    public bool IsGiven => descriptor is not null || surroundings.Variable(Variable) is not null;

    /// <summary>Whether the journal opens without asking anybody: a PIN was given, or somebody was asked already.</summary>
    public bool OpensUnasked => IsGiven || given is { Credential: not null };

    /// <summary>A line that must reach who runs the program, though it stops nothing.</summary>
    public void Warn(string line) => surroundings.Error.WriteLine($"handsfree: {line}");

    /// <summary>The journal, or one line that says what is wrong.</summary>
    /// <param name="file">The journal's file.</param>
    /// <param name="states">This device's part.</param>
    /// <param name="with">What unlocks it instead of what was given.</param>
    /// <param name="busySeconds">How long a command waits for its turn. A session waits as often as it must, and says so between.</param>
    /// <param name="accepts">Takes it as it lies there (<see cref="JournalAccess.Accepts"/>).</param>
    public (Journal? Journal, string? Error) Open(
        string file, string states, Credential? with = null, int busySeconds = CommandWaits, bool accepts = false)
    {
        JournalOptions options = new() { BusySeconds = busySeconds };
        return With(states, with, access =>
        {
            JournalOpening opening = Journal.Open(file, access with { Accepts = accepts }, options);
            return (opening.Journal, opening.Error);
        });
    }

    /// <summary>Does something that needs to be unlocked: with what was given, and where that does not suffice with what is typed now.</summary>
    /// <param name="states">This device's part.</param>
    /// <param name="with">What unlocks instead of what was given.</param>
    /// <param name="work">Does it, or says what is wrong.</param>
    /// <returns>What came of it, or one line that says what is wrong.</returns>
    public (T? Result, string? Error) With<T>(string states, Credential? with, Func<JournalAccess, (T? Result, JournalError? Error)> work)
        where T : class
    {
        (Credential? credential, string? wrong) = with is null ? given ??= Given() : (with, null);
        if (wrong is not null)
        {
            return (null, wrong);
        }

        (T? result, JournalError? error) = work(new JournalAccess(states, credential ?? new Credential.Device(), surroundings.Time));
        if (error?.Problem == JournalProblem.NeedsPin && surroundings.ReadHidden is not null)
        {
            (credential, wrong) = Asked();
            if (credential is null)
            {
                return (null, wrong);
            }

            given = (credential, null);
            (result, error) = work(new JournalAccess(states, credential, surroundings.Time));
        }

        return (result, error?.Message);
    }

    /// <summary>Writes an opening with the emergency key into the journal, and says it; says it to whoever opens the journal afterwards too,
    /// until a supervisor has made a new key.</summary>
    /// <exception cref="JournalReadException">The journal can't be read.</exception>
    /// <exception cref="JournalWriteException">It was not written; then nothing may be done with the journal.</exception>
    public void Emergency(HomeJournal journal)
    {
        if (told || journal.Holder is not { } holder)
        {
            return;
        }

        if (holder.Person == JournalPeople.EmergencyName)
        {
            journal.Desk.Write((id, at) => new EmergencyOpened(id, holder.Person, at, emergency!));
            Warn("OPENED WITH THE EMERGENCY KEY. It stands in the record with your reason. Tell the supervisor: the envelope needs a new key (handsfree people emergency).");
        }
        else if (journal.HomeKept().Emergency is { } last)
        {
            Warn($"this journal was opened with the emergency key on {last.At:yyyy-MM-dd HH:mm}Z: {last.Why}. \"handsfree journal audit\" shows it; a new key ends this line (handsfree people emergency)");
        }

        told = true;
    }

    private (Credential? Credential, string? Error) Given()
    {
        if (emergency is not null)
        {
            (RecoveryKey? key, string? unread) = RecoveryText.Read(surroundings, "emergency key", "HANDSFREE_EMERGENCY_FILE");
            return emergency.Trim().Length < 10
                ? (null, "--emergency says who you are and why, in ten letters or more; it stands in the record")
                : key is null ? (null, unread) : (new Credential.Emergency(key), null);
        }

        (string? line, string? error) = SecretText.Given(surroundings, descriptor, "--unlock-fd", Variable);
        if (line is null)
        {
            return (null, error);
        }

        string[] parts = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return parts is [var person, var pin]
            ? Person(person, pin)
            : (null, $"what {(descriptor is null ? Variable : "--unlock-fd")} gives is not \"PERSON PIN\": the person's id, a blank, PIN or passphrase");
    }

    private (Credential? Credential, string? Error) Asked()
    {
        surroundings.Error.Write("Person: ");
        string person = surroundings.In.ReadLine()?.Trim() ?? "";
        return person.Length == 0
            ? (null, "nobody was named; give the person's id")
            : Person(person, SecretText.Asked(surroundings, "PIN or passphrase: ") ?? "");
    }

    private static (Credential? Credential, string? Error) Person(string person, string text) =>
        Pin.TryParse(text, out Pin? pin, out string? error) ? (new Credential.Person(person, pin), null) : (null, error);
}
