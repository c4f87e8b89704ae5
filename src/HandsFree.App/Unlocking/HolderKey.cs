using HandsFree.App.Homes;
using HandsFree.App.Session;
using HandsFree.Core.Journal;
using HandsFree.Core.People;
using HandsFree.Store.Keys;

namespace HandsFree.App.Unlocking;

/// <summary>A session is unlocked by who unlocked its journal, and by nobody else.</summary>
internal sealed class HolderKey : ISessionKey
{
    private readonly HomeJournal journal;
    private readonly string person;

    private HolderKey(HomeJournal journal, string person) => (this.journal, this.person) = (journal, person);

    /// <summary>The key of a journal's holder; null where nobody is set up, and where it was opened with a key on paper, which nobody types twice:
    /// such a session is not locked.</summary>
    public static HolderKey? Of(HomeJournal journal) => journal.Holder is { } holder && journal.People.Has(holder.Person) ? new HolderKey(journal, holder.Person) : null;

    /// <inheritdoc/>
    public PersonCheck Typed(string text) => Pin.TryParse(text.Trim(), out Pin? pin, out _) && (pin.IsDigits || journal.Holder is { Role: > Role.Aide })
        ? journal.People.Check(person, pin)
        : new PersonCheck(false, TimeSpan.Zero);

    /// <inheritdoc/>
    public PersonCheck Spoken(string digits) =>
        journal.Present().OfType<SpokenDigitsSet>().LastOrDefault(set => set.Who == person) is { } set
            ? journal.People.Check(person, () => SpokenDigits.Match(set, digits))
            : new PersonCheck(false, TimeSpan.Zero);
}
