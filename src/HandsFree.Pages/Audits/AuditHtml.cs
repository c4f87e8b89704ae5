using System.Text;
using HandsFree.Pages.Html;

namespace HandsFree.Pages.Audits;

/// <summary>The audit as a page.</summary>
public static class AuditHtml
{
    /// <summary>What stands where nothing happened.</summary>
    public const string Nothing = "Nothing.";

    /// <summary>Writes it.</summary>
    /// <param name="facts">Whose record, from when to when, up to which entry.</param>
    /// <param name="sections">The parts, in their order.</param>
    /// <param name="paper">On which it is printed.</param>
    public static string Write(string facts, IReadOnlyList<AuditSection> sections, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(sections);
        StringBuilder body = new();
        body.Append($"<h1>Audit</h1>\n<p>{Markup.Text(facts)}</p>\n");
        foreach (AuditSection section in sections)
        {
            body.Append($"<h2>{Markup.Text(section.Heading)}</h2>\n");
            if (section.Lines.Count == 0)
            {
                body.Append($"<p>{Nothing}</p>\n");
                continue;
            }

            body.Append("<ul>\n");
            foreach (string line in section.Lines)
            {
                body.Append($"<li>{Markup.Text(line)}</li>\n");
            }

            body.Append("</ul>\n");
        }

        return PageShell.Document("Audit", paper, body.ToString());
    }
}
