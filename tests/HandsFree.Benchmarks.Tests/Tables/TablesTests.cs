using System.Text.Json;
using HandsFree.Benchmarks.Dictations.Counting;
using HandsFree.Benchmarks.Tables;
using HandsFree.Benchmarks.Tests.Comparing;
using HandsFree.TestKit;
using Shouldly;
using Xunit;

namespace HandsFree.Benchmarks.Tests.Tables;

public sealed class TablesTests
{
    [Fact]
    public void The_results_of_a_folder_are_Markdown_tables()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-tables-");
        try
        {
            Rows.Result("set", (Results.Verdict.Right, 0.99), (Results.Verdict.WrongValue, 0.96), (Results.Verdict.NotHeard, 0), (Results.Verdict.LetIn, 0.8)).Save(Path.Combine(folder.FullName, "hearing-clean.json"));
            File.WriteAllText(Path.Combine(folder.FullName, "dictations-clean.json"), JsonSerializer.Serialize(new
            {
                options = new { VisitCount = 4 },
                summaries = new[] { DictationSummary.Of(0.1, []) },
                findings = new[] { new Finding(0.1, 2, "no end", "", []), new Finding(0, 2, "no end", "", []) },
            }));
            StringWriter text = new();
            TablesCommand.Write(folder.FullName, text);
            Golden.Match(text.ToString());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named() =>
        Should.Throw<InvalidDataException>(() => TablesCommand.Write("nowhere", TextWriter.Null)).Message.ShouldStartWith("nowhere:");
}
