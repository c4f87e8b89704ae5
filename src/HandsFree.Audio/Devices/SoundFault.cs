namespace HandsFree.Audio.Devices;

/// <summary>Why a sound device can't be used, or can't any more. Expected, so a value and no exception.</summary>
/// <param name="Problem">What is wrong.</param>
/// <param name="Text">One line: what is wrong and what to do.</param>
public sealed record SoundFault(SoundProblem Problem, string Text);
