using System.Text;
using HandsFree.App.Files;
using HandsFree.App.Homes;
using HandsFree.Exchange.Rosters;

namespace HandsFree.App.FirstStart;

/// <summary>Brings the residents in: from a file, or typed one by one.</summary>
/// <param name="ask">Asks.</param>
/// <param name="folder">The home's folder.</param>
/// <param name="run">Runs a command of the program.</param>
internal sealed class ResidentQuestions(Questions ask, HomeFolder folder, Func<string[], int> run)
{
    private const string Typed = "type";

    private const string FileHelp =
        "A table saved as CSV (columns id, name, room, bed, born and more; \"handsfree residents import --help\" lists them), or a FHIR R4 bundle. " +
        "\"type\" asks for one resident after the other. Enter leaves it for later.";

    /// <summary>Asks until residents are there, or nobody wants to.</summary>
    public void Run()
    {
        while (!ask.Left)
        {
            string from = ask.Ask($"Residents: a file, or \"{Typed}\", or Enter for later", "", FileHelp);
            if (from.Length == 0 || ask.Left)
            {
                return;
            }

            int code = from == Typed ? OneByOne() : run(["residents", "import", from]);
            if (code == Commands.ExitCodes.Done)
            {
                return;
            }
        }
    }

    private int OneByOne()
    {
        StringBuilder table = new($"{RosterColumns.Id},{RosterColumns.Name},{RosterColumns.Room},{RosterColumns.Bed},{RosterColumns.Born}\n");
        int before = table.Length;
        while (!ask.Left)
        {
            string name = ask.Ask("Name, or Enter when all are there", "", "As it is spoken in the aide's ear.");
            if (name.Length == 0)
            {
                break;
            }

            string[] cells =
            [
                ask.Ask("  Number", "", "The home's own number for the resident; it must say nothing outside."),
                name,
                ask.Ask("  Room", "", "1 to 999."),
                ask.Ask("  Bed", "", "a, b, c or d; empty in a room for one."),
                ask.Ask("  Born", "", "Year, month and day: 1931-03-09."),
            ];
            table.AppendJoin(',', cells.Select(cell => $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"")).Append('\n');
        }

        return ask.Left || table.Length == before ? Commands.ExitCodes.BadInput : Import(table.ToString());
    }

    private int Import(string table)
    {
        string file = Path.Combine(folder.Path, "residents-typed.csv");
        if (AtomicFile.Write(file, Encoding.UTF8.GetBytes(table)) is { } unwritten)
        {
            ask.Say($"  {unwritten}");
            return Commands.ExitCodes.BadInput;
        }

        try
        {
            return run(["residents", "import", file]);
        }
        finally
        {
            File.Delete(file); // names are in it
        }
    }
}
