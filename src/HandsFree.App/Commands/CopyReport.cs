using HandsFree.Store.Journaling;

namespace HandsFree.App.Commands;

/// <summary>What came of copying a journal.</summary>
internal static class CopyReport
{
    public static int Write(CommandHost host, JournalVerdict? verdict, JournalError? error, string source, string done)
    {
        if (error is not null)
        {
            return host.Refuse(error.Message);
        }

        foreach (string finding in verdict!.Findings)
        {
            host.Refuse($"{source}: {finding}; nothing was copied");
        }

        if (verdict.Findings.Count > 0)
        {
            return ExitCodes.CheckFailed;
        }

        host.Surroundings.Out.WriteLine(done);
        return ExitCodes.Done;
    }
}
