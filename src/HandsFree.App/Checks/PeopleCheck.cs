using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Store.Journaling;
using HandsFree.Store.Keys;

namespace HandsFree.App.Checks;

/// <summary>Whether a person and a secret are needed to open the record. Needs neither.</summary>
internal static class PeopleCheck
{
    /// <summary>True where somebody is set up, false where the device alone opens the record; null where that can't be told now.</summary>
    public static bool? IsAnybodySetUp(HomeFolder folder, TimeProvider time)
    {
        if (!JournalFile.IsBegun(folder))
        {
            return false;
        }

        JournalOpening opening = Journal.Open(
            folder.JournalFile, new JournalAccess(folder.States, new Credential.Device(), time), new JournalOptions { BusySeconds = 1 });
        using Journal? opened = opening.Journal;
        return opened is not null ? false : opening.Error?.Problem == JournalProblem.NeedsPin ? true : null;
    }
}
