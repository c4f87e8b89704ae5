using System.Net;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Sending;

/// <summary>An answer of a server that came whole.</summary>
/// <param name="Status">The status of HTTP.</param>
/// <param name="Body">The resource in it; null where there is none or it is no FHIR.</param>
/// <param name="RetryAfter">When the server wants to be asked again, or null.</param>
public sealed record ServerAnswer(HttpStatusCode Status, Resource? Body, TimeSpan? RetryAfter)
{
    /// <summary>Whether the same may succeed later.</summary>
    public bool MayPass => Status is HttpStatusCode.RequestTimeout or HttpStatusCode.TooManyRequests || (int)Status == 425 || ((int)Status >= 500 && Status != HttpStatusCode.NotImplemented);

    /// <summary>The status, and what the server says, in words.</summary>
    public string Words
    {
        get
        {
            string[] issues = Body is OperationOutcome outcome
                ? [.. outcome.Issue.Select(i => i.Details?.Text ?? i.Diagnostics ?? i.Code?.ToString() ?? "").Where(t => t.Length > 0).Select(t => Plain(t))]
                : [];
            return $"HTTP {(int)Status}{(issues.Length == 0 ? "" : $": {string.Join("; ", issues)}")}";
        }
    }

    /// <summary>A foreign text on one line, without signs that steer a terminal, not longer than needs be.</summary>
    private static string Plain(string text)
    {
        const int Most = 300;
        string line = string.Concat(text.Select(sign => char.IsControl(sign) || char.GetUnicodeCategory(sign) == System.Globalization.UnicodeCategory.Format ? ' ' : sign)).Trim();
        return line.Length <= Most ? line : $"{line[..Most]}…";
    }
}
