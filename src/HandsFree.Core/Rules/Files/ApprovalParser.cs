using System.Globalization;

namespace HandsFree.Core.Rules.Files;

/// <summary>Reads who approved, and when; both or neither.</summary>
internal static class ApprovalParser
{
    public static Approval? Parse(ObjectReader from)
    {
        string? by = from.Text("approved by");
        string? on = from.Text("approved on");
        if (by is null && on is null)
        {
            return null;
        }

        if (string.IsNullOrWhiteSpace(by) || on is null)
        {
            from.Fault("\"approved by\" (a name) and \"approved on\" (a day) go together");
            return null;
        }

        if (DateOnly.TryParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return new(by.Trim(), day);
        }

        from.Fault($"\"approved on\" is \"{on}\", must be a day as 2026-03-31", from.LineOf("approved on"));
        return null;
    }
}
