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
        Dictionary<string, string?> names = new(StringComparer.Ordinal);
        foreach (PersonAdded added in journal.Present().OfType<PersonAdded>())
        {
            names[added.Who] = added.Name ?? names.GetValueOrDefault(added.Who);
        }

        return [.. journal.People.All.Select(holder => new PersonLine(holder.Person, holder.Role, names.GetValueOrDefault(holder.Person)))];
    }
}
