namespace HandsFree.Exchange.Csv;

/// <summary>One cell of a table.</summary>
/// <param name="Text">Its text without white space around it.</param>
/// <param name="Line">The line of the file on which its row begins, from 1.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Name">The column's name as the program knows it.</param>
public sealed record CsvCell(string Text, int Line, int Column, string Name);
