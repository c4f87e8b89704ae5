using HandsFree.App.Homes;

namespace HandsFree.App.Composition;

/// <summary>The cautions, shown once for each home when somebody uses it at a terminal.</summary>
internal static class Cautions
{
    /// <summary>What is shown.</summary>
    public const string Text = """
        HandsFree is an aid to recording and reporting. It is not a medical device and no substitute for judgement.
        Its thresholds are defaults from the sources named (handsfree rules list) and must be approved by the home's medical
        director and director of nursing. Local policy, the resident's orders and licensed staff come first.
        In an emergency call for help, don't dictate.
        """;

    /// <summary>Shows them on stderr where that was not done before, and notes that it was.</summary>
    public static void ShowOnce(HomeFolder folder, Surroundings surroundings)
    {
        if (!surroundings.IsInteractive || File.Exists(folder.CautionsMark))
        {
            return;
        }

        surroundings.Error.WriteLine(Text);
        surroundings.Error.WriteLine();
        try
        {
            HomeFolder.Make(folder.Path);
            File.WriteAllText(folder.CautionsMark, "");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine($"handsfree: {folder.Path} can't be written ({e.Message.ReplaceLineEndings(" ")}); name another folder with --home");
        }
    }
}
