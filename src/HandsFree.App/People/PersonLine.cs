using HandsFree.App.Homes;
using HandsFree.Core.Journal;
using HandsFree.Core.People;

namespace HandsFree.App.People;

/// <summary>A person as the journal's events describe her.</summary>
/// <param name="Id">The id.</param>
/// <param name="Role">What she may do.</param>
/// <param name="Name">Her name, or null.</param>
internal sealed record PersonLine(string Id, Role Role, string? Name)
{
    /// <summary>Who may unlock now, in the order in which they were set up.</summary>
    public static IReadOnlyList<PersonLine> Of(HomeJournal journal)
    {
        OrderedDictionary<string, PersonLine> people = new(StringComparer.Ordinal);
        foreach (JournalEvent happened in journal.All())
        {
            switch (happened)
            {
                case PersonAdded added:
                    people[added.Who] = new PersonLine(added.Who, added.Role, added.Name);
                    break;
                case PersonRemoved removed:
                    people.Remove(removed.Who);
                    break;
            }
        }

        return [.. people.Values.Where(person => journal.People.Has(person.Id))];
    }
}
