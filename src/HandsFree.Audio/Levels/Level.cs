namespace HandsFree.Audio.Levels;

/// <summary>How loud a piece of sound is. Full scale is the digital value 1: a sine that reaches it has an RMS of -3.01 dBFS.</summary>
/// <param name="RmsDbfs">Root mean square in dBFS, not below <see cref="LevelMeter.Floor"/>.</param>
/// <param name="PeakDbfs">Largest absolute value in dBFS, not below the floor.</param>
/// <param name="ClippedShare">Share of samples that lie in clipped runs, 0 to 1.</param>
public sealed record Level(double RmsDbfs, double PeakDbfs, double ClippedShare);
