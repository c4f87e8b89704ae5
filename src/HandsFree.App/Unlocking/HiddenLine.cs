using System.Text;

namespace HandsFree.App.Unlocking;

/// <summary>A line from the terminal that is not shown.</summary>
internal static class HiddenLine
{
    /// <summary>What was typed up to the return key.</summary>
    public static string? Read()
    {
        StringBuilder line = new();
        while (true)
        {
            ConsoleKeyInfo key = Console.ReadKey(intercept: true);
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    Console.WriteLine();
                    return line.ToString();
                case ConsoleKey.Backspace:
                    line.Length = Math.Max(0, line.Length - 1);
                    break;
                default:
                    line.Append(char.IsControl(key.KeyChar) ? "" : key.KeyChar.ToString());
                    break;
            }
        }
    }
}
