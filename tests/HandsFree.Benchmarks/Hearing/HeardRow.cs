namespace HandsFree.Benchmarks.Hearing;

/// <summary>One recording's result, as the JSON file keeps it.</summary>
/// <param name="File">The recording.</param>
/// <param name="Words">What was said.</param>
/// <param name="Verdict">How it was heard.</param>
/// <param name="Meaning">What was heard, JSON; empty where nothing was.</param>
/// <param name="Probability">Of the best value; 0 without one.</param>
/// <param name="Margin">To the next; null without one.</param>
/// <param name="DecodeMilliseconds">Time of the decoder.</param>
internal sealed record HeardRow(string File, string Words, string Verdict, string Meaning, double Probability, double? Margin, double DecodeMilliseconds);
