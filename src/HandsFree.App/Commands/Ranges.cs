using System.CommandLine;
using System.Globalization;

namespace HandsFree.App.Commands;

/// <summary>Whole numbers of the command line that have a range.</summary>
internal static class Ranges
{
    /// <summary>Refuses a number outside the range, both ends included; what is no number the parser refuses by itself.</summary>
    public static void Within(Option<int> option, int least, int greatest) => option.Validators.Add(result =>
    {
        bool isOutside = result.Tokens.Any(token =>
            int.TryParse(token.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) && (number < least || number > greatest));
        if (isOutside)
        {
            result.AddError($"{option.Name} must be {least} to {greatest}");
        }
    });
}
