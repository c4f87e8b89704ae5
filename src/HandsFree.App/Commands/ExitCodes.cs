namespace HandsFree.App.Commands;

/// <summary>The exit codes of every command.</summary>
internal static class ExitCodes
{
    /// <summary>What was asked for is done.</summary>
    public const int Done = 0;

    /// <summary>The check that was asked for failed.</summary>
    public const int CheckFailed = 1;

    /// <summary>Bad input or set-up.</summary>
    public const int BadInput = 2;

    /// <summary>The text at the end of every help page.</summary>
    public const string Help = """
        Exit codes:
          0  done
          1  the check that was asked for failed
          2  bad input or set-up; a line on stderr says what and what to do
        """;
}
