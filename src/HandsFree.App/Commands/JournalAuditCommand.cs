using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using HandsFree.App.Auditing;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Journals;
using HandsFree.Core.People;
using HandsFree.Pages;
using HandsFree.Pages.Audits;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree journal audit": who opened, looked at and changed what.</summary>
internal sealed class JournalAuditCommand
{
    private const int UsualDays = 30;

    private readonly CommandHost host;
    private readonly Option<int> days = new("--days") { Description = "How many days back", DefaultValueFactory = _ => UsualDays, HelpName = "N" };
    private readonly Option<string?> person = new("--person") { Description = "Only what this person did, or what was done in her name", HelpName = "PERSON" };
    private readonly Option<string?> page = new("--page") { Description = "Writes a page for people to read", HelpName = "FILE.html" };
    private readonly Option<bool> json = new("--json") { Description = "One JSON object a line" };

    private JournalAuditCommand(CommandHost host) => this.host = host;

    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        JournalAuditCommand audit = new(host);
        return host.Runs(
            new Command("audit", "Who opened the record and who tried to, who looked at whom, what was changed and taken out; for a supervisor")
            {
                audit.days, audit.person, audit.page, audit.json,
            },
            audit.Run);
    }

    private int Run(System.CommandLine.ParseResult parsed, IServiceProvider services)
    {
        HomeOpening opening = services.GetRequiredService<HomeOpening>();
        string? file = parsed.GetValue(page);
        return !opening.TryGet(out Home? home) ? host.RefuseHome(opening)
            : parsed.GetValue(days) is < 1 or > 36_500 ? host.Refuse("--days is from 1 to 36500")
            : file is not null && !file.EndsWith(".html", StringComparison.OrdinalIgnoreCase) ? host.Refuse($"--page is \"{file}\"; name a file that ends in .html")
            : JournalFile.Reading(services, host, journal => journal.Holder is null or { Role: Role.Supervisor }
                ? Write(parsed, home, journal)
                : host.Refuse("only a supervisor looks at the audit"));
    }

    private int Write(System.CommandLine.ParseResult parsed, Home home, HomeJournal journal)
    {
        DateTimeOffset from = host.Surroundings.Time.GetUtcNow().AddDays(-parsed.GetValue(days));
        journal.Desk.Viewed("journal audit");
        (long entries, string anchor) = journal.End;

        // All of it is read: where the clock was set back, what is recent is not always at the end.
        AuditLine[] lines =
        [
            .. Audit.Of(journal.From(1)).Lines.Where(line => line.At >= from && (parsed.GetValue(person) is not { } who || line.Person == who)),
        ];
        if (parsed.GetValue(json))
        {
            foreach (AuditLine line in lines)
            {
                host.Surroundings.Out.WriteLine(JsonSerializer.Serialize(new { group = line.Group.ToString(), at = line.At, person = line.Person, text = line.Text }));
            }

            return ExitCodes.Done;
        }

        string facts = string.Create(
            CultureInfo.InvariantCulture,
            $"{home.Settings.Name ?? "This home"}, from {AuditTexts.When(from, home.Settings)} to {AuditTexts.When(host.Surroundings.Time.GetUtcNow(), home.Settings)}, up to entry {entries} ({anchor}).");
        IReadOnlyList<AuditSection> sections = AuditTexts.Sections(lines, home.Settings);
        return parsed.GetValue(page) is { } file ? Paged(file, facts, sections, home) : Printed(facts, sections);
    }

    private int Printed(string facts, IReadOnlyList<AuditSection> sections)
    {
        host.Surroundings.Out.WriteLine(facts);
        foreach (AuditSection section in sections)
        {
            host.Surroundings.Out.WriteLine();
            host.Surroundings.Out.WriteLine(section.Heading);
            foreach (string line in section.Lines.DefaultIfEmpty(AuditHtml.Nothing))
            {
                host.Surroundings.Out.WriteLine($"  {line}");
            }
        }

        return ExitCodes.Done;
    }

    private int Paged(string file, string facts, IReadOnlyList<AuditSection> sections, Home home)
    {
        Paper paper = home.Settings.TemperatureUnit == Core.Quantities.TemperatureUnit.Fahrenheit ? Paper.Letter : Paper.A4;
        if (AtomicFile.Write(file, Encoding.UTF8.GetBytes(AuditHtml.Write(facts, sections, paper)), overwrite: false) is { } unwritten)
        {
            return host.Refuse(unwritten);
        }

        host.Surroundings.Out.WriteLine($"{file}: the audit, {paper.Name}");
        return ExitCodes.Done;
    }
}
