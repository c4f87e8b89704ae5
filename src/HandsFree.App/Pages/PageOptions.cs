using System.CommandLine;
using HandsFree.Pages;

namespace HandsFree.App.Pages;

/// <summary>The options of a command that writes a page.</summary>
internal sealed class PageOptions
{
    private readonly Option<string?> page = new("--page") { Description = "Writes a page for people to read, on paper or on a screen", HelpName = "FILE.html|FILE.pdf" };
    private readonly Option<string?> paper = new("--paper")
    {
        Description = "With --page: A4 or Letter (default: Letter in a home that measures in Fahrenheit, else A4)",
        HelpName = "SIZE",
    };

    private readonly Option<bool> overwrite = new("--overwrite") { Description = "With --page: replaces a file that is there" };
    private readonly Option<bool> withoutNames = new("--without-names") { Description = "With --page: room and bed only" };

    /// <summary>Adds them to a command.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(page);
        command.Options.Add(paper);
        command.Options.Add(overwrite);
        command.Options.Add(withoutNames);
    }

    /// <summary>Whether a page is asked for.</summary>
    public bool IsAsked(ParseResult parsed) => parsed.GetValue(page) is not null;

    /// <summary>Whether something is said of a page although none is asked for.</summary>
    public bool IsHalfAsked(ParseResult parsed) =>
        !IsAsked(parsed) && (parsed.GetValue(paper) is not null || parsed.GetValue(overwrite) || parsed.GetValue(withoutNames));

    /// <summary>Where the page goes; or what is wrong with it and what to do.</summary>
    public (PageTarget? Target, string? Wrong) Target(ParseResult parsed)
    {
        string file = parsed.GetValue(page) ?? "";
        bool pdf = file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase);
        if (!pdf && !file.EndsWith(".html", StringComparison.OrdinalIgnoreCase))
        {
            return (null, $"--page is \"{file}\"; name a file that ends in .html or .pdf");
        }

        string? named = parsed.GetValue(paper);
        Paper? size = named is null ? null : Paper.Of(named);
        if (named is not null && size is null)
        {
            return (null, $"--paper is \"{named}\"; it can be {string.Join(" or ", Paper.All.Select(p => p.Name))}");
        }

        PageTarget target = new(Path.GetFullPath(file), pdf, size, parsed.GetValue(overwrite), !parsed.GetValue(withoutNames));
        return PageFile.WhyNot(target) is { } wrong ? (null, wrong) : (target, null);
    }
}
