using HandsFree.App.Composition;
using Microsoft.Win32.SafeHandles;

namespace HandsFree.App.Unlocking;

/// <summary>Reads a secret from where it may come: a file descriptor, a file that an environment variable names, the terminal. Never from
/// the command line, which other users can see.</summary>
internal static class SecretText
{
    private const int LongestLine = 200;

    /// <summary>The first line; or null and one line that says what is wrong; or both null where none was given.</summary>
    /// <param name="surroundings">The environment.</param>
    /// <param name="descriptor">The descriptor's number, or null.</param>
    /// <param name="option">The option that named it.</param>
    /// <param name="variable">The environment variable that may name a file.</param>
    public static (string? Line, string? Error) Given(Surroundings surroundings, int? descriptor, string option, string variable)
    {
        try
        {
            if (descriptor is { } number)
            {
                using SafeFileHandle handle = new(number, ownsHandle: false);
                using FileStream stream = new(handle, FileAccess.Read, bufferSize: 0);
                return (FirstLine(stream), null);
            }

            if (surroundings.Variable(variable) is { } file)
            {
                using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.Read);
                return (FirstLine(stream), null);
            }

            return (null, null);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or ArgumentException)
        {
            string from = descriptor is { } number ? $"{option} {number}" : $"the file that {variable} names";
            return (null, $"{from} can't be read ({wrong.Message.ReplaceLineEndings(" ")})");
        }
    }

    /// <summary>Asks at the terminal; null where nobody sits there.</summary>
    public static string? Asked(Surroundings surroundings, string prompt)
    {
        if (surroundings.ReadHidden is not { } read)
        {
            return null;
        }

        surroundings.Error.Write(prompt);
        return read()?.Trim();
    }

    private static string FirstLine(FileStream stream)
    {
        using StreamReader reader = new(stream, leaveOpen: true);
        char[] buffer = new char[LongestLine];
        int length = reader.ReadBlock(buffer);
        return new string(buffer, 0, length).Split('\n')[0].Trim();
    }
}
