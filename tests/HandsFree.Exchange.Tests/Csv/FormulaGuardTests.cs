using System.Text;
using FsCheck.Xunit;
using HandsFree.Core.Files;
using HandsFree.Exchange.Csv;
using Shouldly;
using Xunit;

namespace HandsFree.Exchange.Tests.Csv;

public sealed class FormulaGuardTests
{
    // The first characters of OWASP's page "CSV Injection"; from memory, not opened.
    [Theory]
    [InlineData("=1+2")]
    [InlineData("+1-555-0100")]
    [InlineData("-2+3+cmd|' /C calc'!A0")]
    [InlineData("@SUM(1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("\uFF1D1+2")]
    public void A_cell_that_would_be_a_formula_begins_with_an_apostrophe(string text) => FormulaGuard.Guarded(text).ShouldBe("'" + text);

    [Theory]
    [InlineData("'t Hooft")]
    [InlineData("98.6")]
    [InlineData("a=b")]
    [InlineData("")]
    public void Another_cell_stays_as_it_is(string text)
    {
        FormulaGuard.Guarded(text).ShouldBe(text);
        FormulaGuard.Plain(text).ShouldBe(text);
    }

    [Property]
    public void What_is_guarded_is_no_formula_and_comes_back_as_it_was(string? text)
    {
        foreach (string each in new[] { text ?? "", "=" + text, "'=" + text, "''@" + text })
        {
            string cell = FormulaGuard.Guarded(each);
            "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20".ShouldNotContain(cell.FirstOrDefault('x'));
            FormulaGuard.Plain(cell).ShouldBe(each);
        }
    }

    [Fact]
    public void A_sheet_is_written_as_RFC_4180_wants_it()
    {
        using MemoryStream target = new();
        CsvSheet.Write(target, ["id", "text"], [["1", "one, two"], ["2", "\"said\"\r\nbelow"], ["3", null]]).ShouldBe(3);
        Encoding.UTF8.GetString(target.ToArray()).ShouldBe("\uFEFFid,text\r\n1,\"one, two\"\r\n2,\"\"\"said\"\"\r\nbelow\"\r\n3,\r\n");
    }

    [Fact]
    public void A_guarded_cell_is_read_without_its_guard()
    {
        using MemoryStream target = new();
        CsvSheet.Write(target, ["id", "text"], [["=1", "'=2"]]);
        List<FileError> errors = [];
        CsvRow row = CsvTable.Read("t.csv", target.ToArray(), ["id", "text"], ["id"], errors)!.Rows[0];
        errors.ShouldBeEmpty();
        row["id"]!.Text.ShouldBe("=1");
        row["text"]!.Text.ShouldBe("'=2");
    }
}
