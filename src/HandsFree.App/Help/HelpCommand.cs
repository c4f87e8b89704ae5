using System.CommandLine;
using System.Text;
using HandsFree.App.Commands;
using HandsFree.App.Files;
using HandsFree.App.Hear;
using HandsFree.Pages;
using HandsFree.Pages.Cards;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Help;

/// <summary>"handsfree help": pages for people, and the card to print.</summary>
internal static class HelpCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Make(CommandHost host)
    {
        Argument<string?> topic = new("TOPIC") { Description = "What about", Arity = ArgumentArity.ZeroOrOne };
        topic.AcceptOnlyFromAmong([.. HelpTopics.All.Select(t => t.Topic)]);
        Option<string?> page = new("--page") { Description = "With \"card\": writes it as a page of HTML to print; FILE must not be there yet", HelpName = "FILE" };
        Option<string> paper = new("--paper") { Description = "The paper of the page", DefaultValueFactory = _ => Paper.Letter.Name };
        paper.AcceptOnlyFromAmong([.. Paper.All.Select(p => p.Name)]);
        Command command = new("help", "Pages for people: a round, words, reports, the home, backup, trouble, a year; the card to print") { topic, page, paper };
        return host.Runs(command, (parsed, services) =>
        {
            string? asked = parsed.GetValue(topic);
            if (parsed.GetValue(page) is { } file)
            {
                return asked == HelpTopics.Card
                    ? Write(host, file, Paper.Of(parsed.GetValue(paper)!)!)
                    : host.Refuse($"only the card is a page to print: handsfree help {HelpTopics.Card} --page {file}");
            }

            host.Surroundings.Out.Write(asked is null ? List() : HelpTopics.Text(asked, services.GetRequiredService<GrammarShelf>()));
            return ExitCodes.Done;
        });
    }

    private static int Write(CommandHost host, string file, Paper paper)
    {
        if (AtomicFile.Write(file, Encoding.UTF8.GetBytes(CardHtml.Write(AideCard.Content, paper)), overwrite: false) is { } wrong)
        {
            return host.Refuse(wrong);
        }

        host.Surroundings.Out.WriteLine($"{file}: two pages, {paper.Name}; open it and print it on both sides");
        return ExitCodes.Done;
    }

    private static string List() =>
        string.Concat(HelpTopics.All.Select(t => $"  handsfree help {t.Topic.PadRight(8)}  {t.About}\n").Prepend("Help:\n").Append("  handsfree COMMAND --help  all that a command takes\n"));
}
