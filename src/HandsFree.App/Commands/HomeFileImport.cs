using System.CommandLine;
using System.Text;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Commands;

/// <summary>"handsfree settings import" and "handsfree rules import": a whole file in the place of the one in force, or nothing of it.</summary>
internal static class HomeFileImport
{
    /// <summary>Makes the command.</summary>
    /// <param name="host">Runs it.</param>
    /// <param name="description">What it does.</param>
    /// <param name="change">Changes the home.</param>
    public static Command Make(CommandHost host, string description, Func<Home, Unlocker, string, IReadOnlyList<string>> change)
    {
        Argument<string> file = new("FILE") { Description = "The whole content" };
        return host.Runs(new Command("import", description) { file }, (parsed, services) =>
        {
            HomeOpening opening = services.GetRequiredService<HomeOpening>();
            if (!opening.TryGet(out Home? home))
            {
                return host.RefuseHome(opening);
            }

            (byte[]? content, string? unread) = BoundedFile.Read(parsed.GetValue(file)!);
            if (content is null)
            {
                return host.Refuse(unread!);
            }

            IReadOnlyList<string> wrong = change(home, services.GetRequiredService<Unlocker>(), Encoding.UTF8.GetString(content));
            if (wrong.Count > 0)
            {
                return host.RefuseAll(wrong);
            }

            host.Surroundings.Out.WriteLine("imported");
            return ExitCodes.Done;
        });
    }
}
