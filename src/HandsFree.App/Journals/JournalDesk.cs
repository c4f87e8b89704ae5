using System.Globalization;
using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.Residents;
using HandsFree.Core.Rules;
using HandsFree.Store.Journaling;

namespace HandsFree.App.Journals;

/// <summary>Writes what a command does, in the name of who unlocked the journal.</summary>
internal sealed class JournalDesk(HomeJournal journal, TimeProvider time)
{
    /// <summary>Makes an event of an id and the moment, and appends it.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public long Write(Func<string, DateTimeOffset, JournalEvent> make) => journal.Events.Append(make(NextId(), time.GetUtcNow()));

    /// <summary>Makes an event of an id and the moment, to be written in one piece with what it tells of.</summary>
    public ReadOnlyMemory<byte> Encoded(Func<string, DateTimeOffset, JournalEvent> make) => JournalEventCodec.Encode(make(NextId(), time.GetUtcNow()));

    /// <summary>A look at the record, written where it is known who looks.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public void Viewed(string what)
    {
        if (journal.Holder is { } holder)
        {
            Write((id, at) => new RecordViewed(id, holder.Person, at, what));
        }
    }

    /// <summary>Keeps the content of the rules in force, where the journal does not have it yet, so that every decision can be made again.</summary>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public void KeepRules(Home home)
    {
        if (!journal.Present().OfType<RulesKept>().Any(kept => kept.Hash == home.Rules.Hash))
        {
            Dictionary<string, string> files = Rulebook.Defaults().ToDictionary(file => file.Name, file => file.Text);
            if (home.OwnRules is { } own)
            {
                files[RulesKept.HomeFile] = own.Text;
            }

            Write((id, at) => new RulesKept(id, journal.Holder?.Person ?? home.Settings.Aide, at, home.Rules.Hash, files));
        }
    }

    /// <summary>Keeps the residents and their limits, where others are in force by the journal.</summary>
    /// <param name="home">For units and time zone.</param>
    /// <param name="roster">The residents from here on.</param>
    /// <param name="again">Also where they are in force by the journal already.</param>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public void KeepRoster(Home home, Roster roster, bool again = false)
    {
        string content = RosterContent.Of(roster, home.Settings);
        string hash = RosterContent.Hash(content, home.Settings);
        if (again || journal.Present().OfType<RosterKept>().LastOrDefault()?.Hash != hash)
        {
            Write((id, at) => new RosterKept(
                id, journal.Holder?.Person ?? home.Settings.Aide, at, hash, content, home.Settings.TemperatureUnit, home.Settings.WeightUnit));
        }
    }

    /// <summary>Keeps the home's settings or rules.</summary>
    /// <param name="name">One of <see cref="HomeKept"/>.</param>
    /// <param name="content">The file's content.</param>
    /// <exception cref="JournalWriteException">Nothing was appended.</exception>
    public void KeepFile(string name, string content) =>
        Write((id, at) => new HomeFileKept(id, journal.Holder?.Person ?? "device", at, name, content));

    /// <summary>An id that no other event has.</summary>
    public string NextId() => NextId(time.GetUtcNow());

    /// <inheritdoc cref="NextId()"/>
    public static string NextId(DateTimeOffset now) => EventIds.Begin("desk", now);
}
