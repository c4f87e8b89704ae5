namespace HandsFree.Store.Journaling;

/// <summary>What is wrong with a journal.</summary>
/// <param name="Problem">The kind of trouble.</param>
/// <param name="Message">One line for the user: the file, what is wrong and what to do.</param>
public sealed record JournalError(JournalProblem Problem, string Message);
