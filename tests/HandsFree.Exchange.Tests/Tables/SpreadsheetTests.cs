using System.Diagnostics;
using HandsFree.Core.Files;
using HandsFree.Core.Observations;
using HandsFree.Core.Quantities;
using HandsFree.Exchange.Csv;
using HandsFree.Exchange.Tables;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Tables;

/// <summary>What LibreOffice (Debian: libreoffice-calc-nogui) makes of our table, where it is installed: it reads the CSV into a spreadsheet
/// and writes what it understood as CSV again.</summary>
public sealed class SpreadsheetTests
{
    [Fact]
    public void LibreOffice_reads_numbers_as_numbers_text_as_text_and_no_formula()
    {
        string? office = new[] { "/usr/bin/soffice", "/usr/bin/libreoffice" }.FirstOrDefault(File.Exists);
        Assert.SkipWhen(office is null, "LibreOffice is not installed (Debian: apt-get install --no-install-recommends libreoffice-calc-nogui)");
        DirectoryInfo folder = Directory.CreateTempSubdirectory("handsfree-sheet-");
        try
        {
            string csv = Path.Combine(folder.FullName, "readings.csv");
            using (FileStream file = File.Create(csv))
            {
                ReadingTable.Write(file, new(Made.Numbered(
                    Made.Recorded("=1+2", Made.Reading(BodyTemperature.FromFahrenheit(98.6m))),
                    Made.Recorded("s-2", Made.Pressure(118, 76, new() { Arm = Arm.Left }), resident: "ä, \"b\"; c"),
                    Made.Recorded("s-3", Made.Reading(BodyWeight.FromPounds(154.3m)), resident: "007")), Made.Chicago));
            }

            // 44: comma, 34: quotation mark, 76: UTF-8, from line 1; as OpenDocument, in which a number is a float and a formula is named.
            Convert(office!, folder.FullName, csv, "fods", "--infilter=CSV:44,34,76,1");
            string sheet = File.ReadAllText(Path.ChangeExtension(csv, "fods"));
            sheet.ShouldContain("office:value-type=\"float\" office:value=\"98.6\"");
            sheet.ShouldContain("office:value-type=\"float\" office:value=\"118\"");
            sheet.ShouldContain("office:value-type=\"float\" office:value=\"154.3\"");
            sheet.ShouldNotContain("table:formula");

            Convert(office!, folder.FullName, Path.ChangeExtension(csv, "fods"), "csv:Text - txt - csv (StarCalc):44,34,76,1", null);
            List<FileError> errors = [];
            CsvTable back = CsvTable.Read("back.csv", File.ReadAllBytes(csv), HandsFree.Exchange.Readings.ReadingColumns.All, ["resident"], errors)!;
            errors.ShouldBeEmpty();
            back.Rows.Count.ShouldBe(3);
            back.Rows[0]["event"]!.Text.ShouldBe("=1+2");
            back.Rows[1]["resident"]!.Text.ShouldBe("ä, \"b\"; c");
            back.Rows[1]["systolic (mmHg)"]!.Text.ShouldBe("118");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Convert(string office, string folder, string file, string to, string? filter)
    {
        ProcessStartInfo start = new(office) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["HOME"] = folder;
        foreach (string argument in new[] { $"-env:UserInstallation=file://{folder}/profile", "--headless", filter, "--convert-to", to, "--outdir", folder, file }.OfType<string>())
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start)!;
        string said = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit(120_000).ShouldBeTrue(said);
        process.ExitCode.ShouldBe(0, said);
    }
}
