using HandsFree.App.Composition;
using HandsFree.App.Unlocking;

namespace HandsFree.App.People;

/// <summary>A new secret: from the file that an environment variable names, else typed twice.</summary>
internal static class NewSecret
{
    /// <summary>What was given, or one line that says what is wrong.</summary>
    /// <param name="surroundings">Environment and terminal.</param>
    /// <param name="what">What is asked for: "PIN".</param>
    /// <param name="variable">Names the file.</param>
    public static (string? Text, string? Error) Read(Surroundings surroundings, string what, string variable)
    {
        (string? text, string? error) = SecretText.Given(surroundings, null, "", variable);
        if (text is not null || error is not null)
        {
            return (text, error);
        }

        text = SecretText.Asked(surroundings, $"New {what}: ");
        return text is null ? (null, $"a new {what} is needed; type it at a terminal, or name a file with {variable}")
            : SecretText.Asked(surroundings, "Again: ") != text ? (null, "the two differ; nothing was changed")
            : (text, null);
    }
}
